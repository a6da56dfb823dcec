using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class PublishCommandTests(PublishedDemonstration published) : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-publish-").FullName;

    private string To => Path.Combine(folder, "site");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_demonstration_practice_publishes_without_an_error()
    {
        var answer = published.Answer;
        Assert.Equal(0, answer.Status);
        Assert.Equal("", answer.Error);
        Assert.Contains("\n9 notes.\nhedley: 15 pages, ", answer.Output, StringComparison.Ordinal);
        Assert.Equal(["hedley", "maud", "nuala", "piers", "rufus", "tamsin"], Folders.In(published.Read()));
    }

    [Fact]
    public void Publishing_again_says_that_nothing_changed()
    {
        published.CopyTo(To);
        var answer = Gradus.Run("publish", Repository.Path("content"), "--to", To, "--today", "2031-12-01");
        Assert.Equal(0, answer.Status);
        Assert.Equal(6, answer.Output.Split("nothing changed").Length - 1);
    }

    [Fact]
    public void One_client_alone_is_published_by_name()
    {
        var answer = Gradus.Run("publish", Repository.Path("content"), "--to", To, "--client", "nuala", "--today", "2026-12-07");
        Assert.Equal(0, answer.Status);
        Assert.Equal(["nuala"], Folders.In(To));
    }

    [Fact]
    public void An_error_blocks_the_client_it_touches_and_nobody_else()
    {
        var content = Copy();
        Replace(Path.Combine(content, "clients", "rufus", "client.yaml"), "wrist-pain: no", "wrist-pain: yes, left");
        published.CopyTo(To);
        var answer = Gradus.Run("publish", content, "--to", To, "--today", "2026-12-07");
        Assert.Equal(1, answer.Status);
        Assert.Contains("contraindicated-exercise  [rufus]", answer.Output, StringComparison.Ordinal);
        Assert.Matches(@"rufus: NOT published; the site of \d{4}-\d\d-\d\d is still there: tell the client\.", answer.Output);
        Assert.Contains("maud: 18 pages", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_client_who_left_is_named_and_the_site_kept()
    {
        published.CopyTo(To);
        var content = Copy();
        Directory.Delete(Path.Combine(content, "clients", "nuala"), recursive: true);
        var answer = Gradus.Run("publish", content, "--to", To, "--today", "2026-12-07");
        Assert.Equal(0, answer.Status);
        Assert.Contains("nuala: no longer in the practice", answer.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(To, "nuala", "index.html")));
    }

    [Fact]
    public void The_same_practice_gives_the_same_bytes_in_any_locale_zone_folder_and_on_one_processor()
    {
        var elsewhere = Path.Combine(folder, "another place", "site");
        var strange = new Dictionary<string, string>
        {
            ["LANG"] = "tr_TR.UTF-8",
            ["LC_ALL"] = "tr_TR.UTF-8",
            ["TZ"] = "Pacific/Apia",
            ["DOTNET_PROCESSOR_COUNT"] = "1",
        };
        var answer = Gradus.RunApart(strange, "publish", Copy(), "--to", elsewhere, "--today", "2029-02-28");
        Assert.Equal(0, answer.Status);
        Assert.Equal(FolderBytes.Of(published.Read()), FolderBytes.Of(elsewhere));
    }

    private string Copy()
    {
        var copy = Path.Combine(folder, "a copy of the practice");
        Folders.Copy(Repository.Path("content"), copy);
        return copy;
    }

    private static void Replace(string file, string before, string after)
    {
        var text = File.ReadAllText(file);
        Assert.Contains(before, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(before, after, StringComparison.Ordinal));
    }
}
