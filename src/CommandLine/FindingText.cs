using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>Findings for people: place, level, rule, sentence; the line with a caret; one remedy.</summary>
internal static class FindingText
{
    private const int Widest = 120;

    public static void Write(TextWriter to, Series<Finding> findings, Excerpts excerpts)
    {
        foreach (var finding in findings)
        {
            to.WriteLine(FirstLine(finding));
            if (excerpts.Line(finding.Client?.Text, finding.At.File, finding.At.Line) is { } line)
                WriteExcerpt(to, line, finding.At.Column, finding.Length);
            to.WriteLine($"    {finding.Help}");
            to.WriteLine();
        }

        if (findings.Count > 0)
            to.WriteLine(Counted(findings));
        else
            to.WriteLine("Nothing found.");
    }

    /// <summary>Place, level, rule, client, sentence.</summary>
    public static string FirstLine(Finding finding) =>
        $"{finding.At}  {Word(finding.Level)}  {finding.Rule}  "
        + $"{(finding.Client is { } client ? $"[{client}] " : "")}{finding.Message}";

    public static string Word(Level level) => level.ToString().ToLowerInvariant();

    private static void WriteExcerpt(TextWriter to, string line, int column, int length)
    {
        var start = Math.Max(0, Math.Min(column - 1, line.Length) - (Widest / 2));
        var shown = new string([.. line.Skip(start).Take(Widest).Select(c => char.IsControl(c) ? ' ' : c)]);
        var caret = Math.Max(0, column - 1 - start);
        to.WriteLine($"  | {shown}");
        to.WriteLine(
            $"  | {new string(' ', caret)}{new string('^', Math.Max(1, Math.Min(length, Math.Max(1, shown.Length - caret))))}"
        );
    }

    private static string Counted(Series<Finding> findings) =>
        string.Join(
            ", ",
            Enum.GetValues<Level>()
                .Select(level => (level, count: findings.Count(f => f.Level == level)))
                .Where(l => l.count > 0)
                .Select(l => $"{l.count} {Word(l.level)}{(l.count == 1 ? "" : "s")}")
        ) + ".";
}
