using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>A programme that is written once and followed by two.</summary>
public sealed partial class SharedProgrammeTests
{
    private const string Shared = """
        ---
        title: A longer lunge
        weeks: 4
        sessions:
          - name: Ankles
            days: [Mon, Thu]
            do:
              - use: wall-calf-stretch
                side: rear leg
                by-week: { 1: 2 x hold 30 s, 3: 2 x hold 45 s }
              - use: calf-press
                as: press
                side: rear leg
                by-week: { 1: 2 x press 10 s at 50% }
        alternate:
          - name: Away
            instead-of: Ankles
            kind: travel
            do:
              - use: wall-calf-stretch
                side: rear leg
                by-week: { 1: 1 x hold 30 s }
        ---
        {name}, two short sessions a week.
        """;

    [Fact]
    public void Each_who_follows_it_has_it_as_if_it_were_written_for_them()
    {
        var (practice, findings) = Read("from: lunge\nstart: 2026-12-07\npause: { from: 2026-12-21, until: 2027-01-03 }", Shared);
        Assert.Empty(findings);
        var tess = Programme(practice);
        Assert.Equal(("A longer lunge", 4, new DateOnly(2026, 12, 7)), (tess.Title, tess.Weeks, tess.Start));
        Assert.Equal("Tess Harrowby, two short sessions a week.", string.Join(' ', tess.Letter.Lines()));
        Assert.Single(tess.Pauses);
        Assert.Equal("lunge", tess.From?.Programme.Value);
        Assert.Equal(["Ankles", "Away"], tess.AllSessions.Select(s => s.Name));
    }

    [Fact]
    public void The_clients_own_letter_and_days_go_first()
    {
        var (practice, findings) = Read(
            "from: lunge\nstart: 2026-12-07\ndays: { Ankles: [Tue, Fri] }",
            Shared,
            "Tess, read this."
        );
        Assert.Empty(findings);
        var tess = Programme(practice);
        Assert.Equal("Tess, read this.", string.Join(' ', tess.Letter.Lines()));
        Assert.All(tess.AllSessions, s => Assert.Equal(new SessionDays.On([DayOfWeek.Tuesday, DayOfWeek.Friday]), s.Days));
    }

    [Fact]
    public void The_clients_own_letter_may_call_them_by_name_too()
    {
        var (practice, findings) = Read("from: lunge\nstart: 2026-12-07", Shared, "{name}, read this.");
        Assert.Empty(findings);
        Assert.Equal("Tess Harrowby, read this.", string.Join(' ', Programme(practice).Letter.Lines()));
    }

    [Theory]
    [InlineData("leave-out: press", "Ankles: wall-calf-stretch/-; Away: wall-calf-stretch/-")]
    [InlineData("leave-out: press\n    from-week: 3", "Ankles: wall-calf-stretch/- calf-press/-2; Away: wall-calf-stretch/-")]
    [InlineData("instead: wall-calf-stretch\n    use: calf-press", "Ankles: calf-press/- calf-press/-; Away: calf-press/-")]
    [InlineData(
        "instead: wall-calf-stretch\n    use: calf-press\n    in: Away",
        "Ankles: wall-calf-stretch/- calf-press/-; Away: calf-press/-"
    )]
    [InlineData(
        "instead: press\n    use: wall-calf-stretch\n    from-week: 2",
        "Ankles: wall-calf-stretch/- calf-press/-1 wall-calf-stretch/2-; Away: wall-calf-stretch/-"
    )]
    [InlineData(
        "add: calf-press\n    before: wall-calf-stretch\n    in: Away",
        "Ankles: wall-calf-stretch/- calf-press/-; Away: calf-press/- wall-calf-stretch/-"
    )]
    [InlineData(
        "add: calf-press\n    in: Away",
        "Ankles: wall-calf-stretch/- calf-press/-; Away: wall-calf-stretch/- calf-press/-"
    )]
    [InlineData("change: press\n    side: front leg", "Ankles: wall-calf-stretch/- calf-press/-; Away: wall-calf-stretch/-")]
    public void A_difference_holds_wherever_its_use_stands(string difference, string sessions)
    {
        var (practice, findings) = Read(With(difference), Shared);
        Assert.Empty(findings.Select(f => $"{f.At} {f.Message}"));
        Assert.Equal(sessions, string.Join("; ", Programme(practice).AllSessions.Select(Said)));

        static string Said(ProgrammeSession session) =>
            $"{session.Name}: {string.Join(' ', session.Do.Select(u => $"{u.Exercise.Value}/{u.FromWeek}-{u.UntilWeek}"))}";
    }

