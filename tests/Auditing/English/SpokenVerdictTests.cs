using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Auditing;

/// <summary>A figure beside the doses of several weeks: it agrees if none of them lies outside it.</summary>
public sealed class SpokenVerdictTests
{
    [Theory]
    [InlineData("Stay for 30 to 40 seconds.", SpokenAgreement.Agrees)]
    [InlineData("Stay for 20 to 50 seconds.", SpokenAgreement.Agrees)]
    [InlineData("Stay for 31 to 40 seconds.", SpokenAgreement.Disagrees)]
    [InlineData("Stay for 30 to 39 seconds.", SpokenAgreement.Disagrees)]
    [InlineData("Stay for 30 seconds.", SpokenAgreement.Disagrees)]
    [InlineData("Stay for at least 30 seconds.", SpokenAgreement.Agrees)]
    [InlineData("Stay for at least 20 seconds.", SpokenAgreement.Agrees)]
    [InlineData("Stay for at least 31 seconds.", SpokenAgreement.Disagrees)]
    [InlineData("Stay for at most 40 seconds.", SpokenAgreement.Agrees)]
    [InlineData("Stay for at most 50 seconds.", SpokenAgreement.Agrees)]
    [InlineData("Stay for at most 39 seconds.", SpokenAgreement.Disagrees)]
    [InlineData("Do it on each side.", SpokenAgreement.Agrees)]
    [InlineData("Walk ten metres.", SpokenAgreement.NotADose)]
    public void The_doses_of_all_weeks_count(string sentence, SpokenAgreement agreement) =>
        Assert.Equal(
            agreement,
            SpokenVerdict
                .Against(Assert.Single(SpokenValues.In(sentence)), Weeks("2 x hold 40 s, each side", "2 x hold 30 s, each side"))
                .Agreement
        );

    /// <summary>A side that one week has otherwise is wrong.</summary>
    [Fact]
    public void One_week_on_another_side_is_enough() =>
        Assert.Equal(
            SpokenAgreement.Disagrees,
            SpokenVerdict
                .Against(
                    Assert.Single(SpokenValues.In("Do it on each side.")),
                    Weeks("2 x hold 40 s, each side", "2 x hold 30 s, on weapon arm")
                )
                .Agreement
        );

    /// <summary>Of a dose with two times each keeps its own over the weeks.</summary>
    [Fact]
    public void Things_of_one_name_are_told_apart_by_their_turn()
    {
        var things = SpokenThing.Of(
            Weeks("2 x (hold 20 s then press 6 s at 30% then hold 40 s)", "2 x (hold 10 s then press 6 s at 50% then hold 60 s)")
        );
        Assert.Equal(
            ["sets 2", "hold 10-20", "hold 40-60", "press 6", "effort 30-50"],
            things
                .OrderBy(t =>
                    t.Name == "sets" ? 0
                    : t.Name == "hold" ? 1
                    : t.Name == "press" ? 2
                    : 3
                )
                .Select(t => $"{t.Name} {t.Number}")
        );
    }

    private static Dose[] Weeks(params string[] lines) =>
        [.. lines.Select(l => Assert.IsType<DoseLineResult.Understood>(DoseLine.Read(l, DoseSettings.Default)).Dose)];
}
