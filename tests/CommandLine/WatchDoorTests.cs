using System.Net.Sockets;

namespace Gradus.Tests.CommandLine;

/// <summary>Who may ask <c>gradus watch</c>, and for what: one browser on this machine, for what is in the sites.</summary>
[Trait("Slow", "yes")]
public sealed class WatchDoorTests(WatchDoorTests.Door door) : IClassFixture<WatchDoorTests.Door>
{
    /// <summary>SECRET and PORT stand for those of the watch.</summary>
    public static TheoryData<int, string, string, string[]> Requests() =>
        new()
        {
            { 200, "GET", "/SECRET/", [] },
            { 200, "HEAD", "/SECRET/", [] },
            { 200, "GET", "/SECRET/sites/rufus/index.html", [] },
            { 200, "GET", "/SECRET/", ["Origin: http://127.0.0.1:PORT"] },
            { 200, "GET", "/SECRET/", ["Sec-Fetch-Site: none", "Sec-Fetch-Dest: document"] },
            { 200, "GET", "/SECRET/", ["Sec-Fetch-Site: cross-site", "Sec-Fetch-Dest: document"] },
            { 302, "GET", "/SECRET", [] },
            // A name that an attacker lets point to this machine (DNS rebinding).
            { 403, "GET", "/SECRET/", ["Host: rebound.example"] },
            { 403, "GET", "/SECRET/", ["Host: rebound.example:PORT"] },
            { 403, "GET", "/SECRET/", ["Host: 127.0.0.1"] },
            { 403, "GET", "/SECRET/", ["Host: localhost:PORT"] },
            { 403, "GET", "/SECRET/", ["Host: 127.0.0.1.rebound.example:PORT"] },
            { 403, "GET", "/SECRET/", ["Origin: http://rebound.example"] },
            { 403, "GET", "/SECRET/", ["Origin: null"] },
            { 403, "GET", "/SECRET/", ["Origin: https://127.0.0.1:PORT"] },
            { 403, "GET", "/SECRET/events", ["Origin: http://127.0.0.1:1"] },
            { 403, "GET", "/SECRET/look.css", ["Sec-Fetch-Site: cross-site", "Sec-Fetch-Dest: style"] },
            { 403, "GET", "/SECRET/sites/rufus/index.html", ["Sec-Fetch-Site: same-site", "Sec-Fetch-Dest: iframe"] },
            { 405, "POST", "/SECRET/", ["Content-Length: 0"] },
            { 405, "PUT", "/SECRET/sites/rufus/index.html", ["Content-Length: 0"] },
            { 405, "DELETE", "/SECRET/", [] },
            { 405, "OPTIONS", "/SECRET/", [] },
            { 405, "TRACE", "/SECRET/", [] },
            { 404, "GET", "/", [] },
            { 404, "GET", "/favicon.ico", [] },
            { 404, "GET", "/sites/rufus/index.html", [] },
            { 404, "GET", "/00000000000000000000000000000000/", [] },
            { 404, "GET", "/SECRET0/", [] },
            { 404, "GET", "/SECRET/sites/rufus/offline.js", ["Service-Worker: script"] },
            { 404, "GET", "/SECRET/sites/rufus/no-such.html", [] },
            { 404, "GET", "/SECRET/sites/nobody/index.html", [] },
            { 404, "GET", "/SECRET/sites/rufus/", [] },
            { 404, "GET", "/SECRET/sites/rufus/notes.md", [] },
            { 404, "GET", "/SECRET/sites/rufus/../../../practice.md", [] },
            { 404, "GET", "/SECRET/sites/rufus/..%2F..%2Fpractice.md", [] },
            { 404, "GET", "/SECRET/sites/rufus/%2e%2e/%2e%2e/practice.md", [] },
            { 404, "GET", "/SECRET/sites/rufus/..%5Cpractice.md", [] },
            { 404, "GET", "/SECRET/sites/rufus//etc/passwd", [] },
            { 404, "GET", "/SECRET/sites/../practice.md", [] },
            { 404, "GET", "/SECRET/clients/../..", [] },
        };

