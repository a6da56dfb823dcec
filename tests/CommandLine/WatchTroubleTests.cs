using System.Diagnostics;
using System.Text;

namespace Gradus.Tests.CommandLine;

/// <summary>What editors and people do to a folder that is watched.</summary>
[Trait("Slow", "yes")]
public sealed class WatchTroubleTests
{
    private const string Programme = "clients/rufus/programme.md",
        Home = "sites/rufus/index.html",
        Beside = "found/rufus";

    [Fact]
    public void A_file_that_is_saved_in_two_steps_is_never_told_as_broken()
    {
        using var copy = new WatchedCopy();
        copy.WaitFor("clients/rufus", "It can be published.");
        var asked = 0;
        for (var round = 0; round < 20 && asked < 5; round++)
        {
            var text = File.ReadAllText(copy[Programme]).Replace("ten minutes", $"{round} minutes", StringComparison.Ordinal);
            text = text.Replace($"{round - 1} minutes", $"{round} minutes", StringComparison.Ordinal);
            string beside;
            TimeSpan took;
            var between = Stopwatch.StartNew();
            using (var file = File.Create(copy[Programme]))
            {
                file.Write(Encoding.UTF8.GetBytes(text[..200]));
                file.Flush();
                Thread.Sleep(60);
                beside = copy.Watch.Get(Beside).Text;
                file.Write(Encoding.UTF8.GetBytes(text[200..]));
                took = between.Elapsed;
            }

            // A machine that is busy may take longer over the two steps than any editor, and then it is told, until it is whole.
            if (took <= TimeSpan.FromMilliseconds(200))
            {
                asked++;
                Assert.DoesNotContain("last good", beside, StringComparison.Ordinal);
            }

            copy.WaitFor(Home, $"It takes {round} minutes at most.");
            copy.WaitFor("clients/rufus", "It can be published.");
        }

        Assert.SkipWhen(asked == 0, "The machine is too busy to save anything in two quick steps.");
    }

    [Fact]
    public void A_file_that_another_takes_the_place_of_is_never_told_as_missing()
    {
        using var copy = new WatchedCopy();
        copy.WaitFor("clients/rufus", "It can be published.");
        var text = File.ReadAllText(copy[Programme]);
        File.WriteAllText(copy[Programme + "~"], text.Replace("ten minutes", "six minutes", StringComparison.Ordinal));
        File.Move(copy[Programme + "~"], copy[Programme], overwrite: true);
        copy.WaitFor(Home, "It takes six minutes at most.");
        File.Move(copy[Programme], copy[Programme + "~"]);
        File.WriteAllText(copy[Programme], text.Replace("ten minutes", "five minutes", StringComparison.Ordinal));
        File.Delete(copy[Programme + "~"]);
        copy.WaitFor(Home, "It takes five minutes at most.");
        copy.WaitFor("clients/rufus", "It can be published.");
    }

    [Fact]
    public void A_file_that_is_gone_leaves_the_last_good_page_with_what_is_wrong()
    {
        using var copy = new WatchedCopy();
        copy.WaitFor(Home, "It takes ten minutes at most.");
        var (client, text) = (copy["clients/rufus/client.yaml"], File.ReadAllText(copy["clients/rufus/client.yaml"]));
        File.Delete(client);
        copy.WaitFor("clients/rufus", "This is the last good page");
        copy.WaitFor("clients/rufus", "There is no clients/rufus/client.yaml.");
        Assert.Contains("It takes ten minutes", copy.Watch.Get(Home).Text, StringComparison.Ordinal);
        File.WriteAllText(client, text);
        copy.WaitFor("clients/rufus", "It can be published.");
    }

    [Fact]
    public void A_folder_that_is_renamed_and_comes_back_is_watched_on()
    {
        using var copy = new WatchedCopy();
        copy.WaitFor(Home, "It takes ten minutes at most.");
        Directory.Move(copy.Practice, copy.Practice + "-away");
        copy.WaitFor(Beside, "The folder is not there any more.");
        Assert.Contains("It takes ten minutes", copy.Watch.Get(Home).Text, StringComparison.Ordinal);
        Directory.Move(copy.Practice + "-away", copy.Practice);
        copy.WaitFor("clients/rufus", "It can be published.");
        copy.Edit(Programme, "ten minutes", "four minutes");
        copy.WaitFor(Home, "It takes four minutes at most.");
        Assert.Equal((0, ""), (copy.Watch.End(), copy.Watch.Error));
    }

    [Fact]
    public void Five_thousand_files_that_are_touched_at_once_hide_no_change()
    {
        using var copy = new WatchedCopy();
        copy.WaitFor(Home, "It takes ten minutes at most.");
        Directory.CreateDirectory(copy["old"]);
        var files = Enumerable.Range(0, 5_000).Select(n => copy[$"old/{n}.txt"]).ToArray();
        foreach (var file in files)
            File.WriteAllText(file, "x");
        copy.Edit(Programme, "ten minutes", "three minutes");
        foreach (var file in files)
            File.SetLastWriteTimeUtc(file, new(2026, 12, 1, 0, 0, 0, DateTimeKind.Utc));
        copy.WaitFor(Home, "It takes three minutes at most.");
        Directory.Delete(copy["old"], recursive: true);
        copy.Edit(Programme, "three minutes", "two minutes");
        copy.WaitFor(Home, "It takes two minutes at most.");
    }

    [Fact]
    public void Two_watches_of_one_folder_both_show_it()
    {
        using var copy = new WatchedCopy();
        using var second = WatchProcess.Of(copy.Practice, "--today", "2026-12-07");
        copy.Edit(Programme, "ten minutes", "eight minutes");
        copy.WaitFor(Home, "It takes eight minutes at most.");
        WatchProcess.Wait(
            () => second.Get(Home).Text.Contains("eight minutes", StringComparison.Ordinal),
            () => second.Output + second.Error
        );
        Assert.Equal((0, ""), (second.End(), second.Error));
        Assert.Equal(200, copy.Watch.Get(Home).Status);
    }

    [Fact]
    public async Task It_ends_at_once_while_somebody_looks()
    {
        using var copy = new WatchedCopy();
        using var browser = new HttpClient();
        using var events = await browser.GetStreamAsync(
            new Uri(copy.Watch.Address, "events/rufus"),
            TestContext.Current.CancellationToken
        );
        using var reader = new StreamReader(events);
        Assert.Equal("event: hello", await reader.ReadLineAsync(TestContext.Current.CancellationToken));
        var waited = Stopwatch.StartNew();
        Assert.Equal((0, ""), (copy.Watch.End(), copy.Watch.Error));
        Assert.InRange(waited.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(10));
    }
}