    [Fact]
    public void A_side_and_a_dose_are_changed_and_the_rest_stays()
    {
        var (practice, _) = Read(
            With("change: wall-calf-stretch\n    side: front leg\n    by-week: { 1: 1 x hold 20 s }"),
            Shared
        );
        Assert.All(Programme(practice).AllSessions.Select(s => s.Do[0]), use =>
        {
            Assert.Equal("front leg", use.Side?.Value.Written);
            Assert.Equal([1], use.ByWeek.Select(l => l.Week));
        });
    }

    /// <summary>A shared programme that ends a use earlier does not make a client's difference vanish without a word.</summary>
    [Theory]
    [InlineData("leave-out: press", 3)]
    [InlineData("instead: press\n    use: wall-calf-stretch", 3)]
    [InlineData("change: press\n    side: front leg", 4)]
    public void What_would_hold_in_no_week_is_said(string difference, int week)
    {
        var ended = Shared.Replace("as: press\n", "as: press\n        until-week: 2\n", StringComparison.Ordinal);
        var found = Assert.Single(Read(With($"{difference}\n    from-week: {week}"), ended).Findings);
        Assert.Equal(
            ("clients/tess/programme.md", $"It holds from week {week} on, and 'press' ends with week 2."),
            (found.At.File, found.Message)
        );
        Assert.Empty(Read(With($"{difference}\n    from-week: 2"), ended).Findings.Select(f => f.Message));
    }

    /// <summary>No week is no other dose: what is shared stays.</summary>
    [Fact]
    public void By_week_without_a_week_takes_nothing_away()
    {
        var (practice, _) = Read(With("change: press\n    side: front leg\n    by-week: {}"), Shared);
        Assert.Equal([1], Programme(practice).Sessions[0].Do[1].ByWeek.Select(l => l.Week));
    }

    /// <summary>The place of a session that is not there is its own, not that of the use.</summary>
    [Fact]
    public void A_session_that_is_not_there_is_said_at_its_word()
    {
        var found = Assert.Single(Read(With("leave-out: press\n    in: Ankle"), Shared).Findings);
        Assert.Equal(6, found.At.Line);
    }

    [Fact]
    public void From_a_week_on_another_version_is_done_too()
    {
        var (practice, findings) = Read(
            With("change: press\n    by-week: { 1: 1 x press 10 s at 50%, 3: { use: easier } }"),
            Shared
        );
        Assert.Empty(findings.Select(f => f.Message));
        var use = Programme(practice).Sessions[0].Do[1];
        Assert.Equal([1], use.ByWeek.Select(l => l.Week));
        Assert.Equal([(3, ExerciseVersion.Easier)], use.Versions.Select(v => (v.Week, v.Version)));
    }

