using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>practice-format.md: a clearance's limit is one or a list of effort at most N %, hold at most TIME, no end-range trunk
/// bending, not lying on the front, not lying on the back.</summary>
public sealed class ClearanceLimitTests
{
    [Theory]
    [InlineData("effort at most 60 %", "2 x press 10 s at 60%, each side", "")]
    [InlineData("effort at most 60 %", "2 x press 10 s at 61%, each side", "effort at most 60 %")]
    [InlineData("effort at most 60 %", "2 x press 20 s at 20 to 60% in 4 steps, each side", "")]
    [InlineData("effort at most 60 %", "2 x press 20 s at 20 to 61% in 4 steps, each side", "effort at most 60 %")]
    [InlineData("effort at most 60 %", "2 x press 20 s at 80 to 20% in 4 steps, each side", "effort at most 60 %")]
    [InlineData("effort at most 60 %", "2 x press 10 s, each side", "effort at most 60 %")]
    [InlineData("effort at most 60 %", "2 x pull 10 s at effort 6, each side", "")]
    [InlineData("effort at most 60 %", "2 x pull 10 s at effort 7, each side", "effort at most 60 %")]
    [InlineData("effort at most 60 %", "2 x move 8 reps at effort 9, each side", "effort at most 60 %")]
    [InlineData("effort at most 60 %", "2 x move 8 reps, each side, leave 4", "")]
    [InlineData("effort at most 60 %", "2 x move 8 reps, each side, leave 3", "effort at most 60 %")]
    [InlineData("hold at most 30 s", "2 x hold 3 breaths, each side", "")]
    [InlineData("hold at most 30 s", "2 x hold 4 breaths, each side", "hold at most 30 s")]
    [InlineData("hold at most 30 s", "2 x 2 x hold 20 s, each side", "hold at most 30 s")]
    [InlineData("hold at most 30 s", "2 x 2 x hold 20 s, pause 5 s, each side", "")]
    [InlineData("effort at most 60 %", "2 x hold 60 s, each side", "")]
    [InlineData("effort at most 60 %", "2 x (press 5 s at 50% then pull 5 s at 70%), each side", "effort at most 60 %")]
    [InlineData("hold at most 30 s", "2 x hold 30 s, each side", "")]
    [InlineData("hold at most 30 s", "2 x hold 31 s, each side", "hold at most 30 s")]
    [InlineData("hold at most 1 min", "2 x hold 60 s, each side", "")]
    [InlineData("hold at most 30 s", "2 x breathe 60 s, each side", "")]
    [InlineData("hold at most 30 s", "2 x press 40 s at 40%, each side", "hold at most 30 s")]
    [InlineData("not lying on the front", "hold 30 s, each side", "")]
    [InlineData("not lying on the back", "hold 30 s, each side", "")]
    [InlineData("no end-range trunk bending", "hold 30 s, each side", "")]
    [InlineData(
        "[effort at most 60 %, hold at most 30 s]",
        "2 x press 40 s at 70%, each side",
        "effort at most 60 %|hold at most 30 s"
    )]
    public void A_limit_is_held_against_the_dose(string limit, string dose, string broken) =>
        Assert.Equal(broken, Broken(limit, dose));

    [Fact]
    public void A_limit_is_held_against_position_and_properties()
    {
        Assert.Equal("not lying on the front", Broken("not lying on the front", "hold 30 s, each side", position: "prone"));
        Assert.Equal("not lying on the back", Broken("not lying on the back", "hold 30 s, each side", position: "supine"));
        Assert.Equal("", Broken("not lying on the back", "hold 30 s, each side", position: "prone"));
        Assert.Equal(
            "no end-range trunk bending",
            Broken("no end-range trunk bending", "hold 30 s, each side", more: "properties: [trunk-end-range]")
        );
    }

    /// <summary>A limit belongs to the person: an exercise that does not name the condition, and with which it does not matter,
    /// keeps it too.</summary>
    [Theory]
    [InlineData("prone", "not lying on the front")]
    [InlineData("standing", "")]
    public void A_limit_holds_for_an_exercise_that_does_not_name_the_condition(string position, string broken)
    {
        var practice = Club
            .Empty.Exercise("sway", "hold 30 s, each side", position: position)
            .Member(
                "ansel",
                ["- use: sway"],
                answers: "{ calf-strain: no, faint-spells: yes }",
                clearances: "[{ condition: faint-spells, by: her doctor, on: 2027-01-01, until: 2028-01-01, limit: not "
                    + "lying on the front }]"
            )
            .Read();
        Assert.Equal(
            broken,
            string.Join(
                '|',
                Screening
                    .Of(practice, practice.Clients[0], Planned.Uses(practice, practice.Clients[0])[0])
                    .Cast<Objection.BeyondLimit>()
                    .Select(b => b.Limit.Words)
            )
        );
    }

