using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

/// <summary>What somebody sees who writes while <c>gradus watch</c> runs.</summary>
[Trait("Slow", "yes")]
public sealed class WatchCommandTests(PublishedDemonstration published)
{
    [Fact]
    public void Every_file_of_every_site_is_the_one_that_is_published()
    {
        using var copy = new WatchedCopy();
        var sites = published.Read();
        string[] watched = ["maud", "rufus"];
        var files = Directory
            .EnumerateFiles(sites, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(sites, f))
            .Where(f => watched.Contains(f.Split(Path.DirectorySeparatorChar)[0], StringComparer.Ordinal))
            .ToArray();
        Assert.True(files.Length > 50);
        Assert.All(files, file =>
        {
            var shown = copy.Watch.Get($"sites/{file}");
            Assert.Equal(200, shown.Status);
            Assert.Equal(File.ReadAllBytes(Path.Combine(sites, file)), shown.Body);
        });
    }

    [Fact]
    public void A_saved_file_is_shown_and_what_is_found_is_told_in_the_words_of_the_audit()
    {
        using var copy = new WatchedCopy("--client", "rufus");
        Assert.EndsWith("clients/rufus", copy.Watch.Opened, StringComparison.Ordinal);
        copy.WaitFor("clients/rufus", "It can be published.");
        copy.Edit("clients/rufus/programme.md", "It takes ten minutes at most.", "It takes nine minutes at most.");
        copy.WaitFor("sites/rufus/index.html", "It takes nine minutes at most.");
        copy.Edit("clients/rufus/programme.md", "2 x hold 35 s", "2 x hold 350 s");
        copy.WaitFor("clients/rufus", "This is the last good page");
        copy.WaitFor("clients/rufus", "data-errors=\"1\"");
        var audit = Gradus.Run("audit", copy.Practice, "--client", "rufus", "--today", "2026-12-07");
        Assert.Equal(1, audit.Status);
        var beside = Plain(copy.Watch.Get("found/rufus").Text);
        var said = audit.Output.Split('\n').Where(line => line.Contains("  error  ", StringComparison.Ordinal)).ToArray();
        Assert.Single(said);
        Assert.Contains(said[0].Split("] ").Last(), beside, StringComparison.Ordinal);
        WatchProcess.Wait(() => copy.Watch.Output.Contains(said[0], StringComparison.Ordinal), () => copy.Watch.Output);
        Assert.Contains("It takes nine minutes", copy.Watch.Get("sites/rufus/index.html").Text, StringComparison.Ordinal);
        copy.Edit("clients/rufus/programme.md", "2 x hold 350 s", "2 x hold 36 s");
        copy.WaitFor("clients/rufus", "It can be published.");
        // The page is told first, the terminal a moment later.
        WatchProcess.Wait(
            () => copy.Watch.Output.Contains("No longer found: ", StringComparison.Ordinal),
            () => copy.Watch.Output
        );
        Assert.Equal((0, ""), (copy.Watch.End(), copy.Watch.Error));
    }

    [Fact]
    public void All_clients_are_reached_from_the_first_page()
    {
        using var copy = new WatchedCopy();
        copy.WaitFor("", "Everything was audited as it is saved.");
        var home = copy.Watch.Get("").Text;
        foreach (var client in Directory.GetDirectories(copy["clients"]).Select(f => Path.GetFileName(f)))
        {
            Assert.Contains($"<a href=\"clients/{client}\">", home, StringComparison.Ordinal);
            Assert.Equal(200, copy.Watch.Get($"clients/{client}").Status);
        }

        Directory.Delete(copy["clients/maud"], recursive: true);
        WatchProcess.Wait(() => copy.Watch.Get("clients/maud").Status == 404, () => copy.Watch.Output);
        copy.Edit("clients/rufus/client.yaml", "name: ", "nmae: ");
        copy.WaitFor("", "error");
    }

    [Fact]
    public void A_theme_is_shown_as_it_is_saved()
    {
        var theme = Directory.CreateTempSubdirectory("gradus-theme-").FullName;
        try
        {
            Folders.Copy(Repository.Path("themes", "plain"), Path.Combine(theme, "own"));
            using var copy = new WatchedCopy("--theme", Path.Combine(theme, "own"));
            copy.WaitFor("sites/rufus/index.html", "<body");
            var page = Path.Combine(theme, "own", "top.html");
            var before = File.ReadAllText(page);
            File.WriteAllText(page, before.Replace("<body", "<body data-marked=\"yes\"", StringComparison.Ordinal));
            copy.WaitFor("sites/rufus/index.html", "data-marked");
            File.WriteAllText(page, "{{ there_is_none }}");
            copy.WaitFor("clients/rufus", "This is the last good page");
            Assert.Contains("data-marked", copy.Watch.Get("sites/rufus/index.html").Text, StringComparison.Ordinal);
            File.WriteAllText(page, before);
            WatchProcess.Wait(
                () => !copy.Watch.Get("sites/rufus/index.html").Text.Contains("data-marked", StringComparison.Ordinal),
                () => copy.Watch.Output
            );
        }
        finally
        {
            Directory.Delete(theme, recursive: true);
        }
    }

    [Fact]
    public void What_cannot_be_watched_is_said_in_one_line()
    {
        using var taken = new System.Net.Sockets.TcpListener(System.Net.IPAddress.Loopback, 0);
        taken.Start();
        var port = ((System.Net.IPEndPoint)taken.LocalEndpoint).Port;
        var content = Repository.Path("content");
        Refused($"Port {port} of this machine cannot be had: another program has it", "watch", content, "--port", $"{port}");
        Refused("A port is a whole number from 1 to 65535.", "watch", content, "--port", "70000");
        Refused($"There is no client 'rufis' in '{content}'. Did you mean 'rufus'?", "watch", content, "--client", "rufis");
        Refused("is no practice: there is no practice.md in it.", "watch", Repository.Path("src"));
        Refused("There is no folder '/no/such/folder'.", "watch", "/no/such/folder");
        Refused("There is no theme folder '/no/theme'.", "watch", content, "--theme", "/no/theme");

        static void Refused(string sentence, params string[] words)
        {
            var answer = Gradus.Run(words);
            Assert.Equal((2, ""), (answer.Status, answer.Output));
            Assert.Single(answer.Error.TrimEnd('\n').Split('\n'));
            Assert.Contains(sentence, answer.Error, StringComparison.Ordinal);
        }
    }

    private static string Plain(string html) =>
        html.Replace("&quot;", "\"", StringComparison.Ordinal)
            .Replace("&lt;", "<", StringComparison.Ordinal)
            .Replace("&gt;", ">", StringComparison.Ordinal)
            .Replace("&amp;", "&", StringComparison.Ordinal);
}
