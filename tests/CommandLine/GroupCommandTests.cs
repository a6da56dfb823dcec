namespace Gradus.Tests.CommandLine;

/// <summary>The sheet of a class, as a coach makes it; and that nothing of a group reaches a client.</summary>
public sealed class GroupCommandTests : IDisposable
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
                as: again
                side: rear leg
                by-week: { 1: 3 x hold 30 s }
        ---
        Hello {name}.
        """;

    private const string Evening =
        "name: Thursday owls\nprogramme: lunge\nclients: [tess, bram]\nday: Thu\nhour: \"19:30\"\nplace: Old boathouse\n";

    private readonly SentFolder sent = new();

    public GroupCommandTests()
    {
        Write("programmes/lunge.md", Shared);
        Write("clients/tess/programme.md", "---\nfrom: lunge\nstart: 2026-12-07\n---\n");
        Write(
            "clients/bram/programme.md",
            "---\nfrom: lunge\nstart: 2026-12-07\ndifferences:\n  - leave-out: again\n    because: a secret between us\n---\n"
        );
    }

    public void Dispose() => sent.Dispose();

    [Fact]
    public void It_says_who_does_what_and_when_and_on_which_side()
    {
        Write("groups/owls.yaml", Evening);
        var answer = Sheet("owls");
        Assert.Equal(0, answer.Status);
        Assert.Contains("Thursday 2026-12-10, 2 of 2 train", answer.Output, StringComparison.Ordinal);
        var page = File.ReadAllText(sent["sheet.html"]);
        foreach (
            var said in (string[])
                [
                    "For the coach alone.",
                    "Thursday 2026-12-10, 19:30, Old boathouse.",
                    "Emergency: 999.",
                    "<strong>Stop at once:</strong>",
                    "waits: Bram",
                    "week 1, rear leg left",
                    "week 1, rear leg right",
                    "leaves out Wall calf stretch",
                    "(Tess)",
                ]
        )
            Assert.Contains(said, page, StringComparison.Ordinal);
        Assert.DoesNotContain("a secret between us", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
    }

    /// <summary>With groups and without the same bytes stand in the same files, and no word of a group in any.</summary>
    [Fact]
    public void Nothing_of_it_is_in_any_clients_site()
    {
        Assert.Equal(0, sent.Publish("--as", "folder,file").Status);
        var without = FolderBytes.Of(sent.To);
        Write("groups/owls.yaml", Evening);
        Assert.Equal(0, sent.Publish("--as", "folder,file").Status);
        Assert.Equal(without, FolderBytes.Of(sent.To));
        Directory.Delete(sent.To, recursive: true);
        Assert.Equal(0, sent.Publish("--as", "folder,file").Status);
        foreach (var file in Directory.EnumerateFiles(sent.To, "*", SearchOption.AllDirectories))
        {
            var text = File.ReadAllText(file);
            Assert.DoesNotContain("Thursday owls", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("boathouse", text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Who_stands_in_an_error_does_not_train_and_the_others_do()
    {
        Write("groups/owls.yaml", Evening);
        sent.Edit("clients/bram/client.yaml", "ankle-injury: no", "ankle-injury: yes");
        Assert.Contains("1 of 2 train", Sheet("owls").Output, StringComparison.Ordinal);
        Assert.Contains(
            "does not train: an error stands in the way",
            File.ReadAllText(sent["sheet.html"]),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void What_came_back_is_asked_first()
    {
        Write("groups/owls.yaml", Evening);
        Write(
            "clients/tess/log.csv",
            "date,start,session,week,exercise,side,sets,steps-done,steps-planned,minutes,effort,pain-during,note\n"
                + "2026-12-07,18:05,1,1,,,,12,12,17.5,4,7 left knee,\n"
        );
        Sheet("owls");
        Assert.Contains("left knee", File.ReadAllText(sent["sheet.html"]), StringComparison.Ordinal);
    }

    /// <summary>A change from week 2 on is none of the class in week 1.</summary>
    [Theory]
    [InlineData("2026-12-08", false)]
    [InlineData("2026-12-15", true)]
    public void A_dose_of_ones_own_is_named_from_its_week_on(string today, bool isNamed)
    {
        Write("groups/owls.yaml", Evening);
        Write(
            "clients/bram/programme.md",
            "---\nfrom: lunge\nstart: 2026-12-07\ndifferences:\n  - change: again\n    by-week: { 1: 2 x hold 45 s }\n"
                + "    from-week: 2\n    because: agreed\n---\n"
        );
        Assert.Equal(0, Gradus.Run("group", sent.Practice, "owls", "--to", sent["sheet.html"], "--today", today).Status);
        Assert.Equal(
            isNamed,
            File.ReadAllText(sent["sheet.html"]).Contains("Wall calf stretch: own dose or side", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_group_that_is_not_there_is_asked_back()
    {
        Write("groups/owls.yaml", Evening);
        var answer = Sheet("owl");
        Assert.Equal(2, answer.Status);
        Assert.Contains("There is no group 'owl'", answer.Error, StringComparison.Ordinal);
        Assert.Contains("Did you mean 'owls'?", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_with_a_mistake_makes_no_sheet_and_stops_nobody()
    {
        Write("groups/owls.yaml", Evening.Replace("tess", "tes", StringComparison.Ordinal));
        var answer = Sheet("owls");
        Assert.Equal((1, false), (answer.Status, File.Exists(sent["sheet.html"])));
        Assert.Contains("There is no client 'tes'.", answer.Output, StringComparison.Ordinal);
        Assert.Contains("groups/owls.yaml has mistakes", answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("NOT published", sent.Publish().Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_one_names_those_who_follow_a_shared_programme()
    {
        Assert.Equal(0, Gradus.Run("new", "group", "early-birds", "--in", sent.Practice).Status);
        Assert.Equal(0, Sheet("early-birds").Status);
        Assert.Contains("<h1>Early birds</h1>", File.ReadAllText(sent["sheet.html"]), StringComparison.Ordinal);
        foreach (var client in (string[])["tess", "bram"])
            Write(
                $"clients/{client}/programme.md",
                Shared.Replace("weeks: 2", "weeks: 2\nstart: 2026-12-07", StringComparison.Ordinal)
            );
        var none = Gradus.Run("new", "group", "others", "--in", sent.Practice);
        Assert.Equal(2, none.Status);
        Assert.Contains("follows a shared programme, and nobody here does", none.Error, StringComparison.Ordinal);
    }

    private Answer Sheet(string id) =>
        Gradus.Run("group", sent.Practice, id, "--to", sent["sheet.html"], "--today", "2026-12-08");

    private void Write(string path, string text)
    {
        var to = Path.Combine(sent.Practice, path);
        Directory.CreateDirectory(Path.GetDirectoryName(to) ?? "");
        File.WriteAllText(to, text);
    }
}
