using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Planning;

/// <summary>What a client is told of measured ranges. The error of the lunge is 4.7 degrees between two days of one rater (Powden
/// 2015, Man Ther, 10.1016/j.math.2015.01.004), 3.32 either way for one of them.</summary>
public sealed partial class ProgressWordsTests
{
    private static readonly Practice Content = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;

    private const string Header = "date,motion,side,mode,value,unit,instrument,by,trials,after\n";

    /// <summary>Four weeks from 2027-01-04 in which the left ankle is worked on; the sport asks the rear leg for a lunge of 35
    /// degrees.</summary>
    private static readonly LittlePractice Practice = Club
        .Empty.With(
            "sports/epee.yaml",
            """
            name: Épée
            stance: Which hand?
            roles: { front leg: right, rear leg: left }
            demands:
              - position: lunge
                motion: lunge ankle dorsiflexion
                side: rear leg
                mode: active
                at-least: 35
                because: The heel stays down.

            """
        )
        .Exercise("calf-hold", "2 x hold 30 s, each side")
        .Member("ada", ["- use: calf-hold\n  side: left"], weeks: 4);

    [Theory]
    [InlineData(
        "2026-12-30 30, 2027-01-20 35",
        "A gain: 5° more than on 30 December 2026. The error of this measure is 4.7°, so the true change lies somewhere between "
            + "0° and 10°."
    )]
    [InlineData(
        "2026-12-30 30, 2027-01-10 34.7",
        "4.7° more than on 30 December 2026. The error of this measure is 4.7°, so the true change lies somewhere between 0° "
            + "and 10°."
    )]
    [InlineData(
        "2026-12-30 30, 2027-01-20 34.6",
        "From 30° on 30 December 2026 to 34.6°: no change that this measure can show. A difference below 4.7° is within its "
            + "error."
    )]
    [InlineData(
        "2026-12-30 30, 2027-01-20 25",
        "5° less than on 30 December 2026, beyond the error of 4.7°. Ask Hesper Quill to measure it again, and say if anything "
            + "hurts, is swollen or was injured."
    )]
    [InlineData("2026-12-30 30", "Measured once so far.")]
    public void Of_a_change_it_is_said_what_the_error_allows(string readings, string said) =>
        Assert.Equal(said, Assert.Single(Progress(readings).Ranges).Sentences[0]);

    [Theory]
    [InlineData("39", "Épée, lunge, rear leg: at least 35°. Enough.")]
    [InlineData("31", "Épée, lunge, rear leg: at least 35°. Short of it by about 4°.")]
    [InlineData(
        "33",
        "Épée, lunge, rear leg: at least 35°. Cannot be told apart from it: one measurement is good to 3.4° either way."
    )]
    public void Beside_what_the_sport_asks_stands_one_of_three_words(string value, string said) =>
        Assert.Equal(said, Assert.Single(Progress($"2026-12-30 {value}").Ranges).Sentences[^1]);

    [Fact]
    public void A_reading_that_is_too_old_when_the_programme_begins_is_not_compared() =>
        Assert.EndsWith(
            "The measurement is old, so it is not compared.",
            Assert.Single(Progress("2026-06-30 39").Ranges).Sentences[^1],
            StringComparison.Ordinal
        );

    [Fact]
    public void Without_an_error_the_numbers_stand_alone()
    {
        var progress = Progress("2026-12-30 12, 2027-01-20 20", "lying ankle dorsiflexion,left,passive");
        Assert.Empty(progress.Ranges);
        Assert.Equal(["12°", "20°"], Assert.Single(progress.Numbers).Readings.Select(r => r.Value));
        Assert.All(Assert.Single(progress.Numbers).Readings, r => Assert.Null(r.Picture));
    }

    [Fact]
    public void What_followed_training_is_shown_and_not_judged()
    {
        var range = Assert.Single(Progress("2026-12-30 30, 2027-01-20 40 training").Ranges);
        Assert.Equal("Measured once so far.", range.Sentences[0]);
        Assert.Equal(
            ["30°, truly somewhere between 26° and 34°", "40°, after training: not judged"],
            range.Readings.Select(r => r.Value)
        );
        Assert.Null(range.Readings[^1].Picture);
    }

    [Fact]
    public void Where_nothing_was_measured_there_is_no_page() => Assert.Null(PlanOf(Practice).Progress);

    /// <summary>What readings must never be called; and no per cent anywhere.</summary>
    [Fact]
    public void What_must_never_be_said_is_on_no_page()
    {
        var words = new List<string>();
        foreach (var client in Content.Clients)
            words.AddRange(SentencesOf(Assert.IsType<PlannedProgress>(Planned.For(Content, client).Progress)));
        words.AddRange(SentencesOf(Progress("2026-12-30 30, 2027-01-06 33, 2027-01-20 35, 2027-01-30 29")));
        Assert.True(words.Count > 100);
        Assert.DoesNotContain(words, w => NeverSaid().IsMatch(w));
        Assert.Matches(NeverSaid(), "You improved by 1°, which is normal.");
    }

    [GeneratedRegex(
        "progress|improv|better|worse|%|per cent|because of|best|normal|deficit|imbalanc|asymmetr|rank|average|should be|lost"
            + "|risk",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex NeverSaid();

    private static IEnumerable<string> SentencesOf(PlannedProgress progress) =>
        [
            .. progress.Notes,
            .. progress.Sides,
            .. progress.Ranges.SelectMany(r => r.Sentences.Append(r.Way).Concat(r.Readings.Select(one => one.Value))),
            .. progress.Numbers.SelectMany(n => n.Asked.Append(n.Way).Concat(n.Readings.Select(one => one.Value))),
        ];

    private static PlannedProgress Progress(string readings, string what = "lunge ankle dorsiflexion,left,active")
    {
        var lines = readings
            .Split(", ")
            .Select(r => r.Split(' '))
            .Select(r => $"{r[0]},{what},{r[1]},deg,inclinometer,oq,1,{(r.Length > 2 ? r[2] : "")}\n");
        return Assert.IsType<PlannedProgress>(
            PlanOf(Practice.With("clients/ada/readings.csv", Header + string.Concat(lines))).Progress
        );
    }

    private static Plan PlanOf(LittlePractice practice) => practice.Plan("ada");
}
