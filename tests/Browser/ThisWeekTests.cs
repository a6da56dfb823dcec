using System.Globalization;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>The script that finds this week, held against a table and against a second judgement that is written from the words
/// of the rule alone.</summary>
public sealed class ThisWeekTests(ITestOutputHelper output)
{
    private static readonly DateOnly Monday = new(2026, 12, 7);

    internal sealed record Need(int Session, int Times);

    internal sealed record Days(string From, string Until);

    internal sealed record Course(string Start, Days[] Pauses, int[] Back, Need[][] Needs, Dictionary<string, int> Instead);

    internal sealed record Row(string Day, int Week, int Session);

    internal sealed record Choice(int Week, string Day);

    internal sealed record Case(Course Course, Row[] Rows, Choice? Chosen, string Today);

    private sealed record Asked(string Script, Case[] Cases);

    internal sealed record Said(int Week, string Why, int Most);

    /// <summary>Four weeks of session 1 twice and session 2 once; session 3 may stand in for session 1.</summary>
    private static readonly Course Four = new(
        Monday.Iso(),
        [],
        [7, 14],
        [.. Enumerable.Range(0, 4).Select(_ => (Need[])[new(1, 2), new(2, 1)])],
        new(StringComparer.Ordinal) { ["3"] = 1 }
    );

    /// <summary>Each row: what was done ("day of the programme, from 0" / week / session), what was chosen (day / week), today,
    /// and the week with its reason and the last one that is free.</summary>
    public static TheoryData<string, string, int, string> Rows() =>
        new()
        {
            { "", "", -1, "1 early 1" },
            { "", "", 0, "1 calendar 1" },
            { "", "", 6, "1 calendar 1" },
            { "", "", 7, "1 late 2" },
            { "", "", 300, "1 late 4" },
            { "0/1/1 3/1/1 5/1/2", "", 6, "1 log 1" },
            { "0/1/1 3/1/1 5/1/2", "", 7, "2 log 2" },
            { "0/1/1 3/1/3 5/1/2", "", 7, "2 log 2" },
            { "0/1/1 5/1/2", "", 7, "1 log 1" },
            { "0/1/1 5/1/2 8/1/1", "", 8, "2 log 2" },
            { "0/1/1 3/1/1 5/1/2 8/2/1", "", 10, "2 log 2" },
            { "0/1/1 3/1/1 5/1/2", "", 12, "2 log 2" },
            { "0/1/1 3/1/1 5/1/2", "", 13, "1 break 1" },
            { "0/1/1 3/1/1 5/1/2 7/2/1", "", 15, "1 break 2" },
            { "0/1/1 3/1/1 5/1/2 7/2/1", "", 21, "1 break 2" },
            { "0/1/1 3/1/1 5/1/2 7/2/1", "", 22, "1 long-break 2" },
            { "0/1/1", "", 8, "1 break 1" },
            { "0/1/1 3/1/1 5/1/2 7/2/1 10/2/1 12/2/2 14/3/1", "", 23, "2 break 3" },
            { "0/1/1 3/1/1 5/1/2 7/2/1 10/2/1 12/2/2 14/3/1", "23/3", 23, "3 chosen 3" },
            { "0/1/1 3/1/1 5/1/2 7/2/1", "7/1", 8, "1 chosen 2" },
            { "0/1/1 3/1/1 5/1/2 7/2/1", "5/1", 8, "2 log 2" },
            { "0/1/1 3/1/1 5/1/2 7/2/1", "7/4", 8, "2 log 2" },
            { "", "7/1", 8, "1 chosen 2" },
            { "", "28/4", 29, "4 chosen 4" },
            { "", "7/1", 15, "1 late 3" },
            { "21/4/1 23/4/1 25/4/2", "", 29, "4 log 4" },
            { "0/1/1 3/1/1 5/1/2 40/2/1", "", 7, "2 log 2" },
            { "0/9/1", "", 7, "1 late 2" },
        };

    [Theory, MemberData(nameof(Rows))]
    public async Task It_is_the_week_that_the_table_says(string done, string chosen, int today, string expected)
    {
        var rows = done.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(d => d.Split('/').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToArray())
            .Select(n => new Row(Day(n[0]), n[1], n[2]))
            .ToArray();
        var choice = chosen
            .Split('/')
            .Select(n => int.TryParse(n, CultureInfo.InvariantCulture, out var number) ? number : 0)
            .ToArray()
            is [var day, var week]
            ? new Choice(week, Day(day))
            : null;
        var said = (await Ask(Script, [new(Four, rows, choice, Day(today))]))[0];
        Assert.Equal(expected, string.Create(CultureInfo.InvariantCulture, $"{said.Week} {said.Why} {said.Most}"));
    }