    /// <summary>The week is from 4 to 10 January.</summary>
    [Theory]
    [InlineData("faint-spells", "2026-12-01", "2027-01-03", 0)]
    [InlineData("faint-spells", "2026-12-01", "2027-01-04", 1)]
    [InlineData("faint-spells", "2027-01-10", "2028-01-01", 1)]
    [InlineData("faint-spells", "2027-01-11", "2028-01-01", 0)]
    [InlineData("calf-strain", "2027-01-01", "2028-01-01", 0)]
    public void A_limit_holds_in_a_week_that_its_own_leave_touches(string condition, string on, string until, int broken)
    {
        var practice = Club
            .Empty.Exercise("sway", "hold 30 s, each side", position: "prone")
            .Member(
                "ansel",
                ["- use: sway"],
                answers: "{ calf-strain: no, faint-spells: yes }",
                clearances: $"[{{ condition: {condition}, by: her doctor, on: {on}, until: {until}, limit: not lying "
                    + "on the front }]"
            )
            .Read();
        Assert.Equal(broken, Planned.Uses(practice, practice.Clients[0])[0].Against.OfType<Objection.BeyondLimit>().Count());
    }

    [Theory]
    [InlineData("2027-01-10", "2027-01-11", 0)]
    [InlineData("2027-01-09", "2027-01-11", 1)]
    public void One_leave_may_follow_another_without_a_gap(string until, string on, int gaps)
    {
        var practice = Club
            .Empty.Exercise("sway", "hold 30 s, each side", "clear-first: [faint-spells]")
            .Member(
                "ansel",
                ["- use: sway"],
                weeks: 2,
                answers: "{ calf-strain: no, faint-spells: yes }",
                clearances: $"[{{ condition: faint-spells, by: her doctor, on: 2027-01-01, until: {until} }}, "
                    + $"{{ condition: faint-spells, by: her doctor, on: {on}, until: 2028-01-01 }}]"
            )
            .Read();
        var against = Planned.Uses(practice, practice.Clients[0])[0].Against.Cast<Objection.ClearanceShort>().ToArray();
        Assert.Equal(gaps, against.Length);
        Assert.All(against, a => Assert.Equal(new DateOnly(2028, 1, 1), a.Clearance.Value.Until));
    }

    /// <summary>Presses, pulls and holds that follow each other are one hold.</summary>
    [Theory]
    [InlineData("2 x (press 12 s at 20% then pull 12 s at 20% then hold 25 s), each side", "hold at most 49 s", "")]
    [InlineData(
        "2 x (press 12 s at 20% then pull 12 s at 20% then hold 25 s), each side",
        "hold at most 48 s",
        "hold at most 48 s"
    )]
    [InlineData("2 x (hold 25 s then move 3 reps then hold 25 s), each side", "hold at most 25 s", "")]
    public void Holds_that_follow_each_other_count_together(string dose, string limit, string broken) =>
        Assert.Equal(broken, Broken(limit, dose));

    /// <summary>30, 40, 50 and 60 s in four weeks: the third is the first beyond 40 s.</summary>
    [Fact]
    public void The_week_that_goes_beyond_is_named()
    {
        var beyond = Assert.Single(
            Objections("hold at most 40 s", "2 x hold 30-60 s, each side", weeks: 4).OfType<Objection.BeyondLimit>()
        );
        Assert.Equal(3, beyond.Week.Week);
    }

    private static string Broken(string limit, string dose, string position = "standing", string more = "") =>
        string.Join(
            '|',
            Objections(limit, dose, position: position, more: more).Cast<Objection.BeyondLimit>().Select(b => b.Limit.Words)
        );

    private static IEnumerable<Objection> Objections(
        string limit,
        string dose,
        int weeks = 1,
        string position = "standing",
        string more = ""
    )
    {
        var practice = Club
            .Empty.Exercise("sway", dose, "clear-first: [faint-spells]\n" + more, position)
            .Member(
                "ansel",
                ["- use: sway"],
                weeks,
                answers: "{ calf-strain: no, faint-spells: yes }",
                clearances: $"[{{ condition: faint-spells, by: her doctor, on: 2027-01-01, until: 2028-01-01, limit: {limit} }}]"
            )
            .Read();
        return Planned.Uses(practice, practice.Clients[0])[0].Against;
    }
}
