using System.CommandLine;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.CommandLine;

/// <summary><c>gradus begin FOLDER</c></summary>
internal static class BeginCommand
{
    public static Command Words()
    {
        var folder = new Argument<string>("FOLDER") { Description = "A folder that is not there yet, or is empty." };
        var today = Options.Today();
        today.Description = "Let the invented client begin on the Monday after this day; the default is today.";
        var command = new Command("begin", "Writes a small practice that can be published at once, with every key explained.")
        {
            folder,
            today,
        };
        command.SetAction(asked => Run(asked.GetRequiredValue(folder), asked.GetValue(today) ?? Clock.Today()));
        return command;
    }

    private static int Run(string folder, DateOnly today)
    {
        FreshFiles.WriteFolder(
            folder,
            StarterFiles
                .Under("practice", [("today", today.Iso()), .. StarterFiles.DaysAfter(today)])
                .Select(file => EditorSchemas.Named(file))
                .Concat(EditorSchemas.Files())
                .ToSeries()
        );
        var site = Path.Combine(Above(folder), "site");
        Console.Out.WriteLine("Created a practice with five exercises and one invented client. It can be published as it is.");
        Console.Out.WriteLine($"Write who you are, and what to do in an emergency, in {Path.Combine(folder, "practice.md")}.");
        Console.Out.WriteLine($"Make the client's pages:  gradus publish {OneWord(folder)} --to {OneWord(site)}");
        Console.Out.WriteLine(
            $"Open {Path.Combine(site, "perrin", PagePath.Home)}. Then add a client of your own:  gradus new client ID "
                + $"--in {OneWord(folder)}"
        );
        return Commands.Fine;
    }

    /// <summary>The folder that a folder lies in, said as the coach said it.</summary>
    private static string Above(string folder)
    {
        var name = Path.TrimEndingDirectorySeparator(folder);
        return Path.GetFileName(name) is "." or ".."
            ? Path.Combine(name == "." ? "" : name, "..")
            : Path.GetDirectoryName(name) ?? name;
    }

    /// <summary>A path as one word of a command line.</summary>
    private static string OneWord(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;
}
