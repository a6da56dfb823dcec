using System.Globalization;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>What is a client's own in a programme that others follow too, for the coach at the keyboard: a line for
/// each.</summary>
internal static class FollowedText
{
    public static void Write(TextWriter to, Client client, SharedFrom from)
    {
        var programme = client.Programme;
        to.WriteLine($"{client.Name} follows {SharedProgramme.PathOf(from.Programme.Value)}, '{programme.Title}'");
        to.WriteLine($"first day: {programme.Start.Iso()}");
        foreach (var pause in programme.Pauses)
            to.WriteLine($"pause: {pause.From.Iso()} to {pause.Until.Iso()}");
        foreach (var session in from.OwnDays)
            to.WriteLine($"days of '{session}': the client's own");
        if (from.Minutes is { } minutes)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"minutes for a session: {minutes}"));
        if (from.HasOwnLetter)
            to.WriteLine("letter: the client's own");
        foreach (var difference in from.Differences)
            to.WriteLine($"{Said(difference)}{SideOf(programme, difference)}{Where(difference)}: {difference.Because}");
        if (from.Differences.Count == 0)
            to.WriteLine("Every session is as it is shared.");
    }

    private static string Said(Difference difference) =>
        difference switch
        {
            Difference.LeaveOut => $"not done: {difference.Use}",
            Difference.Instead instead => $"instead of {difference.Use}: {instead.Other.Exercise.Value}",
            Difference.Change change => $"{difference.Use}: {Changed(change)}",
            Difference.Add { Use.Length: 0 } add => $"done too: {add.Added.Exercise.Value}, last",
            Difference.Add add => $"done too: {add.Added.Exercise.Value}, {(add.IsBefore ? "before" : "after")} {difference.Use}",
            _ => throw new NotSupportedException(difference.GetType().Name),
        };

    private static string Changed(Difference.Change change)
    {
        string[] side = change.Side is { } said ? [$"side {said.Value.Written}"] : [];
        var (lines, versions) = change.Weeks ?? UseWeeks.None;
        var weeks = lines
            .Select(l => (l.Week, Said: l.Dose.Line))
            .Concat(versions.Select(v => (v.Week, Said: v.Version == ExerciseVersion.Easier ? "easier" : "harder")))
            .OrderBy(w => w.Week);
        return string.Join(
            ", ",
            side.Concat(weeks.Select(w => string.Create(CultureInfo.InvariantCulture, $"week {w.Week} {w.Said}")))
        );
    }

    /// <summary>What takes the place of a use has its side, where it names none.</summary>
    private static string SideOf(Programme programme, Difference difference) =>
        difference is Difference.Instead { Other: { Side: null } other }
        && programme.AllSessions.SelectMany(s => s.Do).FirstOrDefault(u => u.Exercise == other.Exercise)?.Side is { } side
            ? $", side {side.Value.Written} as there"
            : "";

    private static string Where(Difference difference)
    {
        var within = difference.In is { } session ? $", in '{session}'" : "";
        var until = difference switch
        {
            Difference.Instead instead => instead.Other.UntilWeek,
            Difference.Add add => add.Added.UntilWeek,
            _ => null,
        };
        return within
            + (difference.FromWeek is { } from ? string.Create(CultureInfo.InvariantCulture, $", from week {from}") : "")
            + (until is { } last ? string.Create(CultureInfo.InvariantCulture, $", until week {last}") : "");
    }
}
