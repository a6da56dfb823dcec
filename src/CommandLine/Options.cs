using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>The options that several commands share.</summary>
internal static class Options
{
    public static Argument<string> Folder() =>
        new("FOLDER") { Description = "The practice's folder, the one that holds practice.md." };

    public static Option<string[]> Clients() =>
        new("--client")
        {
            Description = "Only this client, by the name of the folder; may be given several times.",
            HelpName = "ID",
        };

    public static Option<string?> Theme() =>
        new("--theme") { Description = "A theme of your own instead of the plain one.", HelpName = "DIR" };

    /// <summary>The day that findings are judged on. It never changes a page.</summary>
    public static Option<DateOnly?> Today() =>
        new("--today")
        {
            Description = "Judge findings as on this day; the default is today.",
            HelpName = "YYYY-MM-DD",
            CustomParser = Day,
        };

    public static Option<Share?> Part() =>
        new("--part")
        {
            Description = "Only one part of the clients, such as 2/4: several machines share the work.",
            HelpName = "K/N",
            CustomParser = Share.Read,
        };

    public static Option<string> Passphrase(string description, params string[] words) =>
        Choice("--passphrase", description, words);

    /// <summary>One or several of some words, with commas between them; the first where none is said.</summary>
    public static Option<string[]> Choices(string name, string description, params string[] words)
    {
        var option = new Option<string[]>(name)
        {
            Description = description,
            HelpName = string.Join('|', words),
            CustomParser = result => [.. result.Tokens.SelectMany(t => t.Value.Split(',')).Distinct(StringComparer.Ordinal)],
            DefaultValueFactory = _ => [words[0]],
        };
        option.Validators.Add(result =>
        {
            foreach (var said in result.Tokens.SelectMany(t => t.Value.Split(',')).Where(s => !words.Contains(s)))
                result.AddError(
                    $"'{said}' is not a value of {name}. "
                        + $"{Nearest.Ask(said, words, $"Write one of: {string.Join(", ", words)}.")}"
                );
        });
        return option;
    }

    public static Option<string> Choice(string name, string description, params string[] words)
    {
        var option = new Option<string>(name)
        {
            Description = description,
            HelpName = string.Join('|', words),
            DefaultValueFactory = _ => words[0],
        };
        option.Validators.Add(result =>
        {
            var said = result.Tokens.Count > 0 ? result.Tokens[^1].Value : words[0];
            if (!words.Contains(said))
                result.AddError(
                    $"'{said}' is not a value of {name}. "
                        + $"{Nearest.Ask(said, words, $"Write one of: {string.Join(", ", words)}.")}"
                );
        });
        return option;
    }

    private static DateOnly? Day(ArgumentResult result)
    {
        var said = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
        if (DateOnly.TryParseExact(said, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            return day;
        result.AddError($"'{said}' is no day. Write year, month and day with hyphens, as 2026-12-07.");
        return null;
    }
}
