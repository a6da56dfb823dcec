using System.Net;

namespace Gradus.Tests.Browser;

/// <summary>Files of one folder on 127.0.0.1, as any static host hands them out.</summary>
internal sealed class StaticHost : IDisposable
{
    private readonly HttpListener listener = new();
    private readonly string folder;
    private readonly Task serving;

    private StaticHost(string folder, int port)
    {
        this.folder = folder;
        Address = FormattableString.Invariant($"http://127.0.0.1:{port}/");
        listener.Prefixes.Add(Address);
        listener.Start();
        serving = Task.Run(Serve);
    }

    public string Address { get; }

    /// <summary>What a file waits for before it is handed out.</summary>
    public Func<string, Task> Before { get; set; } = _ => Task.CompletedTask;

    public static StaticHost Of(string folder)
    {
        using var free = new System.Net.Sockets.TcpListener(IPAddress.Loopback, 0);
        free.Start();
        var port = ((IPEndPoint)free.LocalEndpoint).Port;
        free.Stop();
        return new(folder, port);
    }

    public async Task StopAsync()
    {
        listener.Stop();
        await serving;
    }

    public void Dispose() => listener.Close();

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            try
            {
                // Nobody waits for a file that is held back.
                _ = Answer(await listener.GetContextAsync());
            }
            catch (Exception stopped) when (IsStop(stopped))
            {
                // The host was stopped.
            }
        }
    }

    private async Task Answer(HttpListenerContext asked)
    {
        try
        {
            var name = asked.Request.Url?.AbsolutePath.TrimStart('/') is { Length: > 0 } path ? path : "index.html";
            await Before(name);
            var file = Path.Combine(folder, name);
            asked.Response.StatusCode = File.Exists(file) ? 200 : 404;
            asked.Response.ContentType = Path.GetExtension(name) switch
            {
                ".html" => "text/html",
                ".css" => "text/css",
                ".js" => "text/javascript",
                ".svg" => "image/svg+xml",
                ".webmanifest" => "application/manifest+json",
                _ => "text/plain",
            };
            if (File.Exists(file))
                await asked.Response.OutputStream.WriteAsync(await File.ReadAllBytesAsync(file));
            asked.Response.Close();
        }
        catch (Exception stopped) when (IsStop(stopped))
        {
            // The host was stopped, or the browser went away.
        }
    }

    private static bool IsStop(Exception trouble) =>
        trouble is HttpListenerException or ObjectDisposedException or InvalidOperationException;
}
