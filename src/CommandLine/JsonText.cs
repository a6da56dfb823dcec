using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Gradus.CommandLine;

/// <summary>JSON for other programs, put together name by name: what is written stands where it is written, and nothing looks at
/// types while the program runs.</summary>
internal static class JsonText
{
    /// <summary>Indented, with lines that end in <c>\n</c>; there is none after the last.</summary>
    /// <param name="plain">Whether letters beyond ASCII, quotation marks and signs of HTML stand as they are, for programs that
    /// take the text for JSON alone.</param>
    public static string Of(JsonNode node, bool plain = false)
    {
        var text = new ArrayBufferWriter<byte>();
        var layout = new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            Encoder = plain ? JavaScriptEncoder.UnsafeRelaxedJsonEscaping : null,
        };
        using (var json = new Utf8JsonWriter(text, layout))
            node.WriteTo(json);
        return Encoding.UTF8.GetString(text.WrittenSpan);
    }

    public static JsonArray ListOf<T>(IEnumerable<T> items, Func<T, JsonNode?> written) => new([.. items.Select(written)]);

    public static JsonArray ListOf(IEnumerable<string> texts) => ListOf(texts, text => text);
}
