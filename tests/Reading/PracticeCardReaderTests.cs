using Gradus.Domain;

namespace Gradus.Tests.Reading;

public sealed class PracticeCardReaderTests
{
    private static readonly PracticeCard Card = LittlePractice.Golden.Read().Card;

    [Fact]
    public void A_coach_may_write_in_a_language_that_there_is_no_catalogue_for() =>
        Assert.Equal("ga", LittlePractice.Golden.Edit("practice.md", "language: en", "language: ga").Read().Card.Language);

    [Fact]
    public void The_coach_is_bound()
    {
        Assert.Equal("Sluice Lane épée club", Card.Name);
        Assert.Equal("Hesper Quill", Card.Coach);
        Assert.Equal(new Contact("hesper@example.org", "+44 1632 960077"), Card.Contact);
        Assert.Equal("en", Card.Language);
        Assert.Equal(Location.Whole("practice.md"), Card.At);
    }

    /// <summary>The most digits of an international number are 15 (ITU-T E.164); short numbers have three (999, 112).</summary>
    [Theory]
    [InlineData("112")]
    [InlineData("01632-960077")]
    [InlineData("(01632) 960 077")]
    [InlineData("+123456789012345")]
    public void A_telephone_number_is_kept_as_it_is_written(string phone) =>
        Assert.Equal(phone, LittlePractice.Golden.Edit("practice.md", "+44 1632 960077", phone).Read().Card.Contact.Phone);

    [Fact]
    public void Emergency_numbers_are_bound_by_country()
    {
        Assert.Equal([new("GB", "999", "111", null), new("IE", "112", null, "999 works as well.")], Card.Emergency);
        Assert.Null(Card.EmergencyIn("FR"));
    }

    [Fact]
    public void Settings_are_bound_each_to_its_own() =>
        Assert.Equal(
            PracticeSettings.Default with
            {
                Dose = new(new(8), new(12), new(3), new(2)),
                GetReady = new(6),
                Transition = new(11),
                TransitionChange = new(31),
                TransitionStanding = new(61),
                LighterShare = 50,
            },
            Card.Settings
        );

    /// <summary>dose-line.md, Arithmetic: breath 10 s, switch 10 s, repetition 4 s, carry 1 m a second; get ready 5 s,
    /// transitions 10, 30 and 45 s. practice-format.md shows a lighter share of 60 %.</summary>
    [Fact]
    public void Settings_that_are_left_out_are_those_of_the_dose_page()
    {
        var golden = LittlePractice.Golden["practice.md"];
        var from = golden.IndexOf("settings:", StringComparison.Ordinal);
        var without = golden[..from] + golden[golden.LastIndexOf("---", StringComparison.Ordinal)..];
        var settings = LittlePractice.Golden.With("practice.md", without).Read().Card.Settings;
        Assert.Equal(new DoseSettings(new(10), new(10), new(4), new(1)), settings.Dose);
        Assert.Equal(
            (5, 10, 30, 45),
            (
                settings.GetReady.Value,
                settings.Transition.Value,
                settings.TransitionChange.Value,
                settings.TransitionStanding.Value
            )
        );
        Assert.Equal(60, settings.LighterShare);
    }

    [Theory]
    [InlineData("0 s", 0)]
    [InlineData("90 s", 90)]
    [InlineData("2 min", 120)]
    [InlineData("1 min 30 s", 90)]
    [InlineData("15 min", 900)]
    public void A_time_is_written_in_seconds_and_minutes(string written, int seconds) =>
        Assert.Equal(
            new Seconds(seconds),
            LittlePractice.Golden.Edit("practice.md", "get-ready: 6 s", "get-ready: " + written).Read().Card.Settings.GetReady
        );

    [Fact]
    public void The_text_below_the_header_is_what_the_programmes_are() =>
        Assert.Equal(["These programmes are exercise advice. They do not replace advice from a doctor."], Card.Scope.Lines());
}
