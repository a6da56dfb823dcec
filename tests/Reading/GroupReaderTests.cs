using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>Who trains together: what is read, what is refused, and that nobody's pages hang on it.</summary>
public sealed class GroupReaderTests
{
    private const string Programme = """
        ---
        title: A longer lunge
        weeks: 2
        sessions:
          - { name: Ankles, days: [Mon], do: [{ use: wall-calf-stretch }] }
          - { name: Hips, days: [Thu], do: [{ use: wall-calf-stretch }] }
        ---
        Hello.
        """;

    private const string Whole =
        "name: Evening\nprogramme: lunge\nsession: Hips\nclients: [bram, tess]\nday: Thu\nhour: \"19:00\"\nplace: The hall";

    [Fact]
    public void All_of_it_is_read()
    {
        var (practice, findings) = Read(Whole);
        Assert.Empty(findings.Select(f => f.Message));
        var group = Assert.Single(practice.Groups);
        Assert.Equal(("evening", "Evening", "lunge", "Hips"), (group.Id, group.Name, group.Programme.Id, group.Session.Name));
        Assert.Equal(["bram", "tess"], group.Clients.Select(c => c.Text));
        Assert.Equal((DayOfWeek.Thursday, new TimeOnly(19, 0), "The hall"), (group.Day, group.Hour, group.Place));
    }

    /// <summary>3 December 2026 is a Thursday.</summary>
    [Theory]
    [InlineData("2026-12-03", "2026-12-03")]
    [InlineData("2026-12-04", "2026-12-10")]
    [InlineData("2026-12-09", "2026-12-10")]
    public void The_next_class_is_on_that_day_or_the_first_after_it(string today, string met)
    {
        var day = DateOnly.Parse(today, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(met, Read(Whole).Practice.Groups[0].NextFrom(day).Iso());
    }

    [Theory]
    [InlineData("bram, tess", "bram, tes", "There is no client 'tes'.", "Did you mean 'tess'?")]
    [InlineData("bram, tess", "bram, bram", "'bram' is named twice.", "Keep one of the two.")]
    [InlineData(
        "bram, tess",
        "wilma",
        "'wilma' does not follow programmes/lunge.md.",
        "Write 'from: lunge' in clients/wilma/programme.md, or take the client out of the group."
    )]
    [InlineData("programme: lunge", "programme: lung", "There is no shared programme 'lung'.", "Did you mean 'lunge'?")]
    [InlineData("session: Hips", "session: Hip", "There is no session 'Hip' in programmes/lunge.md.", "Did you mean 'Hips'?")]
    [InlineData(
        "session: Hips\n",
        "",
        "programmes/lunge.md has several sessions, and 'session' is missing.",
        "Write the one that the group does together: Ankles, Hips."
    )]
    [InlineData("day: Thu", "day: Thursday", "'Thursday' is not how a day is written here.", "Did you mean 'Thu'?")]
    [InlineData("\"19:00\"", "7pm", "'7pm' is no time of day.", "Write hours and minutes in quotation marks, as \"18:30\".")]
    [InlineData("place: The hall", "plase: The hall", "'plase' is no key of a group.", "Did you mean 'place'?")]
    [InlineData("name: Evening\n", "", "'name' is missing: a group needs it.", null)]
    public void What_is_wrong_is_said_at_its_line_and_stops_nobody(string from, string to, string message, string? help)
    {
        Assert.Contains(from, Whole, StringComparison.Ordinal);
        var (practice, findings) = Read(Whole.Replace(from, to, StringComparison.Ordinal));
        var finding = Assert.Single(findings);
        Assert.Equal(("groups/evening.yaml", message), (finding.At.File, finding.Message));
        if (help is not null)
            Assert.Equal(help, finding.Help);
        var all = new Findings();
        all.Add(finding);
        Assert.All(practice.Clients, c => Assert.False(all.Block(c.Id, Reach.Of(practice))));
    }

    [Fact]
    public void More_than_fit_on_a_page_are_refused()
    {
        var names = Enumerable.Range(1, Group.Most + 1).Select(n => $"member-{n:00}").ToArray();
        var (_, findings) = Read(Whole.Replace("bram, tess", string.Join(", ", names), StringComparison.Ordinal), names);
        Assert.Equal("A group has at most 12 clients: more do not fit on one page.", Assert.Single(findings).Message);
    }

    [Fact]
    public void A_programme_of_one_session_needs_no_word_of_it()
    {
        var (practice, findings) = Read(
            Whole.Replace("session: Hips\n", "", StringComparison.Ordinal),
            [],
            Programme.Replace("  - { name: Hips, days: [Thu], do: [{ use: wall-calf-stretch }] }\n", "", StringComparison.Ordinal)
        );
        Assert.Empty(findings.Select(f => f.Message));
        Assert.Equal("Ankles", practice.Groups[0].Session.Name);
    }

    private static (Practice Practice, Series<Finding> Findings) Read(
        string group,
        string[]? more = null,
        string programme = Programme
    )
    {
        var files = Auditing.LittlePractice.Files.ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
        foreach (var follower in (string[])["bram", "tess", .. more ?? []])
        {
            files[$"clients/{follower}/client.yaml"] = files["clients/tess/client.yaml"];
            if (files.TryGetValue("clients/tess/answers.yaml", out var answers))
                files[$"clients/{follower}/answers.yaml"] = answers;
            files[$"clients/{follower}/programme.md"] = "---\nfrom: lunge\nstart: 2026-12-07\n---\n";
        }

        files["clients/wilma/client.yaml"] = files["clients/tess/client.yaml"];
        files["clients/wilma/programme.md"] = "---\n" + programme.Split("---\n")[1] + "start: 2026-12-07\n---\nHello.";
        files["programmes/lunge.md"] = programme;
        files["groups/evening.yaml"] = group;
        var findings = new Findings();
        var practice = PracticeReader
            .Read(SourceFolder.Of(files.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)))), findings)
            .Practice;
        Assert.NotNull(practice);
        return (practice, findings.InOrder().ToSeries());
    }
}
