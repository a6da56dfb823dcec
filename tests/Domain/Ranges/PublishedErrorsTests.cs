using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>What comes with Gradus is what is published, for what it was found, with its source and how far it was seen. A cell
/// that the source does not fill is filled on the careful side.</summary>
public sealed class PublishedErrorsTests
{
    private static readonly Practice Practice = Reading.LittlePractice.Golden.Read();

    /// <summary>Measure, value, level, mode, instrument, raters, tries, service: then the source, all seen in its abstract or
    /// text.</summary>
    [Theory]
    [InlineData("knee to wall", "1.9 NotStated either Tape One 1 BetweenDays", "Powden CJ 2015, Man Ther")]
    [InlineData("knee to wall", "1.6 NotStated either Tape Two 1 BetweenDays", "Powden CJ 2015, Man Ther")]
    [InlineData("knee to wall", "1.0 NotStated either Tape One 1 OnlyShown", "Chisholm MD 2012, Physiother Can 64:347-55")]
    [InlineData("knee to wall", "1.5 NotStated either Tape One 1 ChangeOfSides", "Chisholm MD 2012, Physiother Can 64:347-55")]
    [InlineData("knee to wall", "1.5 NotStated either Tape One 3 OnlyShown", "Konor MM 2012")]
    [InlineData("lunge ankle dorsiflexion", "4.7 NotStated either Inclinometer One 1 BetweenDays", "Powden CJ 2015, Man Ther")]
    [InlineData("lunge ankle dorsiflexion", "4.6 NotStated either Inclinometer Two 1 BetweenDays", "Powden CJ 2015, Man Ther")]
    [InlineData("lunge ankle dorsiflexion", "3.8 NotStated either Inclinometer One 3 OnlyShown", "Konor MM 2012")]
    [InlineData("lunge ankle dorsiflexion", "7.7 NotStated either Goniometer One 3 OnlyShown", "Konor MM 2012")]
    [InlineData("hip internal rotation", "5.4 NotStated Active Inclinometer One 1 BetweenDays", "Krause DA 2015")]
    [InlineData("hip internal rotation", "8.6 NotStated Passive NotStated either 1 OnlyShown", "Gradoz MC 2018")]
    [InlineData("hip external rotation", "8.6 NotStated Passive NotStated either 1 OnlyShown", "Gradoz MC 2018")]
    [InlineData("hip internal rotation", "16.4 NotStated Passive Inclinometer One 1 OnlyShown", "Spork 2021, Sports 9:148")]
    [InlineData("hip internal rotation", "16.5 NotStated Passive Inclinometer Two 1 OnlyShown", "Spork 2021, Sports 9:148")]
    [InlineData("hip external rotation", "16.4 NotStated Passive Inclinometer One 1 OnlyShown", "Spork 2021, Sports 9:148")]
    [InlineData("hip external rotation", "16.5 NotStated Passive Inclinometer Two 1 OnlyShown", "Spork 2021, Sports 9:148")]
    [InlineData("thoracic rotation", "5.6 NotStated Active Inclinometer One 3 BetweenDays", "Johnson KD 2012")]
    [InlineData("thoracic rotation", "6.3 NotStated Active Inclinometer Two 3 OnlyShown", "Johnson KD 2012")]
    [InlineData("shoulder internal rotation", "4 Ninety Active Inclinometer One 3 BetweenDays", "Kolber MJ 2009")]
    [InlineData("shoulder external rotation", "5 Ninety Active Inclinometer One 3 BetweenDays", "Kolber MJ 2009")]
    [InlineData("shoulder internal rotation", "8 Ninety Active Inclinometer Two 2 BetweenDays", "Kolber MJ 2011")]
    [InlineData("shoulder external rotation", "9 Ninety Active Inclinometer Two 2 BetweenDays", "Kolber MJ 2011")]
    [InlineData("shoulder flexion", "8 Ninety Active Inclinometer Two 2 BetweenDays", "Kolber MJ 2011")]
    [InlineData("shoulder abduction", "4 Ninety Active Inclinometer Two 2 BetweenDays", "Kolber MJ 2011")]
    [InlineData("shoulder external rotation", "20 NotStated Passive NotStated Two 1 OnlyShown", "de Winter AF 2004")]
    [InlineData("wrist extension", "12 NotStated either Goniometer either 1 OnlyShown", "Reissner L 2019")]
    [InlineData("wrist flexion", "12 NotStated either Goniometer either 1 OnlyShown", "Reissner L 2019")]
    public void A_published_figure_ships_with_what_it_was_found_for(string measure, string figure, string source) =>
        Assert.Contains(Practice.MeasureOf(measure).Errors, e =>
            Written(e) == figure && e.Source.StartsWith(source, StringComparison.Ordinal) && e.Mark == "seen"
        );

    /// <summary>Those of the table, and two of the neck that nothing is judged by.</summary>
    [Fact]
    public void No_other_figure_ships()
    {
        var errors = Practice.Measures.SelectMany(m => m.Errors).ToArray();
        Assert.Equal(29, errors.Length);
        Assert.Empty(Practice.MeasureOf("lying ankle dorsiflexion").Errors);
        Assert.Empty(Practice.MeasureOf("hip extension").Errors);
    }

    /// <summary>MDC95 = 1.191490 · MDC90 (Weir JP 2005): 4.8, 6.0, 9.5 and 10.7.</summary>
    [Theory]
    [InlineData("shoulder internal rotation", RaterRelation.One, 4.8)]
    [InlineData("shoulder external rotation", RaterRelation.One, 6.0)]
    [InlineData("shoulder internal rotation", RaterRelation.Two, 9.5)]
    [InlineData("shoulder external rotation", RaterRelation.Two, 10.7)]
    [InlineData("shoulder flexion", RaterRelation.Two, 9.5)]
    [InlineData("shoulder abduction", RaterRelation.Two, 4.8)]
    public void At_95_per_cent_it_is_the_computed_one(string measure, RaterRelation raters, double at95) =>
        Assert.Equal(
            (decimal)at95,
            Math.Round(Practice.MeasureOf(measure).Errors.First(e => e.Raters == raters).At95, 1, MidpointRounding.AwayFromZero)
        );

    [Fact]
    public void Three_measures_of_the_ankle_are_one_motion_to_train()
    {
        var ankle = Practice.MeasureOf("ankle dorsiflexion").Motion;
        Assert.Equal(
            ["knee to wall", "lunge ankle dorsiflexion", "lying ankle dorsiflexion"],
            Practice.WaysToMeasure(ankle).Select(m => m.Motion.Name).Order(StringComparer.Ordinal)
        );
        Assert.Equal(MotionUnit.Centimetres, Practice.MeasureOf("knee to wall").Motion.Unit);
    }

    private static string Written(MeasuringError e) =>
        FormattableString.Invariant($"{e.Value} {e.Level} {e.Mode?.ToString() ?? "either"} {e.Instrument} ")
        + FormattableString.Invariant($"{e.Raters?.ToString() ?? "either"} {e.Trials} {e.Serves}");
}
