using System.CommandLine;
using System.Globalization;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary><c>gradus dose "LINE"</c></summary>
internal static class DoseCommand
{
    private const int WeeksLimit = 104;

    public static Command Words()
    {
        var line = new Argument<string>("LINE")
        {
            Description = "A dose line, in quotation marks: \"3 x hold 30 s, rest 20 s, each side\".",
        };
        var weeks = new Option<int?>("--weeks")
        {
            Description = "Show how the dose grows over so many weeks, from 1 to 104.",
            HelpName = "N",
        };
        weeks.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is < 1 or > WeeksLimit)
                result.AddError($"--weeks goes from 1 to {WeeksLimit}.");
        });
        var lighter = new Option<string?>("--lighter")
        {
            Description = "Weeks that are lighter, with commas between them.",
            HelpName = "4,8",
        };
        var format = Options.Choice("--format", "For people, or for other programs.", "text", "json");
        var command = new Command("dose", "Reads one dose line and works out what it asks.") { line, weeks, lighter, format };
        command.Validators.Add(result =>
        {
            if (result.GetValue(lighter) is not { } named)
                return;
            if (WeeksIn(named) is not { } found)
                result.AddError($"--lighter takes weeks with commas between them, as 4,8; '{named}' is something else.");
            else if (found.FirstOrDefault(w => w > (result.GetValue(weeks) ?? 0)) is > 0 and var outside)
                result.AddError($"--lighter names week {outside}, which is not among those of --weeks.");
        });
        command.SetAction(asked =>
            Run(
                asked.GetRequiredValue(line),
                asked.GetValue(weeks) is { } last ? new(last, WeeksIn(asked.GetValue(lighter) ?? "") ?? []) : null,
                asked.GetValue(format) == "json"
            )
        );
        return command;
    }

    /// <summary>Null where something is no week.</summary>
    private static int[]? WeeksIn(string named)
    {
        var weeks = new List<int>();
        foreach (var word in named.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var week) || week < 1)
                return null;
            weeks.Add(week);
        }

        return [.. weeks];
    }

    private static int Run(string line, AskedWeeks? weeks, bool asJson)
    {
        var settings = DoseSettings.Default;
        switch (DoseLine.Read(line, settings))
        {
            case DoseLineResult.Understood understood when asJson:
                Console.Out.WriteLine(DoseJson.Write(understood.Dose, settings, weeks).TrimEnd());
                return Commands.Fine;
            case DoseLineResult.Understood understood:
                DoseText.Write(Console.Out, understood.Dose, settings, weeks);
                return Commands.Fine;
            case DoseLineResult.Refused refused:
                var fault = refused.Fault;
                Console.Error.WriteLine($"gradus: {fault.Message}");
                Console.Error.WriteLine($"  | {line.ReplaceLineEndings(" ")}");
                Console.Error.WriteLine($"  | {new string(' ', fault.Column)}{new string('^', Math.Max(1, fault.Length))}");
                Console.Error.WriteLine($"    {fault.Help}");
                return Commands.ErrorsFound;
            default:
                throw new NotSupportedException();
        }
    }
}
