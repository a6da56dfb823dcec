using Gradus.Domain;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Gradus.Reading;

/// <summary>YAML text → nodes, with everything refused that could mean two things: aliases, anchors, tags, a second document, a
/// key twice, nesting beyond 64.</summary>
internal sealed class YamlReader
{
    private const int DepthLimit = 64;

    private readonly SourceFile sheet;
    private readonly int firstLine;
    private readonly Parser parser;
    private readonly Stack<Location> brackets = new();

    private YamlReader(SourceFile sheet, string text, int firstLine)
    {
        this.sheet = sheet;
        this.firstLine = firstLine;
        parser = new(new StringReader(text));
    }

    /// <summary>The one node of the text, or null (and a finding) where there is none.</summary>
    /// <param name="firstLine">The line of the file at which the text begins, from 1.</param>
    public static YamlNode? Read(SourceFile sheet, string text, int firstLine)
    {
        var reader = new YamlReader(sheet, text, firstLine);
        try
        {
            var node = reader.Document();
            if (node is not null)
                sheet.Notes?.Begin(node);
            return node;
        }
        catch (RefusedYaml)
        {
            return null;
        }
        catch (YamlException broken)
        {
            var place = YamlFaults.Place(broken.Message, sheet, reader.Place(broken.Start));
            var (message, help) = YamlFaults.Of(broken.Message, sheet.Text.Split('\n').ElementAtOrDefault(place.Line - 1));
            sheet.Fault(Faults.FileUnreadable, place, message, help);
            return null;
        }
        catch (InvalidOperationException)
        {
            sheet.Fault(
                Faults.FileUnreadable,
                reader.brackets.Count > 0 ? reader.brackets.Last() : sheet.Whole,
                "A bracket or brace opens here and nothing closes it.",
                "Put ] or } behind the last item."
            );
            return null;
        }
        catch (ArgumentOutOfRangeException)
        {
            sheet.Fault(
                Faults.FileUnreadable,
                sheet.Whole,
                "A backslash in quotation marks stands before something that is no character.",
                "Take the backslash out, or write the character itself."
            );
            return null;
        }
    }

    private YamlNode? Document()
    {
        parser.Consume<StreamStart>();
        if (parser.Accept<StreamEnd>(out _))
        {
            sheet.Fault(
                Faults.FileUnreadable,
                sheet.At(firstLine, 1),
                "There are no keys here.",
                "Write the keys this file needs. 'gradus begin FOLDER' writes a practice in which each of them is explained."
            );
            return null;
        }

        parser.Consume<DocumentStart>();
        var node = Node(0);
        parser.Consume<DocumentEnd>();
        if (!parser.Accept<StreamEnd>(out _) && parser.Current is { } second)
            Refuse(
                second.Start,
                "A second document begins here.",
                "Keep one document in a file: take out the line of three hyphens."
            );
        return node;
    }

    private YamlNode Node(int depth)
    {
        if (parser.Accept<AnchorAlias>(out var alias))
            Refuse(
                alias.Start,
                $"'*{alias.Value}' stands for something written elsewhere.",
                "Write it out here; a text that begins with * needs quotation marks."
            );
        if (parser.Accept<NodeEvent>(out var any))
        {
            if (!any.Anchor.IsEmpty)
                Refuse(
                    any.Start,
                    $"'&{any.Anchor.Value}' gives this a name for use elsewhere.",
                    "Take the name out; a text that begins with & needs quotation marks."
                );
            if (!any.Tag.IsEmpty)
                Refuse(
                    any.Start,
                    "What begins with ! would change how this value is read.",
                    "Take it out; a text that begins with ! needs quotation marks."
                );
            if (depth > DepthLimit)
                Refuse(any.Start, "This is nested more than 64 deep.", "Write it flat.");
        }

        if (parser.TryConsume<Scalar>(out var scalar))
            return TextOf(scalar);
        if (parser.TryConsume<SequenceStart>(out var list))
            return Listing(list, depth);
        return Map(parser.Consume<MappingStart>(), depth);
    }

    private YamlNode.Text TextOf(Scalar scalar)
    {
        if (scalar.Value.Any(c => ControlCharacters.Contains(c) || (UnseenLetters.Contains(c) && !sheet.Text.Contains(c))))
            Refuse(
                scalar.Start,
                "A backslash in this text stands for a character that nobody can see.",
                "Take the backslash and what belongs to it out."
            );
        return new(scalar.Value, scalar.Style == ScalarStyle.Plain, Place(scalar.Start), Place(scalar.End));
    }

    private YamlNode.Listing Listing(SequenceStart start, int depth)
    {
        var items = new List<YamlNode>();
        if (start.Style == SequenceStyle.Flow)
            brackets.Push(Place(start.Start));
        while (!parser.TryConsume<SequenceEnd>(out _))
            items.Add(Node(depth + 1));
        if (start.Style == SequenceStyle.Flow)
            brackets.Pop();
        return new(items.ToSeries(), Place(start.Start));
    }

    private YamlNode.Map Map(MappingStart start, int depth)
    {
        var entries = new List<YamlEntry>();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        if (start.Style == MappingStyle.Flow)
            brackets.Push(Place(start.Start));
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            if (Node(depth + 1) is not YamlNode.Text key)
            {
                Refuse(
                    start.Start,
                    "A key is not a plain word here.",
                    "Write the key as one word before the colon. A dose or a text in braces needs its braces taken out."
                );
                continue;
            }

            var value = Node(depth + 1);
            if (keys.Add(key.Value))
                entries.Add(new(key, value));
            else
                sheet.Fault(
                    Faults.KeyUnknown,
                    key.At,
                    $"{Quote.Of(key.Value)} appears twice.",
                    "Keep one of the two.",
                    key.Value.Length
                );
        }

        if (start.Style == MappingStyle.Flow)
            brackets.Pop();
        return new(entries.ToSeries(), Place(start.Start));
    }

    private Location Place(Mark mark) => sheet.At(firstLine + (int)mark.Line - 1, (int)mark.Column);

    private void Refuse(Mark at, string message, string help)
    {
        sheet.Fault(Faults.FileUnreadable, Place(at), message, help);
        throw new RefusedYaml(at);
    }

    private sealed class RefusedYaml(Mark at) : YamlException(at, at, "refused");
}
