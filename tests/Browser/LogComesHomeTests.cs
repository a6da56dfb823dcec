using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>What a client notes on the page in a browser, sent as a file and as a message, received into the practice and
/// reviewed: the whole way home.</summary>
public sealed class LogComesHomeTests(PublishedContent content) : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("gradus-home-").FullName;

    private string Practice => Path.Combine(folder, "practice");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_session_that_was_stopped_for_a_sharp_pain_reaches_the_coach()
    {
        CopyContent();
        await using var context = await GuidedPage.ContextAsync(content, new() { AcceptDownloads = true });
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        await page.Press("hurts");
        await page.Say("6", "sharp");
        await page.Press("end-session");
        await page.Dialog.Locator("[data-form='log'] [data-effort]").SelectOptionAsync("4");
        await page.Dialog.Locator("[data-note]").FillAsync("=slept badly; \"very\"");
        await page.Dialog.Locator("[data-form='log'] [type='submit']").ClickAsync();
        var download = await page.Page.RunAndWaitForDownloadAsync(() =>
            page.Dialog.Locator("[data-log='save']:visible").ClickAsync()
        );
        await page.Dialog.Locator("[data-log='message']:visible").ClickAsync();
        var message = Path.Combine(folder, "message.txt");
        var text = await page.Dialog.Locator("[data-log-text]").InputValueAsync();
        await File.WriteAllTextAsync(message, "> " + text.Replace(' ', '\u00A0'), TestContext.Current.CancellationToken);
        Assert.Matches("^Mon 14 Dec, week [12], Ankles and hips: .* Stopped early. Effort 4, pain 6 \\(knee, left\\)\\.\n", text);

        Assert.Equal(0, await Run("receive", Practice, await download.PathAsync(), "--today", "2026-12-15"));
        var entry = Assert.Single(Rufus().Log);
        Assert.Equal(new LogOutcome.EndedEarly(StopReason.Sharp), entry.Outcome);
        Assert.Equal(new LoggedPain(6, Region.Find("knee"), Side.Left), entry.During);
        Assert.Equal((0, 4, "=slept badly; \"very\""), (entry.Before?.Level, entry.Effort, entry.Note));
        Assert.Contains(entry.Exercises, e => e is { IsStopped: true, For: StopReason.Sharp });

        var kept = await File.ReadAllTextAsync(Log, TestContext.Current.CancellationToken);
        Assert.Equal(0, await Run("receive", Practice, message, "--today", "2026-12-15"));
        Assert.Single(Rufus().Log);
        Assert.StartsWith(
            kept,
            await File.ReadAllTextAsync(Log, TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );

        // A clinician or the coach asks first: the next publish is blocked.
        Assert.Equal(
            1,
            await Run("publish", Practice, "--to", Path.Combine(folder, "site"), "--client", "rufus", "--today", "2026-12-15")
        );
        Assert.False(Directory.Exists(Path.Combine(folder, "site", "rufus")));
        Assert.Equal(0, await Run("review", Practice, "--client", "rufus", "--today", "2026-12-15"));
    }

    private string Log => Path.Combine(Practice, "clients", "rufus", "log.csv");

    private Client Rufus()
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(SourceFolder.Open(Practice), findings).Practice;
        Assert.NotNull(practice);
        Assert.Empty(findings);
        return practice.Clients.Single(c => c.Id.Text == "rufus");
    }

    private static Task<int> Run(params string[] words) => Commands.All().RunAsync(words);

    private void CopyContent()
    {
        var from = Repository.Path("content");
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(Practice, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to) ?? Practice);
            File.Copy(file, to);
        }
    }
}
