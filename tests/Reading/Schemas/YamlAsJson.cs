using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Gradus.Tests.Reading;

/// <summary>YAML as an editor reads it: the core schema of YAML 1.2.2 (10.3.2), by events alone.</summary>
internal static partial class YamlAsJson
{
    [GeneratedRegex(@"^[-+]?[0-9]+\z", RegexOptions.CultureInvariant)]
    private static partial Regex Whole();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Decimal();

    /// <summary>Null and false where it is no YAML, or a key stands twice.</summary>
    public static bool TryRead(string text, out JsonNode? node)
    {
        node = null;
        try
        {
            var parser = new Parser(new StringReader(text));
            parser.Consume<StreamStart>();
            if (parser.Accept<StreamEnd>(out _))
                return false;
            parser.Consume<DocumentStart>();
            node = Node(parser);
            parser.Consume<DocumentEnd>();
            return parser.Accept<StreamEnd>(out _);
        }
        catch (Exception trouble) when (trouble is YamlException or ArgumentException or InvalidOperationException)
        {
            return false;
        }
    }

    private static JsonNode? Node(Parser parser)
    {
        if (parser.TryConsume<Scalar>(out var scalar))
            return scalar.Style == ScalarStyle.Plain ? Plain(scalar.Value) : JsonValue.Create(scalar.Value);
        if (parser.TryConsume<SequenceStart>(out _))
        {
            var list = new JsonArray();
            while (!parser.TryConsume<SequenceEnd>(out _))
                list.Add(Node(parser));
            return list;
        }

        parser.Consume<MappingStart>();
        var map = new JsonObject();
        while (!parser.TryConsume<MappingEnd>(out _))
            map.Add(parser.Consume<Scalar>().Value, Node(parser));
        return map;
    }

    private static JsonNode? Plain(string text) =>
        text switch
        {
            "" or "~" or "null" or "Null" or "NULL" => null,
            "true" or "True" or "TRUE" => JsonValue.Create(true),
            "false" or "False" or "FALSE" => JsonValue.Create(false),
            _ when Whole().IsMatch(text) && text.Length < 18 => JsonValue.Create(long.Parse(text, CultureInfo.InvariantCulture)),
            _ when Decimal().IsMatch(text) => JsonValue.Create(double.Parse(text, CultureInfo.InvariantCulture)),
            _ => JsonValue.Create(text),
        };
}
