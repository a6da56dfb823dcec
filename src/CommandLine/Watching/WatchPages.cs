using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.CommandLine;

/// <summary>Watch's own pages, for the coach alone, and the parts of them that change. A client's page stands in one of them as
/// it would be published, and has nothing of watch in it.</summary>
internal static class WatchPages
{
    /// <summary>All clients.</summary>
    public static string Home(WatchedPractice practice, CheckLoop.Progressed progress) =>
        Page(
            practice.Read.Reading.Practice?.Card.Name ?? "The practice",
            "",
            "class=\"all\"",
            "",
            $"<main>\n<h1>{Escape(practice.Read.Reading.Practice?.Card.Name ?? "The practice")}</h1>\n"
                + $"<div id=\"found\">\n{All(practice, progress)}</div>\n</main>\n"
        );

    /// <summary>One client: the page as the client would see it, and what is found.</summary>
    public static string Client(WatchedPractice practice, ClientId id)
    {
        var name = practice.Find(id)?.Of.Name ?? id.Text;
        var of = practice.Peek(id);
        return Page(
            name,
            "../",
            $"class=\"one\" data-client=\"{id}\" data-version=\"{of.Version}\"",
            $"""
            <p><a href="../">All clients</a></p>
            <h1>{Escape(name)}</h1>
            <p><a id="alone" href="../sites/{id}/{PagePath.Home}" target="_blank">This page by itself</a></p>

            """,
            $"""
            <main>
            <section id="beside" aria-labelledby="beside-title">
            <details open>
            <summary><h2 id="beside-title">What was found</h2> <span id="counted" role="status"></span></summary>
            <div id="found">
            {Found(practice, of)}</div>
            </details>
            </section>
            <section id="pages" aria-label="The page, as {Escape(name)} would see it">
            <p id="waits" hidden>The page has changed. <button type="button" id="now">Show it now</button></p>
            <div id="frames"><iframe title="The page of {Escape(name)}" src="../sites/{id}/{PagePath.Home}"></iframe></div>
            </section>
            </main>

            """
        );
    }

    /// <summary>What stands beside a client's page.</summary>
    public static string Found(WatchedPractice practice, Watched of)
    {
        var isWrong = of.Stopped is null && (!of.IsNow || of.Told is { Errors: > 0 });
        return $"<p class=\"state{(isWrong ? " wrong" : "")}\" data-errors=\"{of.Told?.Errors ?? 0}\" "
            + $"data-counted=\"{Escape(of.Told?.Counted ?? "Being audited …")}\">{Escape(StateOf(practice, of))}</p>\n"
            + of.Told?.Markup;
    }

    /// <summary>What stands on the page of all clients.</summary>
    public static string All(WatchedPractice practice, CheckLoop.Progressed progress)
    {
        var read = practice.Read;
        var html = new StringBuilder();
        var far =
            practice.IsGone ? "The folder is not there any more. Everything is as it was."
            : progress.IsDone ? "Everything was audited as it is saved."
            : FormattableString.Invariant($"Being audited: {progress.Done} of {read.Reading.Clients.Count} clients so far.");
        html.Append($"<p class=\"state{(practice.IsGone ? " wrong" : "")}\" data-errors=\"{progress.Told?.Errors ?? 0}\">")
            .Append($"{Escape(far)} {Escape(progress.Told?.Counted ?? "")}</p>\n<ul class=\"clients\">\n");
        foreach (var id in read.Reading.Clients)
            html.Append($"<li><a href=\"clients/{id}\">{Escape(read.Bound(id)?.Name ?? id.Text)}</a>")
                .Append($" <span class=\"place\">{id}</span>{NoteOf(read, id, progress)}</li>\n");
        html.Append("</ul>\n");
        if (progress.Told is { Markup.Length: > 0 } told)
            html.Append($"<h2>What was found</h2>\n{told.Markup}");
        return html.ToString();
    }

    public static string Missing(string sentence, string back) =>
        "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>No page</title>\n</head>\n<body>\n"
        + $"<p>{Escape(sentence)}</p>\n"
        + $"{(back.Length > 0 ? $"<p><a href=\"{Escape(back)}\">Back</a></p>\n" : "")}</body>\n</html>\n";

    private static string NoteOf(ReadState read, ClientId id, CheckLoop.Progressed progress) =>
        read.StoppedOn(id) is { } on ? $" <span class=\"place\">stopped on {on.Iso()}</span>"
        : progress.Errors.TryGetValue(id, out var errors)
            ? $" <span class=\"level wrong\">{errors} error{(errors == 1 ? "" : "s")}</span>"
        : read.Bound(id) is null ? " <span class=\"level wrong\">cannot be read</span>"
        : "";

    private static string StateOf(WatchedPractice practice, Watched of) =>
        practice.IsGone ? "The folder is not there any more. This is the page as it was."
        : of.Stopped is { } on ? $"Stopped on {on.Iso()}: no pages are made."
        : of.Good is null ? "No page could be made yet: errors stand in the way."
        : !of.IsNow ? "What is saved cannot be published. This is the last good page, as it was before."
        : of.Told is null ? "This is the page as it is saved. It is being audited."
        : of.Told.Errors > 0 ? "This is the page as it is saved. It would not be published: errors stand in the way."
        : "This is the page as it is saved. It can be published.";

    private static string Page(string title, string root, string body, string header, string content) =>
        $"""
            <!doctype html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="robots" content="noindex">
            <title>{Escape(title)}</title>
            <link rel="icon" href="data:,">
            <link rel="stylesheet" href="{root}look.css">
            <script src="{root}watching.js" defer></script>
            </head>
            <body data-root="{root}" data-title="{Escape(title)}" {body}>
            <header>
            <p class="private"><strong>For the coach alone.</strong> <span id="alive">Shown while gradus watch runs.</span></p>
            {header}</header>
            {content}</body>
            </html>

            """;

    private static string Escape(string text) => CoachPage.Escape(text);
}
