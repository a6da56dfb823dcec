using Gradus.Domain;

namespace Gradus.Tests.Reading;

/// <summary>Pauses of a programme of six weeks from Monday 4 January to Sunday 14 February 2027, and a client who has
/// stopped.</summary>
public sealed class PauseTests
{
    private const string Path = "clients/ansel/programme.md";

    private const string Table = """
        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6⏎pause: { from: 2027-01-18, until: 2027-01-11 }
        clients/ansel/programme.md:5:35 value-wrong «2027-01-11»
        This pause ends before it begins.
        Correct 'from' or 'until'.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6⏎pause: { from: 2027-01-11, until: 2027-03-12 }
        clients/ansel/programme.md:5:35 value-wrong «2027-03-12»
        This pause is 61 days long; more than 60 are no pause.
        End the programme before it with fewer 'weeks', and write a new one for the time after it.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6⏎pause: { from: 2027-01-04, until: 2027-01-10 }
        clients/ansel/programme.md:5:16 value-wrong «2027-01-04»
        This pause begins on 2027-01-04, and the programme on 2027-01-04.
        A pause begins after the first day; move 'start' instead.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6⏎pause: { from: 2027-02-15, until: 2027-02-21 }
        clients/ansel/programme.md:5:16 value-wrong «2027-02-15»
        This pause begins on 2027-02-15, and the programme is over on 2027-02-14.
        Take it out, or correct 'from'.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6⏎pause:⏎  - { from: 2027-01-20, until: 2027-01-31 }⏎  - { from: 2027-01-11, until: 2027-01-20 }
        clients/ansel/programme.md:6:13 value-wrong «2027-01-20»
        This pause begins on 2027-01-20, before the one from 2027-01-11 to 2027-01-20 is over.
        Write one pause over all of these days, or correct one of them.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6⏎pause: { from: 2027-01-11 }
        clients/ansel/programme.md:5:10 key-missing «f»
        'until' is missing: a pause needs it.
        Add a line 'until:' with its value.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6⏎pause: { from: 2027-01-11, until: 2027-01-17, why: holidays }
        clients/ansel/programme.md:5:47 key-unknown «why»
        'why' is no key of a pause.
        Take it out. The keys here are: from, until, because.

        clients/ansel/client.yaml
        - minutes:
        + stopped: { because: moved away }⏎minutes:
        clients/ansel/client.yaml:10:12 key-missing «b»
        'on' is missing: stopped needs it.
        Add a line 'on:' with its value.

        clients/ansel/client.yaml
        - minutes:
        + stopped: { on: soon }⏎minutes:
        clients/ansel/client.yaml:10:16 value-wrong «soon»
        'soon' is no date.
        Write year, month and day with hyphens, as 2026-12-07.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));

    [Theory]
    [InlineData("{ from: 2027-01-11, until: 2027-01-17, because: holidays }", "2027-01-11 2027-01-17 holidays", "2027-02-21")]
    [InlineData("{ from: 2027-02-14, until: 2027-02-14 }", "2027-02-14 2027-02-14 ", "2027-02-21")]
    [InlineData("{ from: 2027-01-11, until: 2027-03-11 }", "2027-01-11 2027-03-11 ", "2027-04-15")]
    [InlineData(
        "[{ from: 2027-02-15, until: 2027-02-21 }, { from: 2027-01-11, until: 2027-01-17 }]",
        "2027-01-11 2027-01-17 |2027-02-15 2027-02-21 ",
        "2027-02-28"
    )]
    public void Pauses_are_bound_in_the_order_of_their_days(string written, string bound, string end)
    {
        var programme = Paused(written).Client("ansel").Programme;
        Assert.Equal(bound, string.Join('|', programme.Pauses.Select(p => $"{p.From.Iso()} {p.Until.Iso()} {p.Because}")));
        Assert.Equal(end, programme.End.Iso());
    }

    /// <summary>The third week is the one that a pause in the second has shifted.</summary>
    [Fact]
    public void A_week_in_which_ranges_are_measured_again_shifts_too()
    {
        var retest = Paused("{ from: 2027-01-11, until: 2027-01-17 }\nretest: 3").Client("ansel").Programme.Retest;
        Assert.Equal(new Retest(new(2027, 1, 25), new(2027, 1, 31)), retest);
    }

    [Theory]
    [InlineData("2026-12-19", false)]
    [InlineData("2026-12-20", true)]
    [InlineData("2027-12-20", true)]
    public void A_client_has_stopped_from_that_day_on(string today, bool hasStopped)
    {
        var client = LittlePractice
            .Golden.Edit("clients/ansel/client.yaml", "minutes:", "stopped: { on: 2026-12-20, because: moved away }\nminutes:")
            .Client("ansel");
        Assert.Equal(new Stopped(new(2026, 12, 20), "moved away"), client.Stopped);
        Assert.Equal(hasStopped, client.HasStopped(DateOnly.Parse(today, System.Globalization.CultureInfo.InvariantCulture)));
    }

    private static LittlePractice Paused(string written) =>
        LittlePractice.Golden.Edit(Path, "weeks: 6\n", $"weeks: 6\npause: {written}\n");
}
