namespace Gradus.Tests.Trainings;

/// <summary>Made clients, judged as a physiotherapist would, each for one reason: what is said, what is done, what must come of
/// it.</summary>
public sealed class ClinicTableTests
{
    private static readonly ClinicCase[] All =
    [
        .. ClinicSymptoms.All,
        .. ClinicPains.All,
        .. ClinicConditions.All,
        .. ClinicEffort.All,
        .. ClinicLoads.All,
        .. ClinicAges.All,
    ];

    public static TheoryData<string> Reasons => [.. All.Select(c => c.Why)];

    [Theory, MemberData(nameof(Reasons))]
    public void What_comes_of_it_is_what_a_clinician_would_sign(string reason)
    {
        var judged = All.Single(c => c.Why == reason);
        Assert.Equal(judged.Comes, judged.Judged());
    }

    /// <summary>Many, no two for the same reason, and of every outcome.</summary>
    [Fact]
    public void The_table_has_every_outcome()
    {
        Assert.True(All.Length >= 60);
        Assert.Equal(All.Length, All.Select(c => c.Why).Distinct().Count());
        foreach (
            var outcome in new[]
            {
                "nothing",
                "warning",
                "error",
                "forbidden",
                "not asked",
                "not cleared",
                "short",
                "beyond",
                "loaded",
                "painful",
                "too painful",
                "too early",
            }
        )
            Assert.Contains(All, c => c.Comes.StartsWith(outcome, StringComparison.Ordinal));
    }
}
