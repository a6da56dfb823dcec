using System.CommandLine;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary><c>gradus load FOLDER</c></summary>
internal static class LoadCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var clients = Options.Clients();
        var format = Options.Choice("--format", "For people, or for other programs.", "text", "json");
        var command = new Command("load", "Shows what each motion and side gets in each week, and where the time goes.")
        {
            folder,
            clients,
            format,
        };
        command.SetAction(asked =>
            Run(asked.GetRequiredValue(folder), asked.GetValue(clients) ?? [], asked.GetValue(format) == "json")
        );
        return command;
    }

    private static int Run(string folder, string[] clients, bool asJson)
    {
        var read = CheckedPractice.Open(folder, clients, Clock.Today());
        var shown = read.Wanted.Select(read.Ready).OfType<Client>().ToArray();
        if (asJson)
            Console.Out.WriteLine(LoadJson.Write(shown.Select(read.TrainingOf)));
        else
            foreach (var client in shown)
                LoadText.Write(Console.Out, client, read.TrainingOf(client));

        var blocked = read.Wanted.Where(id => shown.All(c => c.Id != id)).ToArray();
        if (blocked.Length == 0)
            return Commands.Fine;
        Console.Error.WriteLine(
            $"gradus: an error stands in the way of {string.Join(", ", blocked.Select(b => b.Text))}; 'gradus audit "
                + $"{folder}' says which."
        );
        return Commands.ErrorsFound;
    }
}
