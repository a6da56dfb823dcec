using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A value that is a dose line. What is wrong inside the line is for the rules to say; here only what is no line at all.</summary>
internal static class DoseReader
{
    public static WrittenDose? Read(Sheet sheet, string key, YamlNode? node, DoseSettings settings)
    {
        if (node is YamlNode.Map)
        {
            sheet.Fault(Faults.ValueWrong, node.At, $"'{key}' is a dose line, but here it is in braces.", "Take the braces out: dose: 3 x hold 30 s, rest 20 s.");
            return null;
        }

        return Values.Text(sheet, key, node) is { } text ? new(text.Value, DoseLine.Read(text.Value, settings), Inside(text)) : null;
    }

    /// <summary>Where the line itself begins: behind the quotation mark where there is one.</summary>
    private static Location Inside(YamlNode.Text text) => text.IsPlain ? text.At : text.At with { Column = text.At.Column + 1 };
}
