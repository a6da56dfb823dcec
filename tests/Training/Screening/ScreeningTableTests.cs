using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

public sealed class ScreeningTableTests(ITestOutputHelper output)
{
    private static readonly string[] Lists = ["not-with", "clear-first"];
    private static readonly string[] Answers = ["", "no", "yes", "yes, left", "yes, right"];
    private static readonly string[] Loads =
    [
        "ankle",
        "other ankle",
        "ankle, other ankle",
        "knee, other knee",
        "knee, ankle",
        "hip",
    ];
    private static readonly string[] Positions = ["side-lying", "standing"];
    private static readonly string[] Sides = ["left", "right", "each side"];

    private static readonly (string Name, string Text)[] Clearances =
    [
        ("none", "[]"),
        ("covers", Clearance("2027-01-11", "2027-01-24", "")),
        ("starts a day late", Clearance("2027-01-12", "2027-01-24", "")),
        ("ends a day early", Clearance("2027-01-11", "2027-01-23", "")),
        ("limit kept", Clearance("2027-01-11", "2027-01-24", ", limit: effort at most 50 %")),
        ("limit broken", Clearance("2027-01-11", "2027-01-24", ", limit: effort at most 49 %")),
    ];

    private static readonly (ScreeningCase Case, string Said)[] All = [.. Screened()];

    public static TheoryData<ScreeningSlip> Slips => [.. Enum.GetValues<ScreeningSlip>().Where(s => s != ScreeningSlip.None)];

    [Fact]
    public void Every_case_is_judged_as_the_sentences_say()
    {
        Assert.Equal(
            Lists.Length * Answers.Length * Loads.Length * Positions.Length * Sides.Length * Clearances.Length,
            All.Length
        );
        foreach (var wrong in All.Where(a => a.Said != PlainJudgement.Of(a.Case, ScreeningSlip.None)).Take(10))
            output.WriteLine($"{wrong.Case}: {wrong.Said}, not {PlainJudgement.Of(wrong.Case, ScreeningSlip.None)}");
        Assert.Equal(
            "",
            string.Join(
                "\n",
                All.Where(a => a.Said != PlainJudgement.Of(a.Case, ScreeningSlip.None))
                    .Select(a => $"{a.Case}: {a.Said}, not {PlainJudgement.Of(a.Case, ScreeningSlip.None)}")
            )
        );
        foreach (var outcome in All.GroupBy(a => a.Said).OrderBy(g => g.Key, StringComparer.Ordinal))
            output.WriteLine($"{outcome.Count(), 5}  {outcome.Key}");
        Assert.Equal(
            ["allowed", "beyond limit", "clearance short", "forbidden", "not asked", "not cleared"],
            All.Select(a => a.Said).Distinct().Order(StringComparer.Ordinal)
        );
    }

    /// <summary>The comparison is no empty one: a screening that made this mistake would fail it.</summary>
    [Theory, MemberData(nameof(Slips))]
    public void A_mistake_of_this_kind_would_be_seen(ScreeningSlip slip)
    {
        var seen = All.Count(a => a.Said != PlainJudgement.Of(a.Case, slip));
        output.WriteLine($"{slip}: {seen} of {All.Length} cases differ");
        Assert.True(seen > 0);
    }

    /// <summary>One practice for all: an exercise for each list and load, used on each side, and a member for each answer and
    /// clearance.</summary>
    private static IEnumerable<(ScreeningCase Case, string Said)> Screened()
    {
        var exercises = (
            from list in Lists
            from loads in Loads
            from position in Positions
            select (list, loads, position)
        ).ToArray();
        var uses = (
            from exercise in exercises.Index()
            from side in Sides
            select (exercise.Index, exercise.Item.list, exercise.Item.loads, exercise.Item.position, side)
        ).ToArray();
        var sessions = string.Join(
            '\n',
            uses.Select(u => $"- use: e{u.Index}\n  side: {u.side}\n  from-week: 2\n  until-week: 3")
        );
        var members = (from answer in Answers from clearance in Clearances select (answer, clearance)).ToArray();
        var club = exercises
            .Index()
            .Aggregate(
                Club.Empty.With(
                    "conditions.yaml",
                    """
                    - { id: ankle-trouble, name: a bad ankle, question: Is an ankle of yours bad?, where: ankle, sided: yes }
                    - { id: calf-strain, name: a calf strain, question: Have you strained a calf?, where: ankle, sided: yes }
                    """
                ),
                (p, e) =>
                    p.Exercise(
                        $"e{e.Index}",
                        "2 x press 10 s at 50%, each side",
                        $"{(e.Item.list == "not-with" ? "" : "not-with: [calf-strain]\n")}{e.Item.list}: "
                            + $"[ankle-trouble]\nloads: [{e.Item.loads}]",
                        e.Item.position
                    )
            );
        var practice = members
            .Index()
            .Aggregate(club, (p, m) =>
                p.Member(
                    $"m{m.Index}",
                    [sessions],
                    weeks: 4,
                    clearances: m.Item.clearance.Text,
                    answers: m.Item.answer.Length == 0
                        ? "{ calf-strain: no }"
                        : $"{{ calf-strain: no, ankle-trouble: \"{m.Item.answer}\" }}"
                )
            )
            .Read();
        return from member in members.Index()
            let client = practice.Find(new ClientId($"m{member.Index}"))
            from use in Planned.Uses(practice, client).Zip(uses)
            let asked = new ScreeningCase(
                use.Second.list,
                member.Item.answer,
                use.Second.loads,
                use.Second.position,
                use.Second.side,
                member.Item.clearance.Name
            )
            select (asked, Say(use.First.Against));
    }

    /// <summary>The first: what else stands in the way (a limit that is broken besides) is told too.</summary>
    private static string Say(IEnumerable<Objection> objections) =>
        string.Join(
            " and ",
            objections
                .Take(1)
                .Select(o =>
                    o switch
                    {
                        Objection.Forbidden => "forbidden",
                        Objection.NotAsked => "not asked",
                        Objection.NotCleared => "not cleared",
                        Objection.ClearanceShort => "clearance short",
                        Objection.BeyondLimit => "beyond limit",
                        _ => throw new NotSupportedException($"{o}"),
                    }
                )
                .DefaultIfEmpty("allowed")
        );

    private static string Clearance(string on, string until, string limit) =>
        $"[{{ condition: ankle-trouble, by: her physiotherapist, on: {on}, until: {until}{limit} }}]";
}
