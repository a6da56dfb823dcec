using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>A table of styles: a heading names a kind, each other line is one style.</summary>
internal static class StyleTable
{
    public static readonly Series<string> Files = ["look.css", "guide.css", "print.css"];

    public static Series<(string Kind, string Line)> Read(string name)
    {
        var (kind, rows) = ("", new List<(string, string)>());
        foreach (
            var line in File.ReadLines(Repository.Path("tests", "Auditing", "Pages", "Styles", name))
                .Skip(1)
                .Where(l => l.Length > 0)
        )
            if (line.StartsWith("## ", StringComparison.Ordinal))
                kind = line[3..];
            else
                rows.Add((kind, line));
        return rows.ToSeries();
    }

    public static string Plain(string file) => File.ReadAllText(Repository.Path("themes", "plain", file));

    /// <summary>What is wrong with those sheets together, each as a sentence.</summary>
    public static Series<string> Wrongs(IEnumerable<string> sheets)
    {
        var readings = sheets.Select(StyleJudge.Of).ToArray();
        var said = readings.SelectMany(r => r.Says).ToHashSet();
        return readings
            .SelectMany(r => r.Wrongs.Select(w => $"{w.Line}:{w.Column} {w.Why}"))
            .Concat(readings.SelectMany(r => r.Contrasts).Select(c => $"{c.Line}:{c.Column} {c.Text} on {c.Ground} {c.Where}"))
            .Concat(
                readings
                    .SelectMany(r => r.Asks)
                    .Where(a => !said.Contains(a.Required))
                    .Select(a => $"missing: {KnownStyles.List.Required[a.Required].Words}")
            )
            .ToSeries();
    }
}