    /// <summary>Nothing done yet: the last week that is free is the calendar's, which a pause (its first and its last day, from
    /// 0) shifts.</summary>
    [Theory]
    [InlineData("14-27", 13, 2)]
    [InlineData("14-27", 14, 3)]
    [InlineData("14-27", 27, 3)]
    [InlineData("14-27", 34, 3)]
    [InlineData("14-27", 35, 4)]
    [InlineData("9-10", 8, 2)]
    [InlineData("9-10", 17, 2)]
    [InlineData("9-10", 18, 3)]
    [InlineData("9-10 14-20", 27, 2)]
    [InlineData("9-10 14-20", 28, 3)]
    [InlineData("9-10 18-24", 17, 2)]
    [InlineData("9-10 18-24", 31, 3)]
    [InlineData("9-10 18-24", 32, 4)]
    public async Task A_pause_shifts_the_weeks_behind_it(string pauses, int today, int free)
    {
        var course = Four with { Pauses = Pauses(pauses) };
        Assert.Equal(new(1, "late", free), (await Ask(Script, [new(course, [], null, Day(today))]))[0]);
    }

    /// <summary>The days of a pause are days without training: the page offers an earlier week by its own rule.</summary>
    [Theory]
    [InlineData(19, "2 log 2")]
    [InlineData(20, "1 break 2")]
    [InlineData(26, "1 break 2")]
    [InlineData(27, "1 long-break 2")]
    public async Task After_a_pause_the_rule_of_days_without_training_holds(int today, string expected)
    {
        var course = Four with { Pauses = Pauses("14-27") };
        Row[] rows = [new(Day(0), 1, 1), new(Day(3), 1, 1), new(Day(5), 1, 2), new(Day(12), 2, 1)];
        var said = (await Ask(Script, [new(course, rows, null, Day(today))]))[0];
        Assert.Equal(expected, string.Create(CultureInfo.InvariantCulture, $"{said.Week} {said.Why} {said.Most}"));
    }

    private static Days[] Pauses(string written) =>
        [
            .. written
                .Split(' ')
                .Select(p => p.Split('-').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToArray())
                .Select(p => new Days(Day(p[0]), Day(p[1]))),
        ];

    [Fact]
    public async Task It_agrees_with_the_second_judgement()
    {
        var (cases, expected) = Judged.Value;
        var said = await Ask(Script, cases);
        var whys = said.GroupBy(s => s.Why).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => $"{g.Key} {g.Count()}");
        output.WriteLine(
            $"{cases.Length} cases: {string.Join(", ", whys)}; chosen is asked in "
                + $"{cases.Count(c => c.Chosen is not null)}; week goes on in "
                + $"{said.Zip(cases).Count(s => s.First.Why == "log" && s.First.Week > s.Second.Rows.Max(r => r.Week))}"
        );
        Assert.All(["early", "calendar", "late", "log", "break", "long-break", "chosen"], why =>
            Assert.InRange(said.Count(s => s.Why == why), 40, 4000)
        );
        Assert.Equal(expected, said);
    }

    /// <summary>Each slip in the script is seen in the same cases.</summary>
    [Theory]
    [InlineData("idle > course.back[1]", "idle >= course.back[1]")]
    [InlineData("idle > course.back[0]", "idle >= course.back[0]")]
    [InlineData(">= need.times", "> need.times")]
    [InlineData("course.instead[row.session] || row.session", "row.session")]
    [InlineData("daysBetween(run[0].day, today) >= 7", "daysBetween(run[0].day, today) > 7")]
    [InlineData("complete && daysBetween", "daysBetween")]
    [InlineData("before.week !== row.week || daysBetween(before.day, row.day) > backOneWeek", "before.week !== row.week")]
    [InlineData("chosen.day >= since && ", "")]
    [InlineData("chosen.week <= found.most", "true")]
    [InlineData("<= course.back[0];", "<= course.back[1];")]
    [InlineData("row.day <= today && ", "")]
    [InlineData("whole[whole.length - 1]", "whole[0]")]
    [InlineData("gone < first + 7", "gone <= first + 7")]
    [InlineData("pauses[at].from) < first + 7", "pauses[at].from) <= first + 7")]
    [InlineData("pauses[at].from) < first + 7", "pauses[at].from) < first")]
    [InlineData("pauses[at].until) + 1", "pauses[at].until)")]
    public async Task A_slip_is_seen(string written, string slip)
    {
        Assert.Contains(written, Script, StringComparison.Ordinal);
        var (cases, expected) = Judged.Value;
        var said = await Ask(Script.Replace(written, slip, StringComparison.Ordinal), cases);
        var seen = said.Zip(expected).Count(s => s.First != s.Second);
        output.WriteLine($"seen in {seen} of {cases.Length}");
        Assert.InRange(seen, 1, cases.Length - 1);
    }

    /// <summary>Made cases, with what the second judgement says of each.</summary>
    private static readonly Lazy<(Case[] Cases, Said[] Expected)> Judged = new(() =>
    {
        var cases = ThisWeekMaker.Cases(4000).ToArray();
        return (cases, [.. cases.Select(SecondWeekJudgement.Of)]);
    });

    private static string Script => File.ReadAllText(Repository.Path("themes", "plain", "this-week.js"));

    internal static string Day(int day) => Monday.AddDays(day).Iso();

    private static Task<Said[]> Ask(string script, Case[] cases) =>
        Node.AskAgain<Asked, Said[]>("find-week.mjs", new(script, cases));
}
