using System.CommandLine;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary><c>gradus group FOLDER ID --to FILE.html</c></summary>
internal static class GroupCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var id = new Argument<string>("ID") { Description = "The group, by the name of its file under groups/." };
        var to = new Option<string>("--to")
        {
            Description = "The page to write, a file that ends in .html; it prints on one sheet of A4.",
            HelpName = "FILE.html",
            Required = true,
        };
        var today = Options.Today();
        today.Description = "The class is the next one on or after this day; the default is today.";
        var command = new Command(
            "group",
            "Makes the coach's sheet for the next class of a group: what everybody does and when, who does otherwise or must be "
                + "asked first, and room for what came of it."
        )
        {
            folder,
            id,
            to,
            today,
        };
        command.SetAction(asked =>
            Run(
                asked.GetRequiredValue(folder),
                asked.GetRequiredValue(id),
                asked.GetRequiredValue(to),
                asked.GetValue(today) ?? Clock.Today()
            )
        );
        return command;
    }

    private static int Run(string folder, string id, string to, DateOnly today)
    {
        var read = CheckedPractice.Open(folder, [], today);
        if (read.Practice is not { } practice)
            return read.SayUnread(folder);
        var path = Group.PathOf(id);
        if (!read.Folder.Has(path))
            throw new IOException(
                $"There is no group '{id}' in '{folder}'. "
                    + Nearest.Ask(id, practice.Groups.Select(g => g.Id), $"'gradus new group {id}' begins one.")
            );
        // A sheet on which somebody is missing is worse than none.
        var wrong = read.Findings.Where(f => f.Level == Level.Error && f.At.File == path).ToArray();
        foreach (var error in wrong)
            Console.Out.WriteLine(FindingText.FirstLine(error));
        if (wrong.Length > 0 || practice.Groups.FirstOrDefault(g => g.Id == id) is not { } group)
        {
            Console.Error.WriteLine($"gradus: {path} has mistakes; 'gradus audit {folder}' says which.");
            return Commands.ErrorsFound;
        }

        var day = group.NextFrom(today);
        var clients = group.Clients.Select(read.Bound).OfType<Client>().ToArray();
        var met = GroupClass.Of(group, clients, day, c => read.Ready(c.Id) is null ? null : read.TrainingOf(c));
        SingleFile.Write(
            to,
            GroupHtml.Write(
                practice,
                group,
                met,
                [.. clients.Select(c => ClientReview.Of(practice, c, read.TrainingOf(c), today))]
            )
        );
        var there = met.Members.Count(m => m.Absence is null);
        Console.Out.WriteLine(
            $"{to}: {day.DayOfWeek} {day.Iso()}, {there} of {group.Clients.Count} train, "
                + $"{met.Total.Clock()}. For the coach alone."
        );
        return Commands.Fine;
    }
}
