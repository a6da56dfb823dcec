using Gradus.Domain;

namespace Gradus.Tests.Reading;

/// <summary>Mistakes as a coach makes them, and what is said of them. A row is a file, the passage taken out of the golden
/// practice (after a minus), what is written in its place (after a plus), and then each finding in three lines: place, rule and
/// marked text; sentence; remedy. <c>⏎</c> is the end of a line, <c>⇥</c> a tab. Rows stand between empty lines.</summary>
internal static class FaultTable
{
    public static TheoryData<string> Rows(string table)
    {
        var rows = new TheoryData<string>();
        foreach (var row in table.Split("\n\n"))
            rows.Add(row);
        return rows;
    }

    /// <summary>The row as it is: the same mistake with the findings that are really there.</summary>
    public static string Show(string row)
    {
        var lines = row.Split('\n');
        var (path, passage, replacement) = (lines[0], Written(lines[1], "- "), Written(lines[2], "+ "));
        var wrong = LittlePractice.Golden.Edit(path, passage, replacement);
        return string.Join('\n', lines[..3].Concat(wrong.Findings().SelectMany(f => Said(wrong, f))));
    }

    /// <summary>A finding in three lines.</summary>
    public static string[] Said(LittlePractice practice, Finding finding)
    {
        var level = finding.Level == Level.Error ? "" : finding.Level.ToString().ToLowerInvariant() + " ";
        return [$"{finding.At} {level}{finding.Rule}{Marked(practice, finding)}", finding.Message, finding.Help];
    }

    private static string Marked(LittlePractice practice, Finding finding)
    {
        if (finding.At.Line == 0)
            return "";
        var line = practice[finding.At.File].Split('\n')[finding.At.Line - 1].TrimEnd('\r');
        var start = finding.At.Column - 1;
        return start >= line.Length ? " at the end" : $" «{line.Substring(start, finding.Length)}»";
    }

    private static string Written(string line, string mark)
    {
        Assert.StartsWith(mark, line + " ", StringComparison.Ordinal);
        return line.Length < mark.Length ? "" : line[mark.Length..].Replace('⏎', '\n').Replace('⇥', '\t');
    }
}
