using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>Findings for people: place, level, rule, sentence; the line with a caret; one remedy.</summary>
internal static class FindingText
{
    private const int Widest = 120;

    public static void Write(TextWriter to, Series<Finding> findings, Excerpts excerpts)
    {
        WriteEach(to, findings, excerpts);
        to.WriteLine(Counted(findings));
    }

    /// <summary>The same without how many there are.</summary>
    public static void WriteEach(TextWriter to, Series<Finding> findings, Excerpts excerpts)
    {
        foreach (var finding in findings)
        {
            to.WriteLine(FirstLine(finding));
            if (excerpts.Line(finding.Client?.Text, finding.At.File, finding.At.Line) is { } line)
                WriteExcerpt(to, line, finding.At.Column, finding.Length);
            to.WriteLine($"    {finding.Help}");
            to.WriteLine();
        }
    }

    /// <summary>Place, level, rule, client, sentence.</summary>
    public static string FirstLine(Finding finding) =>
        $"{finding.At}  {Word(finding.Level)}  {finding.Rule}  "
        + $"{(finding.Client is { } client ? $"[{client}] " : "")}{finding.Sentence}";

    public static string Word(Level level) => level.ToString().ToLowerInvariant();

    /// <summary>How many there are of each level, as a sentence.</summary>
    public static string Counted(Series<Finding> findings) =>
        findings.Count == 0
            ? "No problems found."
            : string.Join(
                ", ",
                Enum.GetValues<Level>()
                    .Select(level => (level, count: findings.Count(f => f.Level == level)))
                    .Where(l => l.count > 0)
                    .Select(l => $"{l.count} {Word(l.level)}{(l.count == 1 ? "" : "s")}")
            ) + ".";

    /// <summary>A line, or the part of it around a column; where in it the marked part begins, from 0, and how long that is, at
    /// least 1. It may begin at the end of what is shown.</summary>
    public static (string Shown, int From, int Length) Cut(string line, int column, int length)
    {
        var start = Math.Max(0, Math.Min(column - 1, line.Length) - (Widest / 2));
        var shown = new string([.. line.Skip(start).Take(Widest).Select(c => char.IsControl(c) ? ' ' : c)]);
        var from = Math.Max(0, column - 1 - start);
        return (shown, from, Math.Max(1, Math.Min(length, Math.Max(1, shown.Length - from))));
    }

    private static void WriteExcerpt(TextWriter to, string line, int column, int length)
    {
        var (shown, from, marked) = Cut(line, column, length);
        to.WriteLine($"  | {shown}");
        to.WriteLine($"  | {new string(' ', from)}{new string('^', marked)}");
    }
}
