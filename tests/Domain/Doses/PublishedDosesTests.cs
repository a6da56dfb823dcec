using System.Xml;
using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>Published doses, written as lines, add up to the published sums. The sources stand in reference-values.md.</summary>
public sealed class PublishedDosesTests
{
    /// <summary>Clinical Hypertension 2023, 29, doi 10.1186/s40885-022-00232-3, Table 4 (seen; the sums computed): handgrip 4 × 2
    /// min with 3 min rest is 8 min of work and 17 min a session; wall squat 4 × 2 min with 2 min rest is 14 min a
    /// session.</summary>
    [Theory]
    [InlineData("4 x press 2 min at 30%, rest 3 min", 17, 51)]
    [InlineData("4 x hold 2 min, rest 2 min", 14, 42)]
    [InlineData("4 x press 2 min, rest 2 min", 14, 42)]
    public void Isometric_training_for_blood_pressure_takes_the_published_minutes(string line, int session, int week)
    {
        var measures = DoseOf.Measures(line);
        Assert.Equal(TimeSpan.FromMinutes(session), Span(measures.Seconds));
        Assert.Equal(TimeSpan.FromMinutes(week), 3 * Span(measures.Seconds));
        Assert.Equal(TimeSpan.FromMinutes(8), Span(measures.ContractionSeconds + measures.StretchSeconds));
    }

    /// <summary>The same table: 8 min of work at 30 % are 2.4 min at full effort (computed).</summary>
    [Fact]
    public void Thirty_per_cent_of_eight_minutes_are_one_hundred_and_forty_four_effort_seconds() =>
        Assert.Equal(144, DoseOf.Measures("4 x press 2 min at 30%, rest 3 min").EffortSeconds);

    /// <summary>Garber CE et al. 2011, Med Sci Sports Exerc 43(7):1334-59: 60 s in total per exercise (second-hand); the ways to
    /// make it are arithmetic (computed).</summary>
    [Theory]
    [InlineData("2 x hold 30 s")]
    [InlineData("3 x hold 20 s")]
    [InlineData("4 x hold 15 s")]
    [InlineData("6 x hold 10 s")]
    public void A_minute_of_stretching_can_be_made_in_several_ways(string line) =>
        Assert.Equal(TimeSpan.FromMinutes(1), Span(DoseOf.Measures(line).StretchSeconds));

    /// <summary>Thomas E et al. 2018, Int J Sports Med 39:243-54 (seen): 5 min a week; Ingram LA et al. 2025, Sports Med, doi
    /// 10.1007/s40279-024-02143-9 (second-hand): 10 min a week. Both sums computed, five sessions a week, each side for
    /// itself.</summary>
    [Theory]
    [InlineData("3 x hold 20 s", 5.0)]
    [InlineData("4 x hold 30 s", 10.0)]
    [InlineData("4 x hold 30 s, rest 20 s, each side", 10.0)]
    public void Five_sessions_a_week_make_the_minutes_of_stretching_a_week(string line, double minutes)
    {
        var measures = DoseOf.Measures(line);
        var side = line.Contains("each", StringComparison.Ordinal) ? measures.First : measures.Unsided;
        Assert.Equal(TimeSpan.FromMinutes(minutes), 5 * Span(side.StretchSeconds));
    }

    /// <summary>Russo MA et al. 2017, Breathe 13(4):298-309 (second-hand): 4 to 10 breaths a minute; seconds a breath = 60 / rate
    /// (computed).</summary>
    [Theory]
    [InlineData(4, 15)]
    [InlineData(6, 10)]
    [InlineData(10, 6)]
    public void A_minute_of_slow_breathing_holds_as_many_breaths_as_the_rate(int rate, int breath)
    {
        var settings = DoseSettings.Default with { Breath = new(breath) };
        var minute = DoseMeasures.Of(DoseOf.Line($"breathe {rate} breaths").Settled(), settings);
        Assert.Equal(TimeSpan.FromMinutes(1), Span(minute.Seconds));
        Assert.Equal(TimeSpan.FromMinutes(1), Span(minute.StretchSeconds));
    }

    [Fact]
    public void The_usual_breath_is_that_of_six_a_minute() => Assert.Equal(60 / 6, DoseSettings.Default.Breath.Value);

    /// <summary>The duration as a page prints it, read back by the platform's own reader of ISO 8601 durations.</summary>
    private static TimeSpan Span(Seconds seconds) => XmlConvert.ToTimeSpan(seconds.ToIsoDuration());
}
