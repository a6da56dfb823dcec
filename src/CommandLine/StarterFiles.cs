using System.Globalization;
using System.Reflection;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>The files a coach can begin with, built into this room. A word between two <c>@</c> in them stands for what is filled
/// in.</summary>
internal static class StarterFiles
{
    private const int YearsEnd = 2200;

    /// <summary>The starter files below a folder of <c>Starter</c>, each filled, in ordinal order.</summary>
    /// <param name="folder">As <c>practice</c> or <c>new/client</c>.</param>
    public static Series<StarterFile> Under(string folder, params (string Word, string Value)[] fills)
    {
        var inside = $"Starter/{folder}/";
        var room = Assembly.GetExecutingAssembly();
        return BuiltIn
            .Names(room)
            .Select(name => (Name: name, Path: name.Replace('\\', '/')))
            .Where(file => file.Path.StartsWith(inside, StringComparison.Ordinal))
            .Select(file => new StarterFile(file.Path[inside.Length..], Filled(BuiltIn.Text(room, file.Name), fills)))
            .ToSeries();
    }

    /// <summary>The text of one starter file, filled.</summary>
    public static string Text(string file, params (string Word, string Value)[] fills) =>
        Filled(BuiltIn.Text(Assembly.GetExecutingAssembly(), $"Starter/{file}"), fills);

    /// <summary>The first Monday after a day; a week later where that day is a Monday.</summary>
    /// <exception cref="IOException">The day is in the year 2200 or later.</exception>
    public static string MondayAfter(DateOnly today) =>
        today.Year < YearsEnd
            ? today.AddDays(7 - (((int)today.DayOfWeek + 6) % 7)).Iso()
            : throw new IOException(
                $"{today.Iso()} is too far away for a programme to begin. Name a day before the year {YearsEnd}."
            );

    /// <summary>What stands for days in a starter file: the Monday on which its programme begins, and the third week, which it
    /// could pause in.</summary>
    /// <exception cref="IOException">The day is in the year 2200 or later.</exception>
    public static (string Word, string Value)[] DaysAfter(DateOnly today)
    {
        var monday = MondayAfter(today);
        var third = DateOnly.ParseExact(monday, "yyyy-MM-dd", CultureInfo.InvariantCulture).AddDays(14);
        return [("monday", monday), ("pause-from", third.Iso()), ("pause-until", third.AddDays(6).Iso())];
    }

    /// <summary>"slow-heel-lift" as "Slow heel lift".</summary>
    public static string Title(string id)
    {
        var words = string.Join(' ', id.Split('-', StringSplitOptions.RemoveEmptyEntries));
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    private static string Filled(string text, (string Word, string Value)[] fills) =>
        fills.Aggregate(text, (filled, fill) => filled.Replace($"@{fill.Word}@", fill.Value, StringComparison.Ordinal));
}
