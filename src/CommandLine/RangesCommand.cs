using System.CommandLine;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary><c>gradus ranges FOLDER</c></summary>
internal static class RangesCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var clients = Options.Clients();
        var format = Options.Choice("--format", "For people, or for other programs.", "text", "json");
        var today = Options.Today();
        var command = new Command(
            "ranges",
            "Shows what was measured of each client, what may be said of it, what the sport asks, and what is missing."
        )
        {
            folder,
            clients,
            format,
            today,
        };
        command.SetAction(asked =>
            Run(
                asked.GetRequiredValue(folder),
                asked.GetValue(clients) ?? [],
                asked.GetValue(format) == "json",
                asked.GetValue(today) ?? Clock.Today()
            )
        );
        return command;
    }

    private static int Run(string folder, string[] clients, bool asJson, DateOnly today)
    {
        var read = CheckedPractice.Open(folder, clients, today);
        var shown = read.Wanted.Select(read.Bound).OfType<Client>().ToArray();
        if (read.Practice is { } practice)
        {
            var ranges = shown.Select(c => (c, ClientRanges.Of(practice, c, read.TrainingOf(c), today))).ToArray();
            if (asJson)
                Console.Out.WriteLine(RangesJson.Write(ranges.Select(r => r.Item2)));
            else
                RangesText.Write(Console.Out, practice, ranges);
        }

        return read.SayUnread(folder);
    }
}
