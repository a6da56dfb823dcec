using Gradus.Planning;

namespace Gradus.Tests.Browser;

/// <summary>Guided sessions led in one Firefox, one after the other, for all tests that look at them.</summary>
public sealed class LedInFirefox : IDisposable
{
    /// <summary>A fault of the first session's page, and what is seen of it.</summary>
    internal static readonly (string Name, string File, string Written, string Slip, string Found)[] Slips =
    [
        ("a picture from elsewhere", "session-1.html", "</main>", "<img src=\"../elsewhere.png\" alt=\"\"></main>", "asked for"),
        (
            "a style from the network, and no policy",
            "session-1.html",
            "<meta http-equiv=\"Content-Security-Policy\"",
            "<link rel=\"stylesheet\" href=\"http://127.0.0.1:38099/x.css\"><meta name=\"x\"",
            "asked for http"
        ),
        (
            "a request at the end",
            "session.js",
            "ui.show('end');",
            "fetch('http://127.0.0.1:38099/').catch(() => 0); ui.show('end');",
            "said"
        ),
        ("a word in the console", "session.js", "ui.show('end');", "console.log('here'); ui.show('end');", "said"),
        ("an error after the end", "session.js", "ui.show('end');", "ui.show('end'); setTimeout(() => nobody.knows, 0);", "said"),
        ("steps a second longer", "session.js", "getAttribute('datetime'))[1]),", "getAttribute('datetime'))[1]) + 1,", "Digits"),
        ("a log that is not kept", "page.js", "window.localStorage.setItem(", "JSON.stringify(", "in place of 1"),
    ];

    private readonly PlayedPractice practice;
    private readonly PlayedSession[] sessions;
    private readonly Lazy<Task<Seen[]>> seen;
    private readonly string alone = Directory.CreateTempSubdirectory("gradus-alone-").FullName;

    public LedInFirefox(PlayedPractice practice)
    {
        this.practice = practice;
        sessions = [practice.Of(1), practice.Of(3)];
        seen = new(Lead);
    }

    private sealed record Asked(string Firefox, string First, string Whole, AskedPage[] Pages);

    private sealed record AskedPage(string Path, string Root, string List, bool Together);

    internal sealed record Seen(
        string Address,
        ListedWeeks[] Lists,
        Played Played,
        LoggedSession[] Kept,
        string File,
        string Message,
        string[] Asked,
        string[] Said
    );

    public void Dispose() => Directory.Delete(alone, recursive: true);

    /// <summary>The sessions as they are, of the folder or of the one file.</summary>
    internal async Task<IEnumerable<(PlayedSession Playing, Seen Seen)>> As(bool oneFile) =>
        sessions.Zip((await seen.Value).Skip(oneFile ? sessions.Length : 0));

    internal async Task<(PlayedSession Playing, Seen Seen)> With(string slip) =>
        (sessions[0], (await seen.Value)[(2 * sessions.Length) + Array.FindIndex(Slips, s => s.Name == slip)]);

    private Task<Seen[]> Lead()
    {
        var client = sessions[0].Client.Id;
        var file = Path.Combine(alone, PagePath.AllPages);
        File.Copy(Path.Combine(practice.FolderOf(client), PagePath.AllPages), file);
        return Node.Ask<Asked, Seen[]>(
            "lead-in-firefox.mjs",
            new(
                "/usr/bin/firefox-esr",
                GuidedPage.ClocksFrom(sessions[0].Now),
                Played.Whole,
                [
                    .. sessions.Select((s, n) => Page(s.PathIn(practice.FolderOf(client)), "main", n > 0)),
                    .. sessions.Select((s, n) => Page(file, $"#session-{s.Session.Number}", n > 0)),
                    .. Slips.Select(s => Page(sessions[0].PathIn(Changed(s.File, s.Written, s.Slip)), "main", together: false)),
                ]
            )
        );

        string Changed(string path, string written, string slip) =>
            practice.Changed(client, path, text => text.Replace(written, slip, StringComparison.Ordinal));

        static AskedPage Page(string path, string root, bool together) => new(path, root, Listed.In(root), together);
    }
}
