using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What the terminal is told: everything once, then what is new and how much is gone.</summary>
internal sealed class WatchText(TextWriter to, string? themeFolder)
{
    private readonly Lock gate = new();
    private HashSet<(RuleId, Level, string, string)>? told;

    /// <summary>A change was seen.</summary>
    /// <param name="changed">The files that changed.</param>
    /// <param name="shown">The clients who are looked at and whose pages are other now.</param>
    public void Saved(Series<string> changed, Series<ClientId> shown, TimeSpan took)
    {
        if (changed.Count == 0)
            return;
        var what = changed.Count <= 3 ? string.Join(", ", changed) : FormattableString.Invariant($"{changed.Count} files");
        var who = shown.Count == 0 ? "" : $"; shown again: {string.Join(", ", shown.Select(c => c.Text))}";
        Line(FormattableString.Invariant($"{what}: read in {took.TotalMilliseconds:0} ms{who}."));
    }

    /// <summary>What is found of a client, before everything else is looked at.</summary>
    public void News(CheckedState state, Series<Finding> said, PageLines lines)
    {
        lock (gate)
        {
            if (told is null)
                return;
            var news = said.Where(f => !told.Contains(KeyOf(f))).ToSeries();
            told.UnionWith(news.Select(KeyOf));
            FindingText.WriteEach(to, news, Excerpts(state, lines));
        }
    }

    /// <summary>All that is found, once everything was looked at.</summary>
    public void Settled(CheckedState state, Series<Finding> said, PageLines lines)
    {
        lock (gate)
        {
            var news = told is null ? said : said.Where(f => !told.Contains(KeyOf(f))).ToSeries();
            var now = said.Select(KeyOf).ToHashSet();
            var gone = told?.Count(f => !now.Contains(f)) ?? 0;
            FindingText.WriteEach(to, news, Excerpts(state, lines));
            if (told is null || news.Count > 0 || gone > 0)
                to.WriteLine(
                    FindingText.Counted(said) + (gone > 0 ? FormattableString.Invariant($" No longer found: {gone}.") : "")
                );
            told = now;
        }
    }

    public void Line(string line)
    {
        lock (gate)
            to.WriteLine(line);
    }

    private Excerpts Excerpts(CheckedState state, PageLines lines) => new(state.Read.Folder, lines, themeFolder);

    /// <summary>A finding that only moved to another line is not told again.</summary>
    private static (RuleId, Level, string, string) KeyOf(Finding finding) =>
        (finding.Rule, finding.Level, finding.At.File, finding.Message);
}
