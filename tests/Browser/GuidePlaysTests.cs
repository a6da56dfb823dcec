using System.Text.Json;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>Whole sessions of every kind, from the plan to the page's list to what is drawn in the guided session, second by
/// second in made time.</summary>
public sealed partial class GuidePlaysTests(PublishedContent content, PlayedPractice practice, ITestOutputHelper output)
{
    private static readonly string[] SessionKinds =
    [
        "ramp",
        "breaths",
        "hold in breaths",
        "rounds",
        "alternate sides",
        "both sides",
        "plus",
        "then",
        "group",
        "short version",
        "travel alternate",
        "flare alternate",
    ];

    private static readonly string[] StepKinds = [.. Enum.GetNames<StepKind>()];

    [GeneratedRegex("<li data-step=[^\n]*\n", RegexOptions.CultureInvariant)]
    private static partial Regex Item();

    [Fact]
    public async Task The_list_on_the_page_is_the_plans()
    {
        var (lists, steps) = (0, 0);
        await using var context = await GuidedPage.ContextAsync(content);
        foreach (var session in practice.All().GroupBy(p => p.PathIn(practice.FolderOf(p.Client.Id))))
        {
            var page = await GuidedPage.OpenAt(context, session.Key, session.First().Now);
            var found = await ListsOf(page);
            Assert.Empty(AgainstPlan([.. session], found));
            (lists, steps) = (lists + found.Length, steps + found.Sum(l => l.Steps.Length));
            await page.Page.CloseAsync();
        }

        output.WriteLine($"{lists} lists of {practice.Plans.Count} clients, {steps} items");
        Assert.Equal(practice.All().Count(), lists);
    }

    [Fact]
    public async Task What_is_played_is_the_list_on_the_page()
    {
        var all = practice.All().ToArray();
        var played = new List<(PlayedSession PlayedSession, Drawn[] Drawn)>();
        foreach (var playing in LongProof.Whole ? all : Few(all))
        {
            var (list, found, troubles) = await Play(playing, practice.FolderOf(playing.Client.Id));
            Assert.Empty(troubles);
            Assert.Empty(found.Against(playing, list));
            Assert.DoesNotMatch("[{}]", string.Concat(found.Drawn.Select(d => d.What + d.Side + d.Detail + d.Next + d.Told)));
            played.Add((playing, found.Drawn));
            output.WriteLine(
                $"{playing}: {list.Length} steps, {list.Sum(s => s.Seconds)} s, waited {found.Waits.Length} times: "
                    + $"{string.Join(", ", playing.Kinds())}"
            );
        }

        output.WriteLine(Spread("sessions", played.SelectMany(p => p.PlayedSession.Kinds())));
        output.WriteLine(Spread("steps", played.SelectMany(p => p.Drawn).Select(d => d.Kind)));
        output.WriteLine(
            Spread("efforts", played.SelectMany(p => p.Drawn).Where(d => d.Level > 0).Select(d => $"level {d.Level}"))
        );
        output.WriteLine(
            Spread("breaths paced in", played.SelectMany(p => p.Drawn).Where(d => d.Breaths.Length > 0).Select(d => d.Kind))
        );
        Assert.Equal(
            SessionKinds.Order(StringComparer.Ordinal),
            played.SelectMany(p => p.PlayedSession.Kinds()).Distinct().Order(StringComparer.Ordinal)
        );
        Assert.Equal(StepKinds.Length, played.SelectMany(p => p.Drawn).Select(d => d.Kind).Distinct().Count());
        Assert.Equal([1, 2, 3, 4, 5], played.SelectMany(p => p.Drawn).Select(d => d.Level).Where(l => l > 0).Distinct().Order());
    }

    [Theory]
    [InlineData(1, "an item left out", "", "")]
    [InlineData(1, "two items swapped", "", "")]
    [InlineData(1, "another side", " A l p15 ", " A r p15 ")]
    [InlineData(1, "another side in words", ", left leg</b>", ", right leg</b>")]
    [InlineData(1, "other seconds", "datetime=PT10S", "datetime=PT11S")]
    [InlineData(1, "another verb", "data-step=\"press", "data-step=\"pull")]
    [InlineData(1, "another effort", " p15 ", " p35 ")]
    [InlineData(1, "another exercise", "data-step=\"press B ", "data-step=\"press A ")]
    [InlineData(2, "other breaths", " b8 ", " b7 ")]
    [InlineData(2, "other breaths in words", "</b> 8 slow breaths", "</b> 9 slow breaths")]
    [InlineData(3, "another felt effort", " f7 ", " f6 ")]
    [InlineData(3, "another round", " s2 ", " s3 ")]
    [InlineData(3, "other repetitions", " n8", " n6")]
    public async Task A_list_that_is_not_the_plans_is_seen(int session, string fault, string written, string slip)
    {
        var playing = practice.Of(session);
        var folder = practice.Changed(playing.Client.Id, playing.Session.Path, html => Faulty(html, fault, written, slip));
        await using var context = await GuidedPage.ContextAsync(content);
        var lists = await ListsOf(await GuidedPage.OpenAt(context, playing.PathIn(folder), playing.Now));
        var found = AgainstPlan([playing], [lists.First(l => l.Weeks.Split(' ')[0] == "1")]);
        output.WriteLine(string.Join('\n', found));
        Assert.NotEmpty(found);
    }

