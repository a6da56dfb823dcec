using System.CommandLine;
using Gradus.Domain;
using Gradus.Figures;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary><c>gradus figure FILE|"POSE" --to x.svg</c>, <c>gradus figure FOLDER --sheet contact.html</c></summary>
internal static class FigureCommand
{
    public static Command Words()
    {
        var what = new Argument<string>("WHAT")
        {
            Description =
                "An exercise's file, a pose in quotation marks (\"half-kneeling, trunk upright\"), or the folder of a practice.",
        };
        var end = new Option<string?>("--end")
        {
            Description = "Of a pose: what is other at the end of the movement.",
            HelpName = "POSE",
        };
        var side = Options.Choice("--side", "The side that works.", "right", "left");
        var to = new Option<string?>("--to")
        {
            Description = "The drawing to write, a file that ends in .svg.",
            HelpName = "FILE.svg",
        };
        var sheet = new Option<string?>("--sheet")
        {
            Description = "Of a practice: one page with the figures of all its exercises, a file that ends in .html.",
            HelpName = "FILE.html",
        };
        var untitled = new Option<bool>("--no-titles")
        {
            Description = "Numbers instead of titles, so that somebody else can say what they see.",
        };
        var command = new Command("figure", "Draws how an exercise looks, from its pose.")
        {
            what,
            end,
            side,
            to,
            sheet,
            untitled,
        };
        command.Validators.Add(result =>
        {
            if ((result.GetValue(to) is null) == (result.GetValue(sheet) is null))
                result.AddError("Say where to: --to FILE.svg for one figure, --sheet FILE.html for those of a practice.");
            else if (result.GetValue(sheet) is not null && result.GetValue(end) is not null)
                result.AddError("'--end' belongs to a pose in quotation marks, not to a practice.");
            else if (result.GetValue(to) is not null && result.GetValue(untitled))
                result.AddError("'--no-titles' belongs to --sheet.");
        });
        command.SetAction(asked =>
        {
            var (named, letter) = (asked.GetRequiredValue(what), asked.GetValue(side) == "left" ? "L" : "R");
            return asked.GetValue(sheet) is { } page
                ? FigureSheet.Write(named, page, letter, !asked.GetValue(untitled))
                : One(named, asked.GetValue(end), letter, asked.GetValue(to) ?? "");
        });
        return command;
    }

    private static int One(string named, string? end, string letter, string to)
    {
        if (File.Exists(named))
            return end is null
                ? OfFile(named, letter, to)
                : throw new IOException("'--end' belongs to a pose in quotation marks: an exercise says its own.");
        if (Directory.Exists(named))
            throw new IOException($"'{named}' is a folder: write its figures with --sheet FILE.html.");
        if (named.EndsWith(".md", StringComparison.OrdinalIgnoreCase))
            throw new IOException($"There is no file '{named}'.");
        var (first, last) = (PoseReader.Items(named), end is null ? [] : PoseReader.Items(end));
        var written = new WrittenPose(first.Select(i => i.Text).ToSeries(), last.Select(i => i.Text).ToSeries());
        var read = Movement.Read(written, null);
        foreach (var fault in read.Faults)
        {
            var (line, items) = fault.AtEnd ? (end ?? "", last) : (named, first);
            var column = fault.Item < items.Count ? items[fault.Item].Column + fault.Column : 0;
            Console.Error.WriteLine($"gradus: {fault.Message}");
            Console.Error.WriteLine($"  | {line.ReplaceLineEndings(" ")}");
            Console.Error.WriteLine($"  | {new string(' ', column)}{new string('^', fault.Length)}");
            Console.Error.WriteLine($"    {fault.Help}");
        }

        return Put(read.Movement, named, letter, to);
    }

    private static int OfFile(string file, string letter, string to)
    {
        var folder = Path.GetDirectoryName(Path.GetDirectoryName(Path.GetFullPath(file))) ?? "";
        var id = Path.GetFileNameWithoutExtension(file);
        if (
            !File.Exists(Path.Combine(folder, "practice.md"))
            || Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(file))) != "exercises"
        )
            throw new IOException($"'{file}' is no exercise of a practice: it would stand in 'exercises', beside practice.md.");
        var findings = new Findings();
        var reading = PracticeReader.Read(SourceFolder.Open(folder), findings);
        var own = findings.InOrder().Where(f => f.At.File == $"exercises/{id}.md" && f.Level == Level.Error).ToArray();
        if (own.Length > 0)
        {
            FindingText.WriteEach(Console.Out, own.ToSeries(), new(SourceFolder.Open(folder), new(), null));
            return Commands.ErrorsFound;
        }

        var exercise = reading.Practice?.Exercises.FirstOrDefault(e => e.Id.Text == id)
            ?? throw new IOException($"'{file}' could not be read; 'gradus audit {folder}' says more.");
        if (exercise.Pose is not { } pose)
            throw new IOException($"'{file}' has no pose: write one behind the key 'pose'.");
        return Put(Movement.Read(pose, exercise.Cue).Movement, exercise.Title, letter, to);
    }

    private static int Put(Movement? movement, string title, string letter, string to)
    {
        if (movement is null)
            return Commands.ErrorsFound;
        FigureTarget.Write(to, "--to", ".svg", FigureFile.Document(movement.Figure, title, letter));
        Console.Out.WriteLine(to);
        if (!movement.Start.IsBalanced || movement.End is { IsBalanced: false })
            Console.Out.WriteLine("Nobody could stand so: the weight is not above what it rests on, and no hand holds it.");
        return Commands.Fine;
    }
}
