using Gradus.Planning;

namespace Gradus.Tests.Browser;

/// <summary>Whole guided sessions in Firefox over file://, in a folder and in the one file that stands at its top,
/// alone.</summary>
public sealed class GuideInFirefoxTests(PlayedPractice practice, ITestOutputHelper output)
    : IClassFixture<PlayedPractice>,
        IDisposable
{
    private readonly string alone = Directory.CreateTempSubdirectory("gradus-alone-").FullName;

    private sealed record Asked(string Firefox, string First, string Whole, AskedPage[] Pages);

    private sealed record AskedPage(string Path, string Root, string List);

    private sealed record Seen(
        string Address,
        ListedWeeks[] Lists,
        Played Played,
        LoggedSession[] Kept,
        string[] Asked,
        string[] Said
    );

    public void Dispose() => Directory.Delete(alone, recursive: true);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task It_leads_from_the_cautions_to_the_log_and_asks_for_nothing(bool oneFile)
    {
        PlayedSession[] sessions = [practice.Of(1), practice.Of(3)];
        foreach (var (playing, seen) in sessions.Zip(await Lead(practice.FolderOf(sessions[0].Client.Id), oneFile, sessions)))
        {
            Assert.Empty(Faults(playing, seen, oneFile));
            var loads = seen
                .Asked.Select(a => a.StartsWith("data:", StringComparison.Ordinal) ? "data:" : Path.GetFileName(a))
                .Distinct();
            output.WriteLine(
                $"{playing}: {seen.Played.Drawn.Length} steps, {seen.Played.Drawn.Sum(d => d.Lasts)} s; "
                    + $"loads {string.Join(", ", loads)}"
            );
        }
    }

    /// <summary>What the page of a session does besides, or otherwise.</summary>
    [Theory]
    [InlineData("session-1.html", "</main>", "<img src=\"../elsewhere.png\" alt=\"\"></main>", "asked for")]
    [InlineData(
        "session-1.html",
        "<meta http-equiv=\"Content-Security-Policy\"",
        "<link rel=\"stylesheet\" href=\"http://127.0.0.1:38099/x.css\"><meta name=\"x\"",
        "asked for http"
    )]
    [InlineData("session.js", "ui.show('end');", "fetch('http://127.0.0.1:38099/').catch(() => 0); ui.show('end');", "said")]
    [InlineData("session.js", "ui.show('end');", "console.log('here'); ui.show('end');", "said")]
    [InlineData("session.js", "ui.show('end');", "ui.show('end'); setTimeout(() => nobody.knows, 0);", "said")]
    [InlineData("session.js", "getAttribute('datetime'))[1]),", "getAttribute('datetime'))[1]) + 1,", "Digits")]
    [InlineData("page.js", "window.localStorage.setItem(", "JSON.stringify(", "in place of 1")]
    public async Task A_fault_is_seen(string file, string written, string slip, string found)
    {
        var playing = practice.Of(1);
        var folder = practice.Changed(playing.Client.Id, file, text => text.Replace(written, slip, StringComparison.Ordinal));
        var faults = Faults(playing, (await Lead(folder, oneFile: false, playing))[0], oneFile: false);
        output.WriteLine(string.Join('\n', faults.Take(3)));
        Assert.Contains(faults, f => f.Contains(found, StringComparison.Ordinal));
    }

    private static List<string> Faults(PlayedSession playing, Seen seen, bool oneFile) =>
        [
            .. seen.Played.Against(playing, seen.Lists.Single(l => l.Weeks.Split(' ').Contains($"{playing.Week}")).Steps),
            .. Differences
                .Between(seen.Played.Log, [.. seen.Kept.Where(k => k.Session == playing.Session.Number)])
                .Select(d => $"kept: {d}"),
            .. seen.Said.Select(s => $"said {s}"),
            .. seen
                .Asked.Where(url => !url.StartsWith("data:", StringComparison.Ordinal) && !IsOwn(url, seen.Address, oneFile))
                .Select(url => $"asked for {url}"),
        ];

    private static bool IsOwn(string url, string page, bool oneFile) =>
        oneFile ? url == page : url.StartsWith(page[..(page.LastIndexOf('/') + 1)], StringComparison.Ordinal);

    private Task<Seen[]> Lead(string folder, bool oneFile, params PlayedSession[] sessions)
    {
        if (oneFile)
            File.Copy(Path.Combine(folder, PagePath.AllPages), Path.Combine(alone, PagePath.AllPages));
        return Node.Ask<Asked, Seen[]>(
            "lead-in-firefox.mjs",
            new(
                "/usr/bin/firefox-esr",
                GuidedPage.ClocksFrom(sessions[0].Now),
                Played.Whole,
                [
                    .. sessions.Select(s =>
                        oneFile
                            ? Page(Path.Combine(alone, PagePath.AllPages), $"#session-{s.Session.Number}")
                            : Page(s.PathIn(folder), "main")
                    ),
                ]
            )
        );

        static AskedPage Page(string path, string root) => new(path, root, Listed.In(root));
    }
}
