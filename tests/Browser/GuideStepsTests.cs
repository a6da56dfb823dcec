using Gradus.Tests.House;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>The script that knows where somebody is in a session, held against tables and against a second judgement that counts
/// down.</summary>
public sealed class GuideStepsTests(ITestOutputHelper output)
{
    /// <summary>A tenth of them would not show every slip.</summary>
    private static readonly int Made = LongProof.Whole ? 3000 : 1000;

    /// <summary>The made sessions, with where the second judgement says that each stands.</summary>
    private static readonly Lazy<(Led Case, string Stands)[]> Judged = new(() =>
        [.. GuideMaker.Cases(Made).Select(c => (c, SecondGuide.Of(c)))]
    );

    private static IEnumerable<Led> Cases => Judged.Value.Select(j => j.Case);

    /// <summary>Five seconds of getting ready, thirty of holding left, five of changing sides, thirty right, ten to the next
    /// exercise, five to get ready, fifteen of holding.</summary>
    private static readonly Piece[] Two =
    [
        new("get-ready", "a", "left", 5, ["knee:work"]),
        new("hold", "a", "left", 30, ["knee:work"]),
        new("switch", "a", "right", 5, ["knee:work"]),
        new("hold", "a", "right", 30, ["knee:work"]),
        new("transition", "b", "", 10, ["wrist:work"]),
        new("get-ready", "b", "", 5, ["wrist:work"]),
        new("hold", "b", "", 15, ["wrist:work"]),
    ];

    /// <summary>Whether somebody is waited for, what is pressed (second:what), when it is asked at last, and what was told and
    /// where it stands then.</summary>
    public static TheoryData<bool, string, int, string, string> Rows() =>
        new()
        {
            {
                false,
                "",
                100,
                "0 step 0, 5 step 1, 20 half 1, 35 step 2, 40 step 3, 55 half 3, 70 step 4, 80 step 5, 85 step 6, 100 end 6",
                "done 0 0 0 out  did 1,3,6"
            },
            { true, "", 100, "0 step 0, 5 step 1, 20 half 1, 35 step 2, 40 wait 3", "waiting 3 30000 60000 out  did 1" },
            {
                true,
                "45:longer 50:back",
                51,
                "0 step 0, 5 step 1, 20 half 1, 35 step 2, 40 wait 3, 45 longer 3, 50 step 2",
                "running 2 4000 74000 out  did 1"
            },
            {
                true,
                "50:go",
                60,
                "0 step 0, 5 step 1, 20 half 1, 35 step 2, 40 wait 3, 50 step 3",
                "running 3 20000 50000 out  did 1"
            },
            {
                false,
                "10:pause 25:go",
                60,
                "0 step 0, 5 step 1, 10 pause 1, 25 go 1, 35 half 1, 50 step 2, 55 step 3",
                "running 3 25000 55000 out  did 1"
            },
            {
                false,
                "10:pause 11:pause 12:go 13:go",
                14,
                "0 step 0, 5 step 1, 10 pause 1, 12 go 1",
                "running 1 23000 88000 out  did "
            },
            { false, "1:start 2:start", 4, "0 step 0", "running 0 1000 96000 out  did " },
            { false, "7:back", 8, "0 step 0, 5 step 1, 7 step 0", "running 0 4000 99000 out  did " },
            { false, "9:back", 10, "0 step 0, 5 step 1, 9 step 1", "running 1 29000 94000 out  did " },
            { false, "6:forward", 7, "0 step 0, 5 step 1, 6 step 2", "running 2 4000 64000 out  did " },
            { false, "6:longer", 44, "0 step 0, 5 step 1, 6 longer 1, 25 half 1", "running 1 1000 66000 out  did " },
            {
                false,
                "90:forward",
                91,
                "0 step 0, 5 step 1, 20 half 1, 35 step 2, 40 step 3, 55 half 3, 70 step 4, 80 step 5, 85 step 6, 90 end 6",
                "done 0 0 0 out  did 1,3"
            },
            { false, "10:ease", 11, "0 step 0, 5 step 1, 10 hurts 1, 10 softer 1", "paused 1 25000 90000 out  did " },
            { false, "10:stop", 11, "0 step 0, 5 step 1, 10 hurts 1, 10 wait 4", "waiting 4 10000 30000 out a did " },
            {
                false,
                "90:stop",
                91,
                "0 step 0, 5 step 1, 20 half 1, 35 step 2, 40 step 3, 55 half 3, 70 step 4, 80 step 5, 85 step 6, 90 "
                    + "hurts 6, 90 end 6",
                "done 0 0 0 out b did 1,3"
            },
            { false, "10:end 11:go 12:back", 20, "0 step 0, 5 step 1, 10 end 1", "ended 0 0 0 out  did " },
        };

    [Theory, MemberData(nameof(Rows))]
    public async Task It_goes_as_the_table_says(bool wait, string pressed, int last, string told, string stands)
    {
        Act[] acts =
        [
            new(0, "start"),
            .. pressed
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(p => p.Split(':'))
                .Select(p => new Act(Number(p[0]) * 1000, p[1])),
        ];
        var stand = (
            await Ask<Stand>([new Led(Two, wait, null, [.. Enumerable.Range(0, (last * 4) + 1).Select(t => t * 250)], acts)])
        )[0];
        Assert.Equal(
            told,
            string.Join(", ", stand.Told.Select(t => t.Split(' ')).Select(t => $"{Number(t[0]) / 1000} {t[1]} {t[2]}"))
        );
        Assert.Equal(stands, stand.Line);
    }