    [Theory]
    [MemberData(nameof(Requests))]
    public void Only_what_is_meant_is_answered(int status, string method, string target, string[] headers)
    {
        var heard = door.Watch.Ask(method, Filled(target), [.. headers.Select(Filled)]);
        Assert.Equal(status, heard.Status);
        Assert.Contains("Cache-Control: no-store", heard.Head, StringComparison.Ordinal);
        Assert.Contains("X-Content-Type-Options: nosniff", heard.Head, StringComparison.Ordinal);
        Assert.Contains("Referrer-Policy: no-referrer", heard.Head, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors", heard.Head, StringComparison.Ordinal);
        Assert.DoesNotContain("Access-Control", heard.Head, StringComparison.Ordinal);
        Assert.DoesNotContain("Server:", heard.Head, StringComparison.Ordinal);
        if (status >= 400)
        {
            Assert.DoesNotContain(door.Watch.Secret, heard.Head + heard.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("Rufus", heard.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("root:", heard.Text, StringComparison.Ordinal);
        }

        if (method == "HEAD")
            Assert.Empty(heard.Body);
    }

    [Theory]
    [InlineData("")]
    [InlineData("clients/rufus")]
    public void Watchs_own_pages_allow_what_is_theirs_alone(string page)
    {
        var policy = door
            .Watch.Get(page)
            .Head.Split('\n')
            .Single(l => l.StartsWith("Content-Security-Policy: ", StringComparison.Ordinal));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy["Content-Security-Policy: ".Length..], StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_listens_but_on_one_address_of_this_machine()
    {
        Assert.Equal("127.0.0.1", door.Watch.Address.Host);
        using var other = new TcpClient();
        Assert.ThrowsAny<SocketException>(() => other.Connect("127.0.0.2", door.Watch.Address.Port));
        using var sixth = new TcpClient(AddressFamily.InterNetworkV6);
        Assert.ThrowsAny<SocketException>(() => sixth.Connect("::1", door.Watch.Address.Port));
    }

    [Fact]
    public void What_the_surroundings_say_does_not_make_it_listen_elsewhere()
    {
        using var copy = new WatchedCopy();
        Assert.NotEqual(door.Watch.Secret, copy.Watch.Secret);
        Assert.NotEqual(door.Watch.Address.Port, copy.Watch.Address.Port);
        var sockets = File.ReadLines($"/proc/{copy.Watch.Id}/net/tcp").Concat(File.ReadLines($"/proc/{copy.Watch.Id}/net/tcp6"));
        var port = copy.Watch.Address.Port.ToString("X4", System.Globalization.CultureInfo.InvariantCulture);
        Assert.All(
            sockets.Where(s => s.Contains($":{port} ", StringComparison.Ordinal) && s.Contains(" 0A ", StringComparison.Ordinal)),
            socket => Assert.Contains($"0100007F:{port}", socket, StringComparison.Ordinal)
        );
    }

    private string Filled(string text) =>
        text.Replace("SECRET", door.Watch.Secret, StringComparison.Ordinal)
            .Replace("PORT", $"{door.Watch.Address.Port}", StringComparison.Ordinal);

    /// <summary>One watch for all of them, in surroundings that would have a server listen on every address.</summary>
    public sealed class Door : IDisposable
    {
        private readonly WatchedCopy copy;

        public Door()
        {
            Environment.SetEnvironmentVariable("ASPNETCORE_URLS", "http://0.0.0.0:0");
            try
            {
                copy = new();
            }
            finally
            {
                Environment.SetEnvironmentVariable("ASPNETCORE_URLS", null);
            }
        }

        internal WatchProcess Watch => copy.Watch;

        public void Dispose() => copy.Dispose();
    }
}