    /// <summary>A script that plays something else than the list, and the session in which it does.</summary>
    [Theory]
    [InlineData("session.js", 1, "n++) if (!isOut(n)) return n;", "n++) if (!isOut(n) && n !== 7) return n;")]
    [InlineData("session.js", 1, "n++) if (!isOut(n)) return n;", "n++) if (!isOut(n) && steps[n].kind !== 'pause') return n;")]
    [InlineData("session.js", 1, "it.ends = from + it.left;", "it.ends = from + it.left - second;")]
    [InlineData("session.js", 1, "(gates[i] && it.wait) ||", "")]
    [InlineData(
        "session.js",
        1,
        ".map(function (item) { return stepOf(item, root); })",
        ".map(function (item, i, items) { return stepOf(items[i ^ 1] || item, root); })"
    )]
    [InlineData("session.js", 1, "side: parts.side,", "side: '',")]
    [InlineData("session.js", 1, "getAttribute('datetime'))[1]),", "getAttribute('datetime'))[1]) + 1,")]
    [InlineData("session.js", 3, "percent: 'p' in parts ? parts.p : null", "percent: 'f' in parts ? parts.f : null")]
    [InlineData("session.js", 2, "breaths: parts.b || 0", "breaths: 5")]
    [InlineData("session.js", 1, "step.percent / 20", "step.percent / 25")]
    [InlineData("session.js", 3, "Math.ceil(step.felt / 2)", "Math.floor(step.felt / 2)")]
    [InlineData("session.js", 2, "share < inwards", "share < 1")]
    [InlineData("session.js", 2, "step.breaths > 0 &&", "step.breaths > 5 &&")]
    [InlineData("session.js", 4, "['press', 'pull', 'raise']", "['press', 'raise']")]
    [InlineData("session.js", 1, "step.side === 'left' ? phrases.sideLeft", "step.side === 'left' ? phrases.sideRight")]
    [InlineData("session.js", 1, "const step = steps[next];", "const step = steps[at];")]
    [InlineData("session.js", 2, "left === step.seconds && step.breaths > 0", "false")]
    [InlineData("session.js", 3, "left === step.seconds && step.reps > 0", "false")]
    [InlineData("session.js", 1, "last.side !== step.side) number++", "false) number++")]
    public async Task Another_play_than_the_list_is_seen(string script, int session, string written, string slip)
    {
        var playing = practice.Of(session);
        var folder = practice.Changed(playing.Client.Id, script, text => Once(text, written, slip));
        var (list, played, _) = await Play(playing, folder);
        var found = played.Against(playing, list);
        output.WriteLine($"{found.Count} differences, the first: {found[0]}");
        Assert.NotEmpty(found);
    }

    private static List<string> AgainstPlan(PlayedSession[] due, ListedWeeks[] found) =>
        [
            .. Differences.Between([.. due.Select(p => string.Join(' ', p.Weeks.Weeks))], [.. found.Select(f => f.Weeks)]),
            .. due.Zip(found)
                .SelectMany(p =>
                    Differences
                        .Between([.. p.First.Weeks.Steps.Select(s => Listed.Of(p.First.Session, s))], p.Second.Steps)
                        .Concat(Differences.Between([$"PT{p.First.Weeks.Steps.Sum(s => s.Seconds.Value)}S"], [p.Second.Total]))
                ),
        ];

    private async Task<(Listed[] List, Played Played, IReadOnlyList<string> Troubles)> Play(PlayedSession playing, string folder)
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.OpenAt(context, playing.PathIn(folder), playing.Now);
        var list = (await ListsOf(page)).Single(l => l.Weeks.Split(' ').Contains($"{playing.Week}")).Steps;
        await page.Start();
        return (
            list,
            JsonSerializer.Deserialize<Played>(await page.Page.EvaluateAsync<string>(Played.Whole), JsonSerializerOptions.Web)!,
            page.Troubles
        );
    }

    private static async Task<ListedWeeks[]> ListsOf(GuidedPage page) =>
        JsonSerializer.Deserialize<ListedWeeks[]>(
            await page.Page.EvaluateAsync<string>(Listed.In("main")),
            JsonSerializerOptions.Web
        )!;

    /// <summary>As few as show every kind of session and of step, each time the one that shows most that was not shown.</summary>
    private static IEnumerable<PlayedSession> Few(PlayedSession[] all)
    {
        var missing = SessionKinds.Concat(StepKinds).ToHashSet(StringComparer.Ordinal);
        while (missing.Count > 0)
        {
            var next = all.MaxBy(p => Shows(p).Count(missing.Contains)) ?? all[0];
            Assert.NotEqual(0, missing.RemoveWhere(Shows(next).Contains));
            yield return next;
        }

        static HashSet<string> Shows(PlayedSession playing) =>
            [.. playing.Kinds(), .. playing.Weeks.Steps.Select(s => s.Kind.ToString())];
    }

    private static string Faulty(string html, string fault, string written, string slip)
    {
        var items = Item().Matches(html);
        return fault switch
        {
            "an item left out" => html.Remove(items[3].Index, items[3].Length),
            "two items swapped" => html.Replace(
                items[3].Value + items[4].Value,
                items[4].Value + items[3].Value,
                StringComparison.Ordinal
            ),
            _ => html[..items[0].Index]
                + new Regex(Regex.Escape(written), RegexOptions.CultureInvariant).Replace(html[items[0].Index..], slip, 1),
        };
    }

    private static string Once(string text, string written, string slip)
    {
        Assert.Equal(2, text.Split(written).Length);
        return text.Replace(written, slip, StringComparison.Ordinal);
    }

    private static string Spread(string name, IEnumerable<string> all)
    {
        var kinds = all.GroupBy(k => k).OrderBy(g => g.Key, StringComparer.Ordinal);
        return $"{name}: {string.Join(", ", kinds.Select(g => $"{g.Key} {g.Count()}"))}";
    }
}
