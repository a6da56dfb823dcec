using System.CommandLine;
using System.Text;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary><c>gradus review FOLDER</c></summary>
internal static class ReviewCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var clients = Options.Clients();
        var format = Options.Choice(
            "--format",
            "For people (text, or html: one private page) or for other programs.",
            "text",
            "json",
            "html"
        );
        var today = Options.Today();
        var command = new Command(
            "review",
            "Shows what came back from each client: who needs you first and why, then each by name."
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
                asked.GetRequiredValue(format),
                asked.GetValue(today) ?? Clock.Today()
            )
        );
        return command;
    }

    private static int Run(string folder, string[] clients, string format, DateOnly today)
    {
        var read = CheckedPractice.Open(folder, clients, today);
        var shown = read.Wanted.Select(read.Bound).OfType<Client>().ToArray();
        if (read.Practice is { } practice)
            Say(format, practice, [.. shown.Select(c => ClientReview.Of(practice, c, read.TrainingOf(c), today))], today);
        return read.SayUnread(folder);
    }

    private static void Say(string format, Practice practice, ClientReview[] reviews, DateOnly today)
    {
        switch (format)
        {
            case "json":
                Console.Out.WriteLine(ReviewJson.Write(practice, reviews, today));
                break;
            case "html":
                // A file says what its letters are, whatever the terminal's are.
                using (var output = Console.OpenStandardOutput())
                    output.Write(Encoding.UTF8.GetBytes(ReviewHtml.Write(practice, reviews, today)));
                break;
            default:
                ReviewText.Write(Console.Out, practice, reviews);
                break;
        }
    }
}