    [Theory]
    [InlineData("leave-out: pres", "There is no use 'pres' in programmes/lunge.md.", "Did you mean 'press'?")]
    [InlineData("leave-out: press\n    in: Away", "There is no use 'press' in 'Away'.", "Its uses are: wall-calf-stretch.")]
    [InlineData(
        "leave-out: press\n    in: Ankle",
        "There is no session 'Ankle' in programmes/lunge.md.",
        "Did you mean 'Ankles'?"
    )]
    [InlineData(
        "leave-out: wall-calf-stretch",
        "Nothing is left of 'Away'.",
        "Write a programme of the client's own, or put something in the place of what is left out."
    )]
    [InlineData(
        "leave-out: press\n    because: x\n  - change: press\n    side: front leg",
        "Line 5 is about 'press' already.",
        "Keep one of the two, or say with 'in' which session each is for."
    )]
    [InlineData("leave-out: press\n    from-week: 5", "'from-week' is '5', but it can only be a whole number", null)]
    [InlineData("change: press", "Nothing says what of 'press' is other.", "Write 'side', 'by-week', or both.")]
    [InlineData(
        "add: calf-press",
        "Nothing says where it is added.",
        "Write 'before' or 'after' with a use, or 'in' with a session, at whose end it then stands."
    )]
    [InlineData(
        "add: calf-press\n    before: press\n    after: press",
        "It stands before one and after another.",
        "Keep one of the two."
    )]
    [InlineData("side: front leg", "Nothing says what is other.", "Begin with one of: leave-out, instead, change, add.")]
    [InlineData("instead: press", "'use' is missing", null)]
    public void What_cannot_be_done_is_said_at_its_line(string difference, string message, string? help)
    {
        var (practice, findings) = Read(With(difference), Shared);
        var finding = Assert.Single(findings);
        Assert.StartsWith(message, finding.Message, StringComparison.Ordinal);
        Assert.Equal("clients/tess/programme.md", finding.At.File);
        if (help is not null)
            Assert.Equal(help, finding.Help);
        Assert.NotNull(practice);
    }

    [Fact]
    public void Why_is_always_said_and_stands_on_no_page()
    {
        var (_, findings) = Read("from: lunge\nstart: 2026-12-07\ndifferences:\n  - leave-out: press", Shared);
        Assert.Equal("'because' is missing: a difference needs it.", Assert.Single(findings).Message);

        var (practice, _) = Read(With("leave-out: press"), Shared);
        var tess = practice?.Find(new ClientId("tess"));
        Assert.NotNull(practice);
        Assert.NotNull(tess);
        Assert.DoesNotContain("she asked for it", Planned.For(practice, tess).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("from: lung", "There is no shared programme 'lung'.")]
    [InlineData("from: lunge\nweeks: 3", "'weeks' is no key of a programme.")]
    [InlineData("from: lunge\ndays: { Ankle: daily }", "There is no session 'Ankle' in programmes/lunge.md.")]
    public void What_is_wrong_about_following_is_said(string header, string message) =>
        Assert.Contains(Read(header + "\nstart: 2026-12-07", Shared).Findings, f => f.Message == message);

    [Fact]
    public void A_shared_one_comes_from_no_other()
    {
        var (_, findings) = Read(
            "from: lunge\nstart: 2026-12-07",
            Shared.Replace("title:", "from: lunge\ntitle:", StringComparison.Ordinal)
        );
        Assert.Equal("'from' is no key of a shared programme.", Assert.Single(findings).Message);
    }

    [Fact]
    public void What_is_wrong_in_a_shared_one_is_said_once_and_stops_those_alone_who_follow_it()
    {
        var (practice, findings) = Read(
            "from: lunge\nstart: 2026-12-07",
            Shared.Replace("weeks: 4", "weeks: 400", StringComparison.Ordinal)
        );
        Assert.NotNull(practice);
        Assert.Single(findings, f => f.At.File == "programmes/lunge.md");
        Assert.Contains(findings, f => f.At.File == "clients/tess/programme.md" && f.Rule == Faults.FileUnreadable);
        var all = new Findings();
        all.AddRange(findings);
        Assert.Null(practice.Find(new ClientId("tess")));
        Assert.False(all.Block(new ClientId("bram"), Reach.Of(practice)));
    }

    private static string With(string difference) =>
        $"from: lunge\nstart: 2026-12-07\ndifferences:\n  - {difference}\n    because: she asked for it";

    private static (Practice? Practice, Series<Finding> Findings) Read(string header, string shared, string letter = "")
    {
        var findings = new Findings();
        var files = Auditing
            .LittlePractice.Files.Where(f => f.Key != "clients/tess/programme.md")
            .Append(KeyValuePair.Create("clients/tess/programme.md", $"---\n{header}\n---\n{letter}"))
            .Append(KeyValuePair.Create("programmes/lunge.md", shared))
            .Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)));
        return (PracticeReader.Read(SourceFolder.Of(files), findings).Practice, findings.InOrder().ToSeries());
    }

    private static Programme Programme(Practice? practice) =>
        practice?.Find(new ClientId("tess"))?.Programme ?? throw new InvalidOperationException("Tess cannot be read.");
}
