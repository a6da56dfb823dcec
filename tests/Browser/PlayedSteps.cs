using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>One item of a session's list, as the page has it.</summary>
internal sealed record Listed(
    string Kind,
    string Exercise,
    string Side,
    string Percent,
    string Felt,
    string Breaths,
    string Set,
    string Reps,
    string Load,
    string Time,
    string What,
    string Detail
)
{
    private const string Lists = """
        (() => {
          const text = element => element.textContent.replace(/\s+/g, ' ').trim();
          const pages = [...document.querySelectorAll('ROOT')];
          const articleOf = letter => pages.flatMap(page => [...page.querySelectorAll('article')]).find(one => text(one.querySelector('h2 b')) === letter);
          const numbers = { p: 'percent', f: 'felt', b: 'breaths', s: 'set', n: 'reps' };
          const partsOf = data => {
            const [, kind, letter, rest] = /^(\S+) (\S+)(.*)$/.exec(data);
            const [, few, load] = /^(.*?)(?: w(.*))?$/.exec(rest);
            const parts = { kind, side: '', percent: '', felt: '', breaths: '', set: '', reps: '', load: load ?? '', letter };
            for (const [one] of few.matchAll(/\S+/g)) {
              if (one === 'l') parts.side = 'left';
              else if (one === 'r') parts.side = 'right';
              else parts[numbers[one[0]]] = one.slice(1);
            }
            return parts;
          };
          return JSON.stringify(pages.flatMap(page => [...page.querySelectorAll('.weeks')]).map(part => ({
            weeks: part.getAttribute('data-weeks'), total: part.querySelector('.total time').getAttribute('datetime'),
            steps: [...part.querySelectorAll('ol.steps > li')].map(item => {
              const { letter, ...parts } = partsOf(item.getAttribute('data-step'));
              const article = articleOf(letter);
              const [said, time] = [text(item.querySelector('b')), item.querySelector('time')];
              const copy = item.cloneNode(true);
              copy.querySelectorAll('b, time').forEach(one => one.remove());
              return {
                ...parts, exercise: article?.dataset.about ?? '', time: time.getAttribute('datetime'),
                what: said.replace(new RegExp(`^${letter} `), `${article ? text(article.querySelector('h2 a')) : ''}: `), detail: text(copy)
              };
            })
          })));
        })()
        """;

    /// <summary>Reads the lists of a page: for each its weeks, its total and its items.</summary>
    /// <param name="root">What the page stands in.</param>
    public static string In(string root) => Lists.Replace("ROOT", root, StringComparison.Ordinal);

    /// <summary>The list of that week on a page that is no other's.</summary>
    public static async Task<Listed[]> Of(IPage page, string week) =>
        JsonSerializer
            .Deserialize<ListedWeeks[]>(await page.EvaluateAsync<string>(In("main")), JsonSerializerOptions.Web)!
            .Single(l => l.Weeks.Split(' ').Contains(week))
            .Steps;

    public int Seconds => int.Parse(Time[2..^1], CultureInfo.InvariantCulture);

    public bool IsWork => !IsBetween && Kind != "get-ready";

    public bool IsBetween => Kind is "transition" or "switch" or "rest" or "pause";

    /// <summary>The gauge: a level for each fifth of the hardest or for two points of ten, from the first that there
    /// is.</summary>
    public int Level =>
        Percent.Length > 0 ? Level20()
        : Felt.Length > 0 ? (int.Parse(Felt, CultureInfo.InvariantCulture) + 1) / 2
        : 0;

    public bool IsHard => Kind is "press" or "pull" or "raise" || Level >= 3;

    /// <summary>As the plan has it; where the page says a letter, the guided session says the title.</summary>
    public static Listed Of(PlannedSession session, Step step) =>
        new(
            step.Kind == StepKind.GetReady ? "get-ready" : step.Kind.ToString().ToLowerInvariant(),
            step.Exercise.Text,
            step.Side switch
            {
                Gradus.Domain.Side.Left => "left",
                Gradus.Domain.Side.Right => "right",
                _ => "",
            },
            step.Percent is { } percent
                ? decimal.Round(percent, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture)
                : "",
            Number(step.Felt),
            Number(step.Breaths),
            Number(step.Set),
            Number(step.Repetitions),
            step.Load ?? "",
            $"PT{Number(step.Seconds.Value)}S",
            TitleOf(session, step) + ": " + step.Words[(step.Letter.Length + 1)..],
            step.Detail
        );

    private static string TitleOf(PlannedSession session, Step step) =>
        session.Uses.First(u => u.Letter == step.Letter && u.Exercise == step.Exercise).Title;

    private static string Number(int? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";

    private int Level20()
    {
        var percent = decimal.Parse(Percent, CultureInfo.InvariantCulture);
        return percent <= 20 ? 1
            : percent <= 40 ? 2
            : percent <= 60 ? 3
            : percent <= 80 ? 4
            : 5;
    }
}

/// <param name="Weeks">With blanks between.</param>
internal sealed record ListedWeeks(string Weeks, string Total, Listed[] Steps);

/// <summary>What the guided session drew when a step began, and what became of it.</summary>
/// <param name="At">The place that the picture marks.</param>
/// <param name="Level">Of the gauge, 0 where it is not shown.</param>
/// <param name="Breaths">What the pacer of the breath said, one after the other; nothing where it is not shown.</param>
/// <param name="IsTold">Whether it is told to keep breathing.</param>
/// <param name="Lasts">Seconds until something else was drawn.</param>
internal sealed record Drawn(
    string What,
    string Side,
    string At,
    string Kind,
    string Digits,
    int Level,
    int Stairs,
    string Effort,
    string[] Breaths,
    bool IsTold,
    string Detail,
    string Next,
    string Place,
    string Said,
    int Lasts
)
{
    private static readonly string[] Efforts = ["", "very gentle", "gentle", "medium", "hard", "very hard"];

    /// <summary>What has to be drawn for an item of the list.</summary>
    public static Drawn Of(Listed[] list, int i)
    {
        var (step, seconds) = (list[i], list[i].Seconds);
        var breaths = step.Breaths.Length > 0 && !step.IsHard ? int.Parse(step.Breaths, CultureInfo.InvariantCulture) : 0;
        return new(
            step.What,
            step.Side,
            step.Side,
            step.Kind,
            seconds < 100 ? $"{seconds}" : $"{seconds / 60}:{seconds % 60:00}",
            step.Level,
            step.Level,
            Efforts[step.Level],
            [.. Enumerable.Range(0, 2 * breaths).Select(n => n % 2 == 0 ? "breathe in" : "breathe out")],
            step.IsWork && step.IsHard,
            string.Join(", ", new[] { step.Detail, step.Load }.Where(t => t.Length > 0)),
            i + 1 < list.Length ? $"Then: {list[i + 1].What}" : "Then: the end",
            $"Step {i + 1} of {list.Length}",
            SaidOf(list, i),
            seconds
        );
    }

    /// <summary>With its effort; on a ramp, where nothing but the effort is another, the effort alone.</summary>
    private static string SaidOf(Listed[] list, int i)
    {
        var (step, time) = (list[i], Span(list[i].Seconds));
        if (step.Level == 0)
            return $"{step.What}, {time}.";
        var last = i > 0 ? list[i - 1] : null;
        var isRamp =
            last is not null
            && (step.Kind, step.Exercise, step.Side, step.Set) == (last.Kind, last.Exercise, last.Side, last.Set)
            && (step.Percent, step.Felt) != (last.Percent, last.Felt);
        return isRamp ? $"{Efforts[step.Level]}, {time}." : $"{step.What}, {Efforts[step.Level]}, {time}.";
    }

    /// <summary>Under two minutes only whole ones are minutes.</summary>
    private static string Span(int seconds)
    {
        string Of(int n, string unit) => n == 1 ? $"1 {unit}" : $"{n} {unit}s";
        var (minutes, rest) = Math.DivRem(seconds, 60);
        return minutes == 0 || (minutes == 1 && rest > 0) ? Of(seconds, "second")
            : rest == 0 ? Of(minutes, "minute")
            : $"{Of(minutes, "minute")} {Of(rest, "second")}";
    }
}

/// <param name="Drawn">Every step once, as it began.</param>
/// <param name="Waits">Where somebody was waited for.</param>
/// <param name="Over">The heading at the end.</param>
internal sealed record Played(Drawn[] Drawn, string[] Waits, string Over, string Did, string Kept, LoggedSession[] Log)
{
    /// <summary>What plays a session whole in a page of any browser.</summary>
    public static readonly string Whole = $"({File.ReadAllText(Repository.Path("tests", "Browser", "play-whole.js"))})()";

    /// <summary>A sentence for everything that is other than what the list of the session says.</summary>
    public List<string> Against(PlayedSession playing, Listed[] list)
    {
        var work = list.Count(s => s.IsWork);
        return
        [
            .. Differences.Between([.. list.Select((_, i) => Browser.Drawn.Of(list, i))], Drawn),
            .. Differences.Between([.. WaitsOf(list, playing.Week)], Waits),
            .. Differences.Between(
                [
                    "That is all for today",
                    $"You did {work} of {work} step{(work == 1 ? "" : "s")}.",
                    "Saved on this phone. Your weeks go on from it.",
                ],
                [Over, Did, Kept]
            ),
            .. Differences.Between([new LoggedSession(playing.Now[..10], playing.Week, playing.Session.Number, true)], Log),
        ];
    }

    /// <summary>Who begins, and in the first week everybody, is waited for at each exercise and side; later only at what is
    /// new.</summary>
    private static IEnumerable<string> WaitsOf(Listed[] list, int week)
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        var before = "";
        foreach (var (i, step) in list.Index().Where(s => !s.Item.IsBetween))
        {
            var isNew = met.Add(step.Exercise);
            if (isNew || (week == 1 && before != step.Exercise + step.Side))
                yield return $"Step {i + 1} of {list.Length}";
            before = step.Exercise + step.Side;
        }
    }
}

internal sealed record LoggedSession(string Day, int Week, int Session, bool Done);

internal static class Differences
{
    /// <summary>A sentence for each that is other than it should be, with what is other about it, and one where there are more or
    /// fewer.</summary>
    public static IEnumerable<string> Between<T>(IReadOnlyList<T> due, IReadOnlyList<T> found)
    {
        if (due.Count != found.Count)
            yield return $"{found.Count} in place of {due.Count}";
        foreach (var (i, (one, other)) in due.Zip(found).Index())
        {
            var parts = Parts(one)
                .Zip(Parts(other))
                .Where(p => p.First != p.Second)
                .Select(p => $"{p.Second} in place of {p.First}")
                .ToArray();
            if (parts.Length > 0)
                yield return $"{i + 1}: {string.Join("; ", parts)}";
        }
    }

    private static IEnumerable<string> Parts<T>(T one) =>
        JsonSerializer.SerializeToNode(one) is JsonObject whole
            ? whole.Select(p => $"{p.Key} {p.Value?.ToJsonString()}")
            : [$"{one}"];
}
