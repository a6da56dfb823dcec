using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

public sealed class ClientReaderTests
{
    private const string Path = "clients/ansel/client.yaml";

    private static readonly Client Client = LittlePractice.Golden.Client("ansel");

    [Fact]
    public void The_person_is_bound()
    {
        Assert.Equal((new ClientId("ansel"), "Ansel Wherry"), (Client.Id, Client.Name));
        Assert.Equal([new(new(new("epee"), new(Path, 2, 8)), Side.Left)], Client.Sports);
        Assert.Equal(new Birth(1988, new(1988, 2, 29)), Client.Born);
        Assert.Equal(new("IE", new(Path, 5, 10)), Client.Country);
        Assert.Equal(("en", "Europe/Dublin"), (Client.Language, Client.Zone.Text));
        Assert.Equal(Location.Whole(Path), Client.At);
    }

    /// <summary>Older names of the same zone are in the database too.</summary>
    [Theory]
    [InlineData("America/Argentina/Ushuaia")]
    [InlineData("Europe/Belfast")]
    [InlineData("Etc/GMT+12")]
    [InlineData("UTC")]
    public void Every_zone_of_the_database_is_known_on_any_machine(string zone) =>
        Assert.Equal(zone, LittlePractice.Golden.Edit(Path, "Europe/Dublin", zone).Client("ansel").Zone.Text);

    [Theory]
    [InlineData("1900-01-01")]
    [InlineData("2199-12-31")]
    public void The_first_and_the_last_day_can_be_written(string day)
    {
        var practice = LittlePractice
            .Golden.Edit("clients/ansel/programme.md", "start: 2027-01-04", "start: " + day)
            .Edit("clients/ansel/programme.md", "weeks: 6", "weeks: 104");
        Assert.Equal(
            day,
            practice.Client("ansel").Programme.Start.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
        );
        Assert.InRange(practice.Client("ansel").Programme.End.Year, 1901, 2201);
    }

    [Fact]
    public void The_time_and_the_things_the_client_has_are_bound()
    {
        Assert.Equal([DayOfWeek.Monday, DayOfWeek.Thursday], Client.Days);
        Assert.Equal(new TimeOnly(7, 5), Client.Hour);
        Assert.Equal(35, Client.Minutes);
        Assert.Equal(["wall", "step"], Client.Equipment);
    }

    [Fact]
    public void What_was_agreed_is_bound() => Assert.Equal(new Agreement(new(2026, 11, 2), new(2026, 11, 3)), Client.Agreed);

    [Fact]
    public void The_answers_are_bound()
    {
        Assert.Equal(new DateOnly(2026, 11, 4), Client.Answered);
        Assert.Equal(
            [
                new(new("calf-strain"), new Reply.No(), new(Path, 15, 16)),
                new(new("faint-spells"), new Reply.Yes(null), new(Path, 16, 17)),
                new(new("sore-wrist"), new Reply.Yes(Side.Left), new(Path, 17, 15)),
            ],
            Client.Answers.Where(a => a.At.File == Path)
        );
    }

    /// <summary>A sheet that the client filled in stands beside; of the two days on which questions were answered the earlier
    /// counts.</summary>
    [Fact]
    public void What_the_client_filled_in_is_bound_beside()
    {
        Assert.Equal(Domain.FloorAnswers.Ids, Client.Answers.Where(a => a.At.File != Path).Select(a => a.Condition.Text));
        Assert.Equal(new(2026, 11, 4), Client.Answered);
        Assert.Equal(
            new Reply.Pains([new(2, Region.Find("wrist")!, Side.Left), new(1, Region.Find("neck")!, null)]),
            Client.AnswerTo(AlwaysAsked.PainNow)?.Reply
        );
    }

    /// <summary>The client's own file may leave all of it to the sheet.</summary>
    [Fact]
    public void All_that_the_client_says_may_stand_in_the_sheet()
    {
        var sheet = LittlePractice
            .Golden["clients/ansel/answers.yaml"]
            .Replace(
                "answers:\n",
                "born: 1988-02-29\nanswers:\n  calf-strain: no\n  faint-spells: yes\n  sore-wrist: yes, left\n",
                StringComparison.Ordinal
            );
        var client = LittlePractice
            .Golden.With("clients/ansel/answers.yaml", sheet)
            .Edit(Path, "born: 1988-02-29\n", "")
            .Edit(Path, "answered: 2026-11-04\nanswers:\n  calf-strain: no\n  faint-spells: yes\n  sore-wrist: yes, left\n", "")
            .Client("ansel");
        Assert.Equal(
            (Client.Born, new DateOnly(2026, 11, 5), Client.Answers.Count),
            (client.Born, client.Answered, client.Answers.Count)
        );
    }

