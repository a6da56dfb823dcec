using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Where one thing that stands against a use ends and the next begins; practice-format.md and the rules'
/// pages.</summary>
public sealed class ScreeningEdgesTests
{
    private const string Cleared = "[{ condition: CONDITION, by: a doctor, on: 2026-12-20, until: 2027-12-31MORE }]";

    private static readonly LittlePractice Conditions = Club.Empty.With(
        "conditions.yaml",
        """
        - { id: calf-strain, name: a calf strain, question: Have you strained a calf?, where: whole body }
        - { id: sore-knee, name: a sore knee, question: Is a knee sore?, where: knee, sided: yes }
        """
    );

    /// <summary>Who asks for a leave first may do it with one, also where it loads the place.</summary>
    [Theory]
    [InlineData("clear-first: [sore-knee]", "[]", "NotCleared")]
    [InlineData("clear-first: [sore-knee]", "sore-knee", "")]
    [InlineData("not-with: [sore-knee, calf-strain]", "sore-knee", "Forbidden")]
    [InlineData("", "sore-knee", "Loaded")]
    public void What_loads_a_side_is_done_with_it_only_where_it_asks_for_a_leave(string more, string cleared, string against) =>
        Assert.Equal(against, Against(Of(more, "sore-knee: \"yes, left\"", Leave(cleared))));

    [Theory]
    [InlineData("-3; bend sharp left knee", "2027-01-03", "")]
    [InlineData("+0; bend sharp left knee", "2027-01-03", "CameBack")]
    [InlineData("+0; bend numb left knee", "2027-01-05", "CameBack")]
    public void What_came_back_stands_against_it(string log, string answered, string against)
    {
        var (practice, client) = Read("", "sore-knee: no", "[]");
        client = client with { Log = ToldLog.Log(log), Answered = DateOnly.ParseExact(answered, "yyyy-MM-dd") };
        Assert.Equal(against, Against(Assert.Single(Planned.Uses(practice, client))));
    }

    /// <summary>A clinician's leave for pain has limits like any other.</summary>
    [Theory]
    [InlineData("hold at most 30 s", "")]
    [InlineData("hold at most 29 s", "BeyondLimit")]
    public void The_limit_of_a_leave_for_pain_holds(string limit, string against) =>
        Assert.Equal(against, Against(Of("", "sore-knee: no", Leave("pain-now", $", limit: {limit}"))));

    /// <summary>A disease of the heart wants a leave before any training of somebody who is not active; asthma matters with hard
    /// work and jumps alone (floor.yaml).</summary>
    [Theory]
    [InlineData("heart-disease", 1, true)]
    [InlineData("heart-disease", 4, true)]
    [InlineData("asthma", 4, false)]
    [InlineData("very-mobile-joints", 1, true)]
    public void It_rests_on_a_leave_only_where_one_is_asked_for(string condition, int weeks, bool rests)
    {
        var (practice, client) = Read("", $"sore-knee: no, regularly-active: no, {condition}: yes", Leave(condition), weeks);
        Assert.Equal(
            rests,
            Screening.RestsOnClearance(
                practice,
                client,
                Assert.Single(Planned.Uses(practice)),
                practice.Conditions.Single(c => c.Id.Text == condition)
            )
        );
    }

    /// <summary>Of several leaves the one that it rests on is named, once.</summary>
    [Fact]
    public void It_is_told_on_which_leave_it_rests()
    {
        var (practice, client) = Read(
            "clear-first: [sore-knee]",
            "sore-knee: yes",
            "[{ condition: calf-strain, by: a doctor, on: 2026-12-20, until: 2027-12-31 }, "
                + "{ condition: sore-knee, by: a doctor, on: 2026-12-21, until: 2027-12-31 }]"
        );
        var reason = Assert.Single(Assert.Single(Allowance.Of(practice, client)).Reasons);
        Assert.Equal(new DateOnly(2026, 12, 21), reason.Cleared?.On);
    }

    /// <summary>A set that leaves so many repetitions undone is felt as that much less than 10 (Zourdos 2016, J Strength Cond Res
    /// 30:267-75, from memory); 7 of 10 is hard.</summary>
    [Theory]
    [InlineData("2 x move 6 reps, each side, leave 3", true)]
    [InlineData("2 x move 6 reps, each side, leave 4", false)]
    [InlineData("2 x move 6 reps, each side, leave 12", false)]
    public void What_is_left_undone_says_how_hard_it_is(string dose, bool isHard)
    {
        var exercise = Assert.Single(Club.Empty.Exercise("bend", dose).Read().Exercises);
        Assert.Equal(isHard, Hardness.IsVigorous(exercise.Drill, exercise.Dose.Dose!));
    }

    private static string Leave(string condition, string more = "") =>
        condition == "[]"
            ? condition
            : Cleared.Replace("CONDITION", condition, StringComparison.Ordinal).Replace("MORE", more, StringComparison.Ordinal);

    private static string Against(Use use) => string.Join(", ", use.Against.Select(a => a.GetType().Name));

    private static Use Of(string more, string answers, string clearances) =>
        Assert.Single(Planned.Uses(Read(more, answers, clearances).Practice));

    private static (Practice Practice, Client Client) Read(string more, string answers, string clearances, int weeks = 1)
    {
        var practice = Conditions
            .Exercise("bend", "2 x hold 30 s, each side", more, "supine", "knee flexion")
            .Member(
                "ada",
                ["- use: bend\n  side: left"],
                weeks,
                answers: $"{{ calf-strain: no, {answers} }}",
                clearances: clearances
            )
            .Read();
        return (practice, practice.Clients.Single());
    }
}
