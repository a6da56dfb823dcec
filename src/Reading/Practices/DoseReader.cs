using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A value that is a dose line. What is wrong inside the line is for the rules to say; here only what is no line at
/// all.</summary>
internal static class DoseReader
{
    public static WrittenDose? Read(SourceFile sheet, string key, YamlNode? node, DoseSettings settings)
    {
        if (node is YamlNode.Map)
        {
            sheet.Fault(
                Faults.ValueWrong,
                node.At,
                "Here should stand a dose line without braces.",
                "Write it as in 3 x hold 30 s, rest 20 s."
            );
            return null;
        }

        if (
            node is YamlNode.Text written
            && sheet.Line(written.End.Line).IndexOf(" #", written.End.Column - 1, StringComparison.Ordinal)
                is >= 0
                    and var comment
        )
        {
            sheet.Fault(
                Faults.ValueWrong,
                written.End with
                {
                    Column = comment + 2,
                },
                "A comment stands on the line of a dose.",
                "Put it on a line of its own, or the dose in quotation marks if the # belongs to it.",
                int.MaxValue
            );
            return null;
        }

        if (Values.Text(sheet, key, node) is null || node is not YamlNode.Text text)
            return null;
        if (text.At.Line != text.End.Line)
        {
            sheet.Fault(
                Faults.ValueWrong,
                text.At,
                "This dose takes more than one line.",
                "Write it on one line, behind its key.",
                int.MaxValue
            );
            return null;
        }

        var dose = DoseLine.Read(text.Value, settings);
        if (dose is DoseLineResult.Understood)
            Braces.Find(sheet, key, text);
        return new(text.Value, dose, Inside(text));
    }

    /// <summary>Where the line itself begins: behind the quotation mark where there is one.</summary>
    private static Location Inside(YamlNode.Text text) => text.IsPlain ? text.At : text.At with { Column = text.At.Column + 1 };
}
