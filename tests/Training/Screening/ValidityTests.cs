using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>How long a client's pages are good: until the first of the programme's end, the answers' and a clearance's (issue of
/// safety: a page does not outlive its clearance).</summary>
public sealed class ValidityTests
{
    /// <summary>A programme of two weeks from 4 January 2027 ends on Sunday 17 January; answers of 2 November 2026 are good for
    /// 180 days, until 1 May 2027.</summary>
    [Theory]
    [InlineData("", "no", "[]", "2027-01-17")]
    [InlineData("{ answers-last: 70 days }", "no", "[]", "2027-01-11")]
    [InlineData("", "yes", "[{ condition: faint-spells, by: her doctor, on: 2026-11-01, until: 2027-01-20 }]", "2027-01-17")]
    [InlineData("", "yes", "[{ condition: faint-spells, by: her doctor, on: 2026-11-01, until: 2027-01-12 }]", "2027-01-12")]
    [InlineData(
        "",
        "yes",
        "[{ condition: faint-spells, by: her doctor, on: 2026-11-01, until: 2027-01-05 }, { condition: faint-spells, by: "
            + "her doctor, on: 2026-11-01, until: 2027-01-14 }]",
        "2027-01-14"
    )]
    [InlineData("", "no", "[{ condition: faint-spells, by: her doctor, on: 2026-11-01, until: 2027-01-12 }]", "2027-01-17")]
    public void The_first_end_counts(string settings, string answer, string clearances, string until)
    {
        var club = settings.Length > 0 ? Club.Empty.Settings(settings) : Club.Empty;
        var practice = club.Exercise("sway", "hold 30 s, on left", "clear-first: [faint-spells]")
            .Member(
                "ansel",
                ["- use: sway"],
                2,
                answers: $"{{ calf-strain: no, faint-spells: {answer} }}",
                clearances: clearances
            )
            .Read();
        Assert.Equal(
            until,
            Validity
                .Of(practice, practice.Clients.Single(), Planned.Uses(practice, practice.Clients.Single()))
                .ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
        );
    }

    /// <summary>At or above 70 per cent, or longer than 10 s, and pressing, pulling or raising.</summary>
    [Theory]
    [InlineData("press 10 s at 69%, on left", false)]
    [InlineData("press 10 s at 70%, on left", true)]
    [InlineData("press 20 s at 20 to 60% in 4 steps, on left", true)]
    [InlineData("pull 11 s at 20%, on left", true)]
    [InlineData("raise 8 s at effort 7, on left", true)]
    [InlineData("raise 8 s at effort 6, on left", false)]
    [InlineData("hold 60 s, on left", false)]
    [InlineData("carry 20 m at effort 9, on left", false)]
    public void A_hard_or_long_contraction_says_keep_breathing_where_it_starts(string dose, bool says)
    {
        var plan = Club.Empty.Exercise("sway", dose).Member("ansel", ["- use: sway"]).Plan("ansel");
        var work = plan.Only().Steps.Where(s => s.Kind != StepKind.GetReady);
        Assert.All(work, s => Assert.Equal(says, s.Detail.Contains("keep breathing", StringComparison.Ordinal)));
    }
}