    /// <summary>What the client's sheet leaves open is open, whatever the coach wrote before.</summary>
    [Fact]
    public void An_open_question_on_the_sheet_is_not_asked()
    {
        var open = LittlePractice
            .Golden.Edit("clients/ansel/answers.yaml", "  hernia: no", "  hernia: no\n  sore-wrist: not asked")
            .Client("ansel");
        Assert.Null(open.AnswerTo(new("sore-wrist")));
        Assert.NotNull(Client.AnswerTo(new("sore-wrist")));
    }

    /// <summary>A browser calls a second download so, or somebody does.</summary>
    [Theory]
    [InlineData("answers (1).yaml")]
    [InlineData("Answers.yaml")]
    [InlineData("answers.yml")]
    [InlineData("answers.yaml/answers.yaml")]
    public void Answers_that_nobody_reads_are_said(string name)
    {
        var practice = name.Contains('/', StringComparison.Ordinal)
            ? LittlePractice.Golden.Without("clients/ansel/answers.yaml")
            : LittlePractice.Golden;
        var stray = $"clients/ansel/{name}";
        var finding = Assert.Single(practice.With(stray, "answered: 2026-11-05\nanswers:\n  falls: yes\n").Findings(), f =>
            f.At.File == stray
        );
        Assert.Equal(("ansel", "This looks like answers, and it is not read."), (finding.Client?.Text, finding.Message));
    }

    /// <summary>A sheet that is no list of keys is one finding; the client's own keys are none the less known.</summary>
    [Fact]
    public void A_sheet_that_cannot_be_read_makes_no_other_key_unknown() =>
        Assert.Equal(
            ["clients/ansel/answers.yaml"],
            LittlePractice.Golden.With("clients/ansel/answers.yaml", "- yes\n").Findings().Select(f => f.At.File).Distinct()
        );

    /// <summary>Bad input, each with its place.</summary>
    [Theory]
    [InlineData("answers.yaml", "  hernia: no", "  hernia: no\n  hernia: no", "answers.yaml:25:3 'hernia' appears twice.")]
    [InlineData(
        "answers.yaml",
        "  hernia: no",
        "  hernia: no\n  sore-wrist: no",
        "client.yaml:17:15 'sore-wrist' is answered twice: here, and in clients/ansel/answers.yaml."
    )]
    [InlineData(
        "answers.yaml",
        "  hernia: no",
        "  hernia: yes, left",
        "answers.yaml:24:11 'hernia' has no left and right, but the answer names a side."
    )]
    [InlineData(
        "answers.yaml",
        "  hernia: no",
        "  hernja: no",
        "answers.yaml:24:3 There is no condition 'hernja' in this practice."
    )]
    [InlineData("answers.yaml", "2 left wrist", "2 left neck", "answers.yaml:30:16 'neck' has no left and right.")]
    [InlineData(
        "answers.yaml",
        "2 left wrist",
        "11 left wrist",
        "answers.yaml:30:14 '11 left wrist' does not say how much it hurts and where."
    )]
    [InlineData(
        "answers.yaml",
        "2 left wrist",
        "2 left wirst",
        "answers.yaml:30:21 'wirst' is no region of the body that Gradus knows."
    )]
    [InlineData(
        "answers.yaml",
        "[2 left wrist, 1 neck]",
        "yes",
        "answers.yaml:30:13 'yes' does not say how much it hurts and where."
    )]
    [InlineData("answers.yaml", "[2 left wrist, 1 neck]", "[]", "answers.yaml:30:13 This list names no place that hurts.")]
    [InlineData("client.yaml", "limit: hold at most 90 s", "limit: []", "client.yaml:28:12 This list names no limit.")]
    [InlineData(
        "answers.yaml",
        "answered:",
        "born: 1989\nanswered:",
        "client.yaml:4:7 'born' is one thing here and another in answers.yaml."
    )]
    [InlineData(
        "client.yaml",
        "born: 1988-02-29",
        "born: 2027",
        "client.yaml:4:7 Somebody born in 2027 cannot have answered on 2026-11-04."
    )]
    [InlineData(
        "client.yaml",
        "until: 2031-11-06",
        "until: 2026-11-05",
        "client.yaml:27:12 This clearance ends before it begins."
    )]
    public void What_cannot_be_so_is_said_with_its_place(string file, string passage, string instead, string said)
    {
        var finding = Assert.Single(LittlePractice.Golden.Edit("clients/ansel/" + file, passage, instead).Findings());
        Assert.Equal("clients/ansel/" + said, $"{finding.At} {finding.Message}");
    }

