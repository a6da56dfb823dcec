using System.CommandLine;

namespace Gradus.CommandLine;

/// <summary><c>gradus watch FOLDER</c></summary>
internal static class WatchCommand
{
    private const int MostPort = 65_535;

    public static Command Words()
    {
        var folder = Options.Folder();
        var client = new Option<string?>("--client")
        {
            Description = "Say the address of this client's page, by the name of the folder.",
            HelpName = "ID",
        };
        var theme = Options.Theme();
        var port = new Option<int>("--port")
        {
            Description = "Listen on this port of this machine; the default is one that is free.",
            HelpName = "N",
        };
        port.Validators.Add(result =>
        {
            if (!int.TryParse(result.Tokens is [.., var last] ? last.Value : "", out var number) || number is < 1 or > MostPort)
                result.AddError($"A port is a whole number from 1 to {MostPort}.");
        });
        var today = Options.Today();
        var command = new Command("watch", "Shows each client's pages in a browser while you write, with what is wrong beside.")
        {
            folder,
            client,
            theme,
            port,
            today,
        };
        command.SetAction(
            (asked, end) =>
                Run(
                    asked.GetRequiredValue(folder),
                    asked.GetValue(client),
                    asked.GetValue(theme),
                    asked.GetValue(port),
                    asked.GetValue(today),
                    end
                )
        );
        return command;
    }

    private static async Task<int> Run(
        string folder,
        string? client,
        string? themeFolder,
        int port,
        DateOnly? today,
        CancellationToken end
    )
    {
        Expect(folder, themeFolder);
        var viewers = new Viewers();
        var text = new WatchText(Console.Out, themeFolder);
        var practice = new WatchedPractice(folder, themeFolder, today, viewers);
        practice.Look(out _);
        if (client is not null)
            ExpectClient(practice.Read, client, folder);
        practice.Shown = text.Saved;
        using var checks = new CheckLoop(practice, viewers, themeFolder, text);
        await using var server = await WatchServer.StartAsync(new(practice, checks, viewers, end), port);
        text.Line($"Watching '{folder}' until Ctrl-C. Open {server.Address}{(client is null ? "" : $"clients/{client}")}");
        using var looks = new LookLoop(practice, folder, themeFolder, text, checks.Wake);
        using var ended = end.Register(checks.Wake);
        var (looking, checking) = (Long(() => looks.Run(end)), Long(() => checks.Run(end)));
        // Where one of them fails, the other would wait for it without end.
        await await Task.WhenAny(looking, checking);
        await Task.WhenAll(looking, checking);
        return Commands.Fine;
    }

    private static Task Long(Action work) =>
        Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);

    private static void Expect(string folder, string? themeFolder)
    {
        if (!Directory.Exists(folder))
            throw new DirectoryNotFoundException($"There is no folder '{folder}'.");
        if (!File.Exists(Path.Combine(folder, "practice.md")))
            throw new IOException($"'{folder}' is no practice: there is no practice.md in it.");
        if (themeFolder is not null && !Directory.Exists(themeFolder))
            throw new DirectoryNotFoundException($"There is no theme folder '{themeFolder}'.");
    }

    private static void ExpectClient(ReadState read, string client, string folder)
    {
        var known = read.Reading.Clients.Select(c => c.Text).ToArray();
        if (!known.Contains(client, StringComparer.Ordinal))
            throw new IOException(CheckedPractice.NoClient(client, known, folder));
    }
}
