using System.CommandLine;
using Gradus.HandingOver;

namespace Gradus.CommandLine;

/// <summary><c>gradus open FILE --to FILE.html</c></summary>
internal static class OpenCommand
{
    public static Command Words()
    {
        var file = new Argument<string>("FILE") { Description = "A locked page, which 'gradus publish --as locked' wrote." };
        var to = new Option<string>("--to")
        {
            Description = "Where the page in it goes, a file that ends in .html. It is not locked.",
            HelpName = "FILE.html",
            Required = true,
        };
        var command = new Command("open", "Asks for the passphrase of a locked page, and writes the page that is in it.")
        {
            file,
            to,
        };
        command.SetAction(asked =>
        {
            var (from, place) = (asked.GetRequiredValue(file), asked.GetRequiredValue(to));
            SingleFile.Write(place, LockedForm.Open(from, () => AskPassphrase.For("Passphrase")));
            Console.Out.WriteLine($"{place}: the page that was locked; everybody who has this file can read it.");
            return Commands.Fine;
        });
        return command;
    }
}