    [Theory]
    [InlineData("yes, right", "Yes { Side = Right }")]
    [InlineData("yes", "Yes { Side =  }")]
    [InlineData("no", "No { }")]
    [InlineData("not asked", "")]
    public void A_condition_that_was_not_asked_has_no_answer(string written, string reply)
    {
        var client = LittlePractice.Golden.Edit(Path, "sore-wrist: yes, left", "sore-wrist: " + written).Client("ansel");
        Assert.Equal(reply, $"{client.AnswerTo(new("sore-wrist"))?.Reply}");
    }

    [Theory]
    [InlineData("sore-wrist: lefft")]
    [InlineData("sore-wrist:")]
    [InlineData("sore-wrist: [yes]")]
    [InlineData("sore-wrst: no")]
    public void An_answer_that_cannot_be_read_is_still_an_answer(string written)
    {
        var findings = new Findings();
        var practice = PracticeReader
            .Read(LittlePractice.Golden.Edit(Path, "sore-wrist: yes, left", written).Folder, findings)
            .Practice;
        Assert.Equal(Path, Assert.Single(findings).At.File);
        Assert.Equal(new Reply.Unread(), practice?.Find(new ClientId("ansel"))?.AnswerTo(new("sore-wrist"))?.Reply);
    }

    [Fact]
    public void The_clearances_are_bound_with_one_limit_or_a_list() =>
        Assert.Equal(
            [
                new(
                    new("faint-spells"),
                    "her cardiologist",
                    new(2026, 11, 5),
                    new(2031, 11, 5),
                    [
                        new ClearanceLimit.EffortAtMost(60, "effort at most 60 %"),
                        new ClearanceLimit.HoldAtMost(new(120), "hold at most 2 min"),
                        new ClearanceLimit.NoEndRangeTrunkBending("no end-range trunk bending"),
                        new ClearanceLimit.NotLyingOnTheFront("not lying on the front"),
                    ],
                    new(Path, 19, 5)
                ),
                new(
                    new("faint-spells"),
                    "the club doctor",
                    new(2026, 11, 6),
                    new(2031, 11, 6),
                    [new ClearanceLimit.HoldAtMost(new(90), "hold at most 90 s")],
                    new(Path, 24, 5)
                ),
            ],
            Client.Clearances
        );

    [Fact]
    public void What_may_be_left_out_may_be_left_out()
    {
        var golden = LittlePractice.Golden[Path];
        var bare = golden[..golden.IndexOf("clearances:", StringComparison.Ordinal)]
            .Replace("hour: \"07:05\"\n", "", StringComparison.Ordinal)
            .Replace("equipment: [wall, step]\n", "", StringComparison.Ordinal)
            .Replace(", guardian: 2026-11-03", "", StringComparison.Ordinal)
            .Replace("1988-02-29", "1988", StringComparison.Ordinal);
        var client = LittlePractice.Golden.With(Path, bare).Client("ansel");
        Assert.Equal((null, null, null), (client.Hour, client.Agreed.Guardian, client.Born.Date));
        Assert.Empty(client.Equipment);
        Assert.Empty(client.Clearances);
    }

    [Fact]
    public void A_client_without_programme_is_said_at_the_file_that_is_not_there()
    {
        var finding = Assert.Single(LittlePractice.Golden.Without("clients/ansel/programme.md").Findings());
        Assert.Equal(
            ("clients/ansel/programme.md", "file-missing", "There is no clients/ansel/programme.md."),
            (finding.At.ToString(), finding.Rule.Text, finding.Message)
        );
    }
}
