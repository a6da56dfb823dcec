using System.Diagnostics;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace Gradus.Tests.CommandLine;

/// <summary>The real <c>gradus watch</c> in a process of its own, until it is ended as by Ctrl-C.</summary>
internal sealed partial class WatchProcess : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly Process process;
    private readonly StringBuilder output = new();
    private readonly StringBuilder error = new();

    private WatchProcess(string folder, string[] words)
    {
        // A test may run where Ctrl-C is ignored, and what it starts would ignore it too.
        var start = new ProcessStartInfo("env")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        foreach (
            var word in new[]
            {
                "--default-signal=INT",
                "dotnet",
                Path.Combine(AppContext.BaseDirectory, "gradus.dll"),
                "watch",
                folder,
            }.Concat(words)
        )
            start.ArgumentList.Add(word);
        process = Process.Start(start) ?? throw new InvalidOperationException("env did not start");
        process.OutputDataReceived += (_, line) => Keep(output, line.Data);
        process.ErrorDataReceived += (_, line) => Keep(error, line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    [GeneratedRegex(@"Open (?<address>http://127\.0\.0\.1:(?<port>[0-9]+)/(?<secret>[0-9a-f]{32})/)(?<rest>\S*)")]
    private static partial Regex Said();

    /// <summary>Of the first page.</summary>
    public Uri Address { get; private set; } = new("about:blank");

    /// <summary>The address that is to be opened.</summary>
    public string Opened { get; private set; } = "";

    public string Secret { get; private set; } = "";

    public int Id => process.Id;

    public string Output
    {
        get
        {
            lock (output)
                return output.ToString();
        }
    }

    public string Error
    {
        get
        {
            lock (error)
                return error.ToString();
        }
    }

    /// <summary>Returns once it listens.</summary>
    public static WatchProcess Of(string folder, params string[] words)
    {
        var watch = new WatchProcess(folder, words);
        Wait(() => watch.process.HasExited || Said().IsMatch(watch.Output), () => watch.Output + watch.Error);
        if (Said().Match(watch.Output) is not { Success: true } said)
            throw new InvalidOperationException($"It ended: {watch.Output}{watch.Error}");
        watch.Address = new(said.Groups["address"].Value);
        watch.Opened = said.Groups["address"].Value + said.Groups["rest"].Value;
        watch.Secret = said.Groups["secret"].Value;
        return watch;
    }

    /// <summary>Waits until something holds, and says what there is where it never does.</summary>
    public static void Wait(Func<bool> holds, Func<string> otherwise)
    {
        for (var waited = Stopwatch.StartNew(); !holds(); )
        {
            if (waited.Elapsed > Patience)
                throw new TimeoutException(otherwise());
            Thread.Sleep(10);
        }
    }

    /// <summary>The answer to a request that is written as it is, by letters.</summary>
    /// <param name="target">Behind the port, as <c>/secret/</c>.</param>
    /// <param name="headers">Each a line; with its own Host, where that is to be another.</param>
    public Heard Ask(string method, string target, params string[] headers)
    {
        using var line = new TcpClient(Address.Host, Address.Port);
        using var stream = line.GetStream();
        var host = headers.Any(h => h.StartsWith("Host:", StringComparison.Ordinal)) ? "" : $"Host: {Address.Authority}\r\n";
        stream.Write(
            Encoding.ASCII.GetBytes(
                $"{method} {target} HTTP/1.1\r\n{host}{string.Concat(headers.Select(h => h + "\r\n"))}Connection: close\r\n\r\n"
            )
        );
        using var all = new MemoryStream();
        stream.CopyTo(all);
        var bytes = all.ToArray();
        var end = bytes.AsSpan().IndexOf("\r\n\r\n"u8);
        var head = Encoding.ASCII.GetString(bytes, 0, end);
        return new(int.Parse(head.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture), head, bytes[(end + 4)..]);
    }

    /// <summary>A page or a part below the first page.</summary>
    public Heard Get(string path) => Ask("GET", $"/{Secret}/{path}");

    /// <summary>As Ctrl-C does; the exit status.</summary>
    public int End()
    {
        using var kill = Process.Start("kill", ["-INT", Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
        if (!process.WaitForExit(Patience))
            throw new TimeoutException("It does not end.");
        process.WaitForExit();
        return process.ExitCode;
    }

    public void Dispose()
    {
        if (!process.HasExited)
            process.Kill();
        process.WaitForExit();
        process.Dispose();
    }

    private static void Keep(StringBuilder to, string? line)
    {
        if (line is null)
            return;
        lock (to)
            to.Append(line).Append('\n');
    }
}

/// <param name="Head">Everything above the body.</param>
internal sealed record Heard(int Status, string Head, byte[] Body)
{
    public string Text => Encoding.UTF8.GetString(Body);
}
