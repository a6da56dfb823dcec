namespace Gradus.Tests.CommandLine;

/// <summary>A programme that is written once, as a coach begins, changes and compares it.</summary>
public sealed class SharedProgrammeCommandTests : IDisposable
{
    private const string Shared = """
        ---
        title: A longer lunge
        weeks: 2
        sessions:
          - name: Ankles
            days: [Mon, Thu]
            do:
              - use: wall-calf-stretch
                side: rear leg
                by-week: { 1: 2 x hold 30 s }
              - use: wall-calf-stretch
                as: press
                side: rear leg
                by-week: { 1: 3 x hold 30 s }
        ---
        {name}, two short sessions a week.
        """;

    private readonly SentFolder sent = new();

    public SharedProgrammeCommandTests()
    {
        Write("programmes/lunge.md", Shared);
        Write("clients/tess/programme.md", "---\nfrom: lunge\nstart: 2026-12-07\n---\n");
        Write("clients/bram/programme.md", "---\nfrom: lunge\nstart: 2026-12-07\ndays: { Ankles: [Sat] }\n---\n");
    }

    public void Dispose() => sent.Dispose();

    [Fact]
    public void Both_who_follow_it_are_published_with_their_own_names_and_sides()
    {
        Assert.Equal(0, sent.Publish().Status);
        var (tess, bram) = (Home("tess"), Home("bram"));
        Assert.Contains("Tess Harrowby, two short sessions a week.", tess, StringComparison.Ordinal);
        Assert.Contains("Bram Ullyett, two short sessions a week.", bram, StringComparison.Ordinal);
        Assert.DoesNotContain("Bram", tess, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_in_it_is_said_once_with_those_whom_it_touches()
    {
        sent.Edit("programmes/lunge.md", "1: 3 x hold 30 s", "1: 3 x hold 90 s");
        var answer = sent.Publish();
        Assert.Equal(1, answer.Status);
        Assert.Single(answer.Output.Split('\n'), line =>
            line.StartsWith("programmes/lunge.md:", StringComparison.Ordinal)
            && line.Contains("dose-outside-envelope", StringComparison.Ordinal)
        );
        Assert.Contains("It touches 2 clients: bram, tess.", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_must_not_do_a_use_of_it_is_told_of_the_difference_to_write()
    {
        sent.Edit("clients/bram/client.yaml", "ankle-injury: no", "ankle-injury: yes");
        var answer = sent.Publish();
        Assert.Equal(1, answer.Status);
        Assert.Contains("bram: NOT published", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("tess: NOT published", answer.Output, StringComparison.Ordinal);
        var said = string.Join(' ', answer.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (var use in (string[])["wall-calf-stretch", "press"])
            Assert.Contains(
                "write it under 'differences' in clients/bram/programme.md, as " + $"- {{ leave-out: {use}, because: \"...\" }}",
                said,
                StringComparison.Ordinal
            );
    }

    [Fact]
    public void A_change_of_it_is_a_new_edition_of_everybody_on_it_and_of_nobody_else()
    {
        sent.Publish();
        sent.Edit("programmes/lunge.md", "1: 2 x hold 30 s", "1: 2 x hold 45 s");
        Assert.Contains(
            "\nPublishing makes a new edition for: bram, tess.\n",
            Gradus.Run("audit", sent.Practice, "--today", "2026-12-07").Output,
            StringComparison.Ordinal
        );
        var answer = sent.Publish("--client", "tess");
        Assert.Contains("tess: edition 2 is recorded", answer.Output, StringComparison.Ordinal);
        Assert.Contains(
            "Changed since their last edition, and not published now: bram.",
            answer.Output,
            StringComparison.Ordinal
        );
    }

    /// <summary>What is done in place of another has its side, and ends when it says.</summary>
    [Fact]
    public void The_side_that_is_taken_over_and_the_last_week_are_said()
    {
        Write(
            "clients/tess/programme.md",
            "---\nfrom: lunge\nstart: 2026-12-07\ndifferences:\n  - instead: press\n    use: calf-press\n    because: x\n"
                + "  - add: calf-press\n    after: wall-calf-stretch\n    until-week: 1\n    because: y\n---\n"
        );
        var said = Gradus.Run("compare", sent.Practice, "--client", "tess", "--with", "programmes/lunge").Output;
        Assert.Contains("instead of press: calf-press, side rear leg as there: x\n", said, StringComparison.Ordinal);
        Assert.Contains("done too: calf-press, after wall-calf-stretch, until week 1: y\n", said, StringComparison.Ordinal);
    }

    /// <summary>A line that this client no longer does is right for everybody else, and no warning.</summary>
    [Fact]
    public void A_line_of_the_shared_programme_is_not_blamed_for_a_clients_difference()
    {
        sent.Edit("programmes/lunge.md", "by-week: { 1: 2 x hold 30 s }", "by-week: { 1: 2 x hold 30 s, 2: 2 x hold 45 s }");
        Write(
            "clients/tess/programme.md",
            "---\nfrom: lunge\nstart: 2026-12-07\ndifferences:\n  - leave-out: wall-calf-stretch\n    from-week: 2\n"
                + "    because: agreed\n---\n"
        );
        var answer = Gradus.Run("audit", sent.Practice, "--today", "2026-12-07");
        Assert.DoesNotContain("line-out-of-use", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_a_clients_own_is_said_in_words()
    {
        Write(
            "clients/tess/programme.md",
            "---\nfrom: lunge\nstart: 2026-12-14\ndays: { Ankles: [Tue, Fri] }\ndifferences:\n"
                + "  - leave-out: press\n    from-week: 2\n    because: her calf is sore\n"
                + "  - add: wall-calf-stretch\n    in: Ankles\n    because: she asked for it\n---\nTess, read this.\n"
        );
        var answer = Gradus.Run("compare", sent.Practice, "--client", "tess", "--with", "programmes/lunge");
        Assert.Equal(0, answer.Status);
        Assert.Equal(
            """
            Tess Harrowby follows programmes/lunge.md, 'A longer lunge'
            first day: 2026-12-14
            days of 'Ankles': the client's own
            letter: the client's own
            not done: press, from week 2: her calf is sore
            done too: wall-calf-stretch, last, in 'Ankles': she asked for it

            """.ReplaceLineEndings("\n"),
            answer.Output
        );
        Assert.Contains(
            "tess follows programmes/lunge.md, and not programmes/other.md.",
            Gradus.Run("compare", sent.Practice, "--client", "tess", "--with", "other").Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_new_one_can_be_followed_as_it_is()
    {
        var answer = Gradus.Run("new", "programme", "first-weeks", "--in", sent.Practice);
        Assert.Equal(0, answer.Status);
        Write("clients/tess/programme.md", "---\nfrom: first-weeks\nstart: 2026-12-07\n---\n");
        var audit = Gradus.Run("audit", sent.Practice, "--today", "2026-12-07");
        Assert.DoesNotContain(
            "programmes/first-weeks.md",
            string.Join('\n', audit.Output.Split('\n').Where(l => l.Contains(" error ", StringComparison.Ordinal))),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "is there already",
            Gradus.Run("new", "programme", "first-weeks", "--in", sent.Practice).Error,
            StringComparison.Ordinal
        );
    }

    private void Write(string path, string text)
    {
        var to = Path.Combine(sent.Practice, path);
        Directory.CreateDirectory(Path.GetDirectoryName(to) ?? sent.Practice);
        File.WriteAllText(to, text);
    }

    private string Home(string client) => File.ReadAllText(Path.Combine(sent.To, client, "index.html"));
}
