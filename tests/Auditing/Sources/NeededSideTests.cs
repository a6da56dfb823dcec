using Gradus.Auditing.Sources;
using Gradus.Trainings;

namespace Gradus.Tests.Auditing;

/// <summary>The range that an exercise needs, and the reading that says whether it is there.</summary>
public sealed class NeededSideTests
{
    private const string Head = "date,motion,side,mode,value,unit,instrument\n";

    /// <summary>Of its own motion and side, judged on a day of the programme: once that is over, on its last.</summary>
    [Fact]
    public void A_reading_of_that_motion_and_side_is_judged_within_the_programme()
    {
        var needed = Of("2027-01-04,knee flexion,left,passive,100,deg,goniometer", new(2029, 1, 1));
        Assert.Equal((100m, false, false, false), (needed.Reading?.Value, needed.IsOld, needed.IsBelow, needed.IsUnmeasured));
        Assert.Equal("left knee flexion", needed.Name);
    }

    [Fact]
    public void Other_sides_and_other_motions_say_nothing()
    {
        var needed = Of(
            "2027-01-04,knee flexion,right,passive,100,deg,goniometer\n2027-01-04,hip flexion,left,passive,100,deg,goniometer",
            new(2027, 1, 5)
        );
        Assert.Null(needed.Reading);
        Assert.Equal((false, true), (needed.IsBelow, needed.IsUnmeasured));
    }

    private static NeededSide Of(string rows, DateOnly today)
    {
        var practice = Club
            .Empty.Exercise("sway", "2 x hold 30 s, on left", "needs: { knee flexion: 90 }")
            .Member("ansel", ["- use: sway"])
            .With("clients/ansel/readings.csv", $"{Head}{rows}\n")
            .Read();
        var client = practice.Clients.Single();
        return Assert.Single(NeededSide.Of(practice, client, Training.Of(practice, client), today));
    }
}
