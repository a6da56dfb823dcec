using System.Net;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;

namespace Gradus.CommandLine;

/// <summary>Answers one browser on this machine, and nobody else: on 127.0.0.1 alone, under an address that cannot be
/// guessed.</summary>
internal sealed class WatchServer : IAsyncDisposable
{
    private const int SecretBytes = 16;

    private readonly WebApplication host;
    private readonly string secret = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
    private readonly WatchSite site;
    private string origin = "";

    private WatchServer(WatchSite site, int port)
    {
        this.site = site;
        // An empty builder: one that reads settings from the surroundings could be told to listen elsewhere too.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 0;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        host = builder.Build();
        host.Run(Answer);
    }

    /// <summary>Where the first page is.</summary>
    public string Address => $"{origin}/{secret}/";

    /// <param name="port">0 for one that is free.</param>
    /// <exception cref="IOException">Somebody else listens there.</exception>
    public static async Task<WatchServer> StartAsync(WatchSite site, int port)
    {
        var server = new WatchServer(site, port);
        try
        {
            await server.host.StartAsync();
        }
        catch (IOException trouble)
        {
            await server.DisposeAsync();
            throw new IOException(
                $"Port {port} of this machine cannot be had: another program has it, or you may not use it. Leave --port out, "
                    + "and a free one is found.",
                trouble
            );
        }

        server.origin = new Uri(server.host.Urls.First()).GetLeftPart(UriPartial.Authority);
        return server;
    }

    public async ValueTask DisposeAsync()
    {
        using var soon = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        try
        {
            await host.StopAsync(soon.Token);
        }
        catch (OperationCanceledException)
        {
            // Whoever has not heard it by now is cut off.
        }

        await host.DisposeAsync();
    }

    private Task Answer(HttpContext asked)
    {
        Protect(asked.Response.Headers);
        var request = asked.Request;
        if (request.Host.Value != origin["http://".Length..])
            return Refuse(asked, StatusCodes.Status403Forbidden, "This is not the address that gradus watch listens on.");
        if (request.Headers.Origin is [not null, ..] from && from != origin)
            return Refuse(asked, StatusCodes.Status403Forbidden, "Another site may not ask here.");
        if (IsFromElsewhere(request))
            return Refuse(asked, StatusCodes.Status403Forbidden, "Another site may not show what is here.");
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            asked.Response.Headers.Allow = "GET, HEAD";
            return Refuse(asked, StatusCodes.Status405MethodNotAllowed, "Here things can be looked at, and nothing else.");
        }

        var parts = (request.Path.Value ?? "").Split('/')[1..];
        if (parts is not [var said, .. var path] || !IsSecret(said))
            return Refuse(asked, StatusCodes.Status404NotFound, "Open the address that gradus watch has said.");
        // What a browser keeps for when there is no network would outlive the watch.
        if (request.Headers.ContainsKey("Service-Worker"))
            return Refuse(asked, StatusCodes.Status404NotFound, "Nothing is kept for later here.");
        if (path.Length > 0)
            return site.Answer(asked, path);
        asked.Response.Redirect($"/{secret}/");
        return Task.CompletedTask;
    }

    /// <summary>A page of another site may lead here, which tells it nothing; it may not put what is here into itself.</summary>
    private static bool IsFromElsewhere(HttpRequest request) =>
        request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site"
        && request.Headers["Sec-Fetch-Dest"].ToString() != "document";

    private bool IsSecret(string said) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(said), Encoding.UTF8.GetBytes(secret));

    private static void Protect(IHeaderDictionary headers)
    {
        headers.CacheControl = "no-store";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.ContentSecurityPolicy = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";
    }

    private static Task Refuse(HttpContext asked, int status, string sentence) =>
        WatchSite.Write(asked, status, "text/plain; charset=utf-8", Encoding.UTF8.GetBytes(sentence + "\n"));
}
