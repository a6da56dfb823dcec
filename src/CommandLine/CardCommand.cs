using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary><c>gradus card FOLDER --client ID --to FILE.html</c></summary>
internal static class CardCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var client = new Option<string>("--client")
        {
            Description = "Whose card it is, by the name of the folder.",
            HelpName = "ID",
            Required = true,
        };
        var to = new Option<string>("--to")
        {
            Description = "The page to write, a file that ends in .html; it prints on A6.",
            HelpName = "FILE.html",
            Required = true,
        };
        var command = new Command(
            "card",
            "Makes a card for the bag: the link of a client's pages to scan, until when they are good, and whom to call."
        )
        {
            folder,
            client,
            to,
        };
        command.SetAction(asked =>
            Run(asked.GetRequiredValue(folder), asked.GetRequiredValue(client), asked.GetRequiredValue(to))
        );
        return command;
    }

    private static int Run(string folder, string asked, string to)
    {
        var today = Clock.Today();
        var read = CheckedPractice.Open(folder, [asked], today);
        var id = new ClientId(asked);
        if (read.Bound(id) is { Link: null })
            throw new IOException(
                $"{asked} has no link yet. 'gradus publish {folder} --client {asked} --to DIR --as-link BASE' gives one."
            );
        if (read.StoppedOn(id) is { } stopped)
            throw new IOException($"{asked} stopped on {stopped.Iso()}: there are no pages to lead to.");
        if (read.Ready(id) is not { Link: { } link } client)
        {
            Console.Error.WriteLine($"gradus: an error stands in the way of {asked}; 'gradus audit {folder}' says more.");
            return Commands.ErrorsFound;
        }

        SingleFile.Write(to, CardPage.Of(read.PlanOf(client), link.Address));
        Console.Out.WriteLine($"{to}: a card with the link of {asked}. Whoever has it can read the pages.");
        return Commands.Fine;
    }
}
