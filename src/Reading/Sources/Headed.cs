namespace Gradus.Reading;

/// <summary>A file in two parts: a header between two lines of <c>---</c>, and the text below it.</summary>
/// <param name="HeaderLine">The line of the file at which the header's text begins, from 1.</param>
/// <param name="BodyLine">The line of the file at which the body's text begins, from 1.</param>
internal sealed record Headed(string Header, int HeaderLine, string Body, int BodyLine)
{
    /// <summary>The parts, or null (and a finding) where the header is not there or never ends.</summary>
    public static Headed? Read(SourceFile sheet)
    {
        var lines = sheet.Text.Split('\n');
        if (lines[0].TrimEnd() != "---")
        {
            sheet.Fault(
                Faults.FileUnreadable,
                sheet.At(1, 1),
                "The file does not begin with a header.",
                "Make the first line three hyphens, ---, with the keys below it and three hyphens after them."
            );
            return null;
        }

        var end = Array.FindIndex(lines, 1, line => line.TrimEnd() == "---");
        if (end < 0)
        {
            sheet.Fault(
                Faults.FileUnreadable,
                sheet.At(1, 1),
                "The header is never closed.",
                "Put a line of three hyphens, ---, after the last key.",
                3
            );
            return null;
        }

        return new(string.Join('\n', lines[1..end]), 2, string.Join('\n', lines[(end + 1)..]), end + 2);
    }
}
