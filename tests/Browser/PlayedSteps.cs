using System.Globalization;
using System.Text.Json;
using Gradus.Domain;
using Gradus.Planning;
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
              const [work, time] = [item.querySelector('b'), item.querySelector('time')];
              const copy = item.cloneNode(true);
              copy.querySelectorAll('b, time').forEach(one => one.remove());
              const said = text(work ?? copy);
              return {
                ...parts, exercise: article?.dataset.about ?? '', time: time.getAttribute('datetime'),
                what: said.replace(new RegExp(`^${letter} `), `${article ? text(article.querySelector('h2 a')) : ''}: `), detail: work ? text(copy) : ''
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

    public string Title => What.Split(": ")[0];

    /// <summary>What is done, without the title.</summary>
    public string Words => What.Split(": ")[^1];

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
/// <param name="Told">What is to be done.</param>
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
    string[] Breaths,
    bool IsTold,
    string Detail,
    string Next,
    string Place,
    string Told,
    int Lasts
)
{
    private static readonly Dictionary<string, string> Doing = new()
    {
        ["get-ready"] = "Get ready",
        ["hold"] = "Hold for *",
        ["breathe"] = "Breathe slowly: *",
        ["press"] = "Press for *",
        ["pull"] = "Pull for *",
        ["raise"] = "Lift for *",
        ["move"] = "Move: *",
        ["carry"] = "Carry for *",
        ["pause"] = "Pause for *",
        ["rest"] = "Rest for *",
        ["switch"] = "Change sides",
        ["transition"] = "Next exercise",
    };

    private static readonly string[] Efforts = ["", "very gentle", "gentle", "medium", "hard", "very hard"];

    /// <summary>What has to be drawn for an item of the list.</summary>
    public static Drawn Of(Listed[] list, int i)
    {
        var (step, seconds) = (list[i], list[i].Seconds);
        var breaths = step.Breaths.Length > 0 && !step.IsHard ? int.Parse(step.Breaths, CultureInfo.InvariantCulture) : 0;
        return new(
            step.Title,
            step.Side.Length > 0 ? char.ToUpperInvariant(step.Side[0]) + step.Side[1..] + " side" : "",
            step.Side,
            step.Kind,
            seconds < 100 ? $"{seconds}" : $"{seconds / 60}:{seconds % 60:00}",
            step.Level,
            step.Level,
            [.. Enumerable.Range(0, 2 * breaths).Select(n => n % 2 == 0 ? "breathe in" : "breathe out")],
            step.IsWork && step.IsHard,
            string.Join(", ", new[] { step.Detail, step.Load }.Where(t => t.Length > 0)),
            NextOf(list, i),
            PlaceOf(list, i),
            ToldOf(step),
            seconds
        );
    }

    /// <summary>As the coach counts it, or how long it takes; with its effort.</summary>
    private static string ToldOf(Listed step)
    {
        var amount =
            step.Breaths.Length > 0 ? Of(int.Parse(step.Breaths, CultureInfo.InvariantCulture), "slow breath")
            : step.Reps.Length > 0 ? Of(int.Parse(step.Reps, CultureInfo.InvariantCulture), "repetition")
            : Span(step.Seconds);
        var told = Doing[step.Kind].Replace("*", amount, StringComparison.Ordinal);
        return step.Level > 0 ? $"{told}, {Efforts[step.Level]}" : told;
    }

    private static string NextOf(Listed[] list, int i)
    {
        if (i + 1 == list.Length)
            return "Next: the end";
        var next = list[i + 1];
        var other = next.Side.Length > 0 ? $"{next.Title}, {next.Side}" : next.Title;
        return $"Next: {(next.Exercise == list[i].Exercise ? next.Words : other)}";
    }

    /// <summary>Exercises and sides are counted, not steps.</summary>
    public static string PlaceOf(Listed[] list, int i)
    {
        int To(int end) =>
            Enumerable
                .Range(0, end + 1)
                .Count(n => n == 0 || (list[n].Exercise, list[n].Side) != (list[n - 1].Exercise, list[n - 1].Side));
        return $"{To(i)} of {To(list.Length - 1)}";
    }

    private static string Of(int n, string unit) => n == 1 ? $"1 {unit}" : $"{n} {unit}s";

    private static string Span(int seconds)
    {
        var (minutes, rest) = Math.DivRem(seconds, 60);
        return minutes == 0 ? Of(seconds, "second")
            : rest == 0 ? Of(minutes, "minute")
            : $"{Of(minutes, "minute")} {Of(rest, "second")}";
    }
}
