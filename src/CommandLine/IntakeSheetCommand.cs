using System.CommandLine;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary><c>gradus intake-sheet FOLDER --to FILE.html</c></summary>
internal static class IntakeSheetCommand
{
    /// <summary>What the questions and the words around them come from, beside the exercises.</summary>
    private static bool IsNeeded(string file, Practice? practice) =>
        file is "practice.md" or Condition.File || (practice is not null && file == $"words/{practice.Card.Language}.yaml");

    private const string TheTheme = "the theme stands in the way of the sheet.";

    public static Command Words()
    {
        var folder = Options.Folder();
        var to = new Option<string>("--to")
        {
            Description = "The page to write, a file that ends in .html.",
            HelpName = "FILE.html",
            Required = true,
        };
        var theme = Options.Theme();
        var command = new Command(
            "intake-sheet",
            "Makes one page with the questions about health that the practice needs answered, to be filled in on screen "
                + "or on paper."
        )
        {
            folder,
            to,
            theme,
        };
        command.SetAction(asked => Run(asked.GetRequiredValue(folder), asked.GetRequiredValue(to), asked.GetValue(theme)));
        return command;
    }

    private static int Run(string folder, string to, string? themeFolder)
    {
        var theme = themeFolder is null ? ThemeFolder.Plain() : ThemeFolder.Open(themeFolder);
        var read = CheckedPractice.Open(folder, [], Clock.Today());
        var unread = read.Findings.InOrder().Where(f => f.Level == Level.Error && Faults.All.Contains(f.Rule)).ToSeries();
        if (read.Practice is not { } practice || unread.Any(f => IsNeeded(f.At.File, read.Practice)))
            return InTheWay(
                unread.Where(f => IsNeeded(f.At.File, read.Practice)),
                $"an error stands in the way of the sheet; 'gradus audit {folder}' says more."
            );
        var language = practice.Card.Language;
        if (practice.Words.In(language) is not { } words)
            throw new IOException(
                $"There are no words for a sheet in '{language}', the language of practice.md. 'gradus new words "
                    + $"{language}' writes words/{language}.yaml to fill in."
            );
        var sheet = IntakeSheet.Of(practice.Card, words, Screening.Asked(practice));
        var broken = new Findings();
        if (IntakeSheetRenderer.Render(sheet, theme, broken) is not { } page)
            return InTheWay(broken, TheTheme);
        broken.AddRange(RuleBook.Audit(sheet, page, theme.Seen));
        if (broken.Count > 0)
            return InTheWay(broken.InOrder(), TheTheme);
        SingleFile.Write(to, page);
        Console.Out.WriteLine($"{to}: {sheet.Questions.Count} questions");
        var exercises = unread.Where(f => f.At.File.StartsWith("exercises/", StringComparison.Ordinal)).ToArray();
        return exercises.Length == 0
            ? Commands.Fine
            : InTheWay(
                exercises,
                $"a question may be missing, because an exercise could not be read; 'gradus audit {folder}' says more."
            );
    }

    private static int InTheWay(IEnumerable<Finding> errors, string sentence)
    {
        foreach (var error in errors)
            Console.Out.WriteLine(FindingText.FirstLine(error));
        Console.Error.WriteLine($"gradus: {sentence}");
        return Commands.ErrorsFound;
    }
}
