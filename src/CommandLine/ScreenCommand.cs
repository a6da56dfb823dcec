using System.CommandLine;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary><c>gradus screen FOLDER</c></summary>
internal static class ScreenCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var clients = Options.Clients();
        var format = Options.Choice("--format", "For people, or for other programs.", "text", "json");
        var today = Options.Today();
        var command = new Command(
            "screen",
            "Shows what each client may do of the library and why, and which condition matters for which exercise."
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
            var screened = shown.Select(c => (c, ScreenedToday.Of(practice, c, read.TrainingOf(c), today)));
            if (asJson)
                Console.Out.WriteLine(ScreenJson.Write(practice, screened));
            else
                ScreenText.Write(Console.Out, practice, screened);
        }

        return read.SayUnread(folder);
    }
}