    /// <summary>However seldom it is asked, unless so seldom that the device must have slept: then it is where it was.</summary>
    [Theory]
    [InlineData("0 1000 60000 89000", "running 6 11000 11000 out  did 1,3")]
    [InlineData("0 90000", "running 6 10000 10000 out  did 1,3")]
    [InlineData("0 10000 101000", "paused 1 25000 90000 out  did ")]
    [InlineData("0 10000 3610000", "paused 1 25000 90000 out  did ")]
    public async Task It_is_right_however_seldom_it_is_asked(string ticks, string stands)
    {
        var stand = (await Ask<Stand>([new Led(Two, false, null, [.. ticks.Split(' ').Select(Number)], [new(0, "start")])]))[0];
        Assert.Equal(stands, stand.Line);
    }

    [Fact]
    public async Task A_session_of_one_step_begins_and_ends()
    {
        var stand = (await Ask<Stand>([new Led([Two[1]], true, null, [0, 15_000, 30_000], [new(0, "start")])]))[0];
        Assert.Equal(["0 step 0", "15000 half 0", "30000 end 0"], stand.Told);
        Assert.Equal("done 0 0 0 out  did 0", stand.Line);
    }

    [Fact]
    public async Task Who_does_not_know_an_exercise_is_shown_it_before_its_first_step()
    {
        var stand = (
            await Ask<Stand>([
                new Led(Two, false, ["b"], [0, 1000], [new(0, "start")]),
                new Led(Two, false, ["a"], [.. Enumerable.Range(0, 400).Select(t => t * 250)], [new(0, "start")]),
            ])
        ).Select(s => s.Line);
        Assert.Equal(["waiting 0 5000 100000 out  did ", "waiting 5 5000 20000 out  did 1,3"], stand);
    }

    /// <summary>Beside what is to be done, one sentence half-way where a step is longer than 20 seconds, and one at the end:
    /// however often it is asked.</summary>
    [Fact]
    public async Task Nothing_is_said_every_second()
    {
        var stand = (
            await Ask<Stand>([new Led(Two, false, null, [.. Enumerable.Range(0, 1001).Select(t => t * 100)], [new(0, "start")])])
        )[0];
        Assert.Equal(Two.Count(s => s.Seconds > 20) + 1, stand.Sayings);
    }

    [Fact]
    public async Task It_agrees_with_the_second_judgement()
    {
        var stands = await Ask<Stand>(Cases);
        var phases = stands.GroupBy(s => s.Phase).OrderBy(g => g.Key, StringComparer.Ordinal);
        output.WriteLine(
            $"{Made} sessions: {string.Join(", ", phases.Select(g => $"{g.Key} {g.Count()}"))}; "
                + $"something left out in {stands.Count(s => s.Out.Length > 0)}"
        );
        Assert.All(["done", "running", "waiting", "paused", "ended"], phase =>
            Assert.InRange(stands.Count(s => s.Phase == phase), 15, Made)
        );
        Assert.Equal(Judged.Value.Select(j => j.Stands), stands.Select(s => s.Line));
    }

    /// <summary>So "back" has nothing to begin again there, also after "longer": it is always the step before.</summary>
    [Fact]
    public async Task Who_is_waited_for_has_the_whole_step_ahead()
    {
        Assert.All(await Ask<Stand>(Cases), stand => Assert.Equal(0, stand.Cut));
        Assert.Contains(await Ask<Stand>(Cases, Slip("it.left += 10 * second;", "")), stand => stand.Cut > 0);
    }

    /// <summary>Each slip in the scripts is seen in the same sessions.</summary>
    [Theory]
    [InlineData("enter(after(it.at), it.ends)", "enter(after(it.at), time)")]
    [InlineData("if (gradus.isWork(steps[it.at])) it.did", "it.did")]
    [InlineData("before.side !== step.side", "false")]
    [InlineData("> justBegun", ">= justBegun")]
    [InlineData("      go: function () {\n        guide.tick();", "      go: function () {")]
    [InlineData("i === after(-1)", "i === 0")]
    [InlineData("it.ends += 10 * second;", "")]
    [InlineData("it.left += 10 * second;", "")]
    [InlineData("it.ends = now() + it.left;", "it.ends = now();")]
    [InlineData("guide.leaveOut(out);", "guide.leaveOut([steps[it.at].exercise]);")]
    [InlineData("parts[1] === 'other' ? opposite : step.side", "step.side")]
    [InlineData("|| parts[1] === place.side)", "|| true)")]
    public async Task A_slip_is_seen(string written, string slip)
    {
        var stands = await Ask<Stand>(Cases, Slip(written, slip));
        var seen = stands.Zip(Judged.Value).Count(s => s.First.Line != s.Second.Stands);
        output.WriteLine($"seen in {seen} of {Made}");
        Assert.InRange(seen, 1, Made);
    }

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
