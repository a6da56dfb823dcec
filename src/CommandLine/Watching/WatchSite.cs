using System.Text;
using Gradus.Domain;
using Gradus.Planning;
using Microsoft.AspNetCore.Http;

namespace Gradus.CommandLine;

/// <summary>What can be looked at: a page of all clients, a page of each with the client's own page in it, and every file of
/// every site as it would be published. All of it comes from memory: no path leads to the disk.</summary>
/// <param name="end">When everybody who waits is to be let go.</param>
internal sealed class WatchSite(WatchedPractice practice, CheckLoop checks, Viewers viewers, CancellationToken end)
{
    private const string Html = "text/html; charset=utf-8";

    /// <summary>Of watch's own pages: they show and ask for what is under their own address, and nobody may frame them.</summary>
    private const string OwnPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:; connect-src 'self'; frame-src 'self'; "
        + "frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

    /// <summary>A client's page has a policy of its own, in itself. Watch alone may frame it.</summary>
    private const string ClientPolicy = "frame-ancestors 'self'";

    private static readonly byte[] Style = Encoding.UTF8.GetBytes(
        string.Concat(
            new[] { "CoachPage.css", "FindingHtml.css", "Watching.css" }.Select(name =>
                BuiltIn.Text(typeof(WatchSite).Assembly, name)
            )
        )
    );

    private static readonly byte[] Script = BuiltIn.Bytes(typeof(WatchSite).Assembly, "watching.js");

    /// <param name="path">Behind the secret, in parts.</param>
    public Task Answer(HttpContext asked, string[] path) =>
        path switch
        {
            [""] => Own(asked, WatchPages.Home(practice, checks.Progress)),
            ["look.css"] => Write(asked, StatusCodes.Status200OK, "text/css; charset=utf-8", Style),
            ["watching.js"] => Write(asked, StatusCodes.Status200OK, "text/javascript; charset=utf-8", Script),
            ["found"] => Own(asked, WatchPages.All(practice, checks.Progress)),
            ["events"] => Tell(asked, null),
            ["clients", var id] when IsClient(id) => Own(asked, WatchPages.Client(practice, Wanted(id))),
            ["found", var id] when IsClient(id) => Own(asked, WatchPages.Found(practice, practice.Peek(Wanted(id)))),
            ["events", var id] when IsClient(id) => Tell(asked, new(id)),
            ["sites", var id, .. var file] when IsClient(id) => File(asked, new(id), string.Join('/', file)),
            _ => Missing(asked, "There is no such page here.", "../"),
        };

    /// <summary>Writes an answer, or the head of it where that is asked.</summary>
    public static Task Write(HttpContext asked, int status, string type, ReadOnlyMemory<byte> bytes)
    {
        asked.Response.StatusCode = status;
        asked.Response.ContentType = type;
        asked.Response.ContentLength = bytes.Length;
        return HttpMethods.IsHead(asked.Request.Method)
            ? Task.CompletedTask
            : asked.Response.Body.WriteAsync(bytes, asked.RequestAborted).AsTask();
    }

    private bool IsClient(string id) => Id.IsValid(id) && practice.Read.Reading.Clients.Contains(new ClientId(id));

    /// <summary>What is found of a client is worked out when somebody looks.</summary>
    private ClientId Wanted(string id)
    {
        var client = new ClientId(id);
        practice.Find(client);
        if (practice.Peek(client).Told is null)
            checks.Ask(client);
        return client;
    }

    private static Task Own(HttpContext asked, string html, int status = StatusCodes.Status200OK)
    {
        asked.Response.Headers.ContentSecurityPolicy = OwnPolicy;
        return Write(asked, status, Html, Encoding.UTF8.GetBytes(html));
    }

    private static Task Missing(HttpContext asked, string sentence, string back)
    {
        asked.Response.Headers.ContentSecurityPolicy = OwnPolicy.Replace(
            "frame-ancestors 'none'",
            "frame-ancestors 'self'",
            StringComparison.Ordinal
        );
        return Write(asked, StatusCodes.Status404NotFound, Html, Encoding.UTF8.GetBytes(WatchPages.Missing(sentence, back)));
    }

    private Task File(HttpContext asked, ClientId id, string path)
    {
        if (practice.Find(id) is not { Site: { } site })
            return Missing(asked, "There is no page yet: what stands in the way is said beside it.", "");
        asked.Response.Headers.ContentSecurityPolicy = ClientPolicy;
        if (site.Pages.FirstOrDefault(p => p.Path == path) is { } page)
            return Write(asked, StatusCodes.Status200OK, Html, Encoding.UTF8.GetBytes(page.Html));
        return site.Assets.FirstOrDefault(a => a.Path == path) is { } asset
            ? Write(asked, StatusCodes.Status200OK, TypeOf(path), asset.Bytes)
            : Missing(asked, "This page is not there any more.", PagePath.Home);
    }

    /// <summary>Server-sent events (WHATWG HTML, 9.2): what is other, as soon as it is.</summary>
    private async Task Tell(HttpContext asked, ClientId? id)
    {
        asked.Response.ContentType = "text/event-stream";
        if (HttpMethods.IsHead(asked.Request.Method))
            return;
        using var over = CancellationTokenSource.CreateLinkedTokenSource(asked.RequestAborted, end);
        var viewer = viewers.Add(id);
        try
        {
            var version = id is null ? 0 : practice.Find(id)?.Of.Version ?? 0;
            if (id is not null)
                Wanted(id.Text);
            await Say(FormattableString.Invariant($"event: hello\ndata: {version}\n\n"));
            await foreach (var message in viewer.Messages.Reader.ReadAllAsync(over.Token))
                await Say(message);
        }
        catch (OperationCanceledException)
        {
            // The page was closed, or the watch ends.
        }
        finally
        {
            viewers.Remove(viewer);
        }

        async Task Say(string message)
        {
            await asked.Response.WriteAsync(message, over.Token);
            await asked.Response.Body.FlushAsync(over.Token);
        }
    }

    private static string TypeOf(string path) =>
        Path.GetExtension(path) switch
        {
            ".css" => "text/css; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".svg" => "image/svg+xml",
            ".webmanifest" => "application/manifest+json",
            ".ics" => "text/calendar; charset=utf-8",
            ".txt" => "text/plain; charset=utf-8",
            ".jpg" or ".jpeg" => "image/jpeg",
            ".png" => "image/png",
            ".webp" => "image/webp",
            ".mp4" => "video/mp4",
            ".webm" => "video/webm",
            ".woff2" => "font/woff2",
            _ => "application/octet-stream",
        };
}
