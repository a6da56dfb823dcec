using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;
using Gradus.Trainings;

namespace Gradus.Tests.Domain;

/// <summary>What may be said of the demonstration's readings on 2026-12-01, worked out by hand.</summary>
public sealed class DemonstrationRangesTests
{
    private const string Lying = "lying ankle dorsiflexion";

    private static readonly DateOnly Today = new(2026, 12, 1);

    private static readonly Practice Practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice
        ?? throw new InvalidOperationException("The demonstration cannot be read.");

    [Fact]
    public void The_chest_of_rufus_is_not_judged_while_nobody_says_who_measured()
    {
        var change = Changed("rufus", "thoracic rotation", Side.Right);
        Assert.Equal((7m, 70, ChangeWord.NotJudged, null), (change.Difference, change.DaysApart, change.Word, change.Error));
    }

    /// <summary>7 ≥ 5.6, from 1.4 to 12.6; no programme lay between, so it is more and no gain.</summary>
    [Fact]
    public void With_one_rater_and_three_tries_it_is_more()
    {
        var change = Changed("rufus", "thoracic rotation", Side.Right, r => r with { By = "om", Trials = 3 });
        Assert.Equal((ChangeWord.More, 5.6m), (change.Word, change.Margin));
        Assert.Equal((1.4m, 12.6m), (change.Difference - change.Margin, change.Difference + change.Margin));
    }

    /// <summary>5.6 · √3.</summary>
    [Fact]
    public void With_one_try_each_it_is_within_the_error()
    {
        var change = Changed("rufus", "thoracic rotation", Side.Right, r => r with { By = "om" });
        Assert.Equal((ChangeWord.NotShown, 9.69948m), (change.Word, change.Margin));
    }

    [Fact]
    public void The_lying_ankle_has_no_error_and_the_lunge_would_have_one()
    {
        Assert.Equal(ChangeWord.NotJudged, Changed("rufus", Lying, Side.Right).Word);
        Assert.Equal(ChangeWord.NotShown, Changed("rufus", "lunge ankle dorsiflexion", Side.Right, InLunge).Word);
    }

    /// <summary>D = 6: no error for the lying measure; 6 ≥ 4.7 in the lunge.</summary>
    [Fact]
    public void The_ankles_of_rufus_are_told_apart_in_the_lunge_alone()
    {
        RangeSides Ankles(string motion, Func<RangeReading, RangeReading>? change) =>
            Ranges("rufus", change).Sides.Single(s => s.Key.Motion.Name == motion).Latest;
        Assert.Equal((6m, SidesWord.NotJudged), (Ankles(Lying, null).Difference, Ankles(Lying, null).Word));
        Assert.Equal(SidesWord.Differ, Ankles("lunge ankle dorsiflexion", InLunge).Word);
    }

    /// <summary>h = 3.32340: 12 + h = 15.3 ≥ 15, and 11 + h = 14.3 below it.</summary>
    [Theory]
    [InlineData("maud", Side.Left, "12", MarkWord.NotTold)]
    [InlineData("rufus", Side.Right, "11", MarkWord.Short)]
    public void The_rear_ankle_beside_the_demand_of_the_lunge(string client, Side rear, string value, MarkWord word)
    {
        var lying = Demand(Ranges(client), Lying);
        Assert.Equal((rear, MarkWord.NotJudged), (lying.Side, lying.Mark?.Word));
        var lunge = Demand(Ranges(client, InLunge), "lunge ankle dorsiflexion");
        Assert.Equal((value, 3.32340m, word), ($"{lunge.Mark?.Read.Value}", lunge.Mark?.HalfWidth, lunge.Mark?.Word));
        Assert.Equal(word == MarkWord.Short ? 4 : 3, lunge.Mark?.Missing);
    }

    [Fact]
    public void The_rear_hip_of_rufus_stands_beside_its_demand_without_a_word()
    {
        var hip = Demand(Ranges("rufus"), "hip extension");
        Assert.Equal((Side.Right, 9m, 15m, MarkWord.NotJudged), (hip.Side, hip.Mark?.Read.Value, hip.Mark?.Mark, hip.Mark?.Word));
    }

    private static RangeReading InLunge(RangeReading reading) =>
        reading.Motion.Name == Lying
            ? reading with
            {
                Motion = Practice.MeasureOf("lunge ankle dorsiflexion").Motion,
                By = "om",
            }
            : reading;

    private static RangeChange Changed(
        string client,
        string motion,
        Side side,
        Func<RangeReading, RangeReading>? change = null
    ) =>
        Ranges(client, change).Series.Single(s => s.Key.Motion.Name == motion && s.Key.Side == side).SinceBefore
        ?? throw new InvalidOperationException("Nothing is compared.");

    private static JudgedDemand Demand(ClientRanges ranges, string motion) =>
        ranges.Demands.Single(d => d.Measure.Motion.Name == motion);

    /// <param name="change">What would stand in readings.csv instead; a demand then asks for the lunge.</param>
    private static ClientRanges Ranges(string id, Func<RangeReading, RangeReading>? change = null)
    {
        var found = Practice.Clients.Single(c => c.Id.Text == id);
        var client = found with { Readings = found.Readings.Select(r => change?.Invoke(r) ?? r).ToSeries() };
        var practice = Practice with
        {
            Sports = Practice
                .Sports.Select(s =>
                    s with
                    {
                        Demands = s
                            .Demands.Select(d =>
                                change == InLunge && d.Motion == Lying ? d with { Motion = "lunge ankle dorsiflexion" } : d
                            )
                            .ToSeries(),
                    }
                )
                .ToSeries(),
        };
        return ClientRanges.Of(practice, client, Training.Of(practice, client), Today);
    }
}
