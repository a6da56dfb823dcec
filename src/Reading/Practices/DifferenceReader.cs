using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a client does otherwise than a shared programme says.</summary>
internal static class DifferenceReader
{
    private static readonly string[] Kinds = ["leave-out", "instead", "change", "add"];

    /// <summary>Those that can be kept: each about a use that is there, and none about one that another is about too.</summary>
    public static Series<Difference> Read(Fields fields, SharedProgramme followed, UseReader uses)
    {
        var sessions = followed.Sessions.Concat(followed.Alternates).ToSeries();
        var kept = new List<Difference>();
        foreach (var item in fields.Groups("differences", "a difference"))
        {
            if (One(item, followed, uses) is not { } difference || !IsThere(item, difference, followed, sessions))
                continue;
            if (kept.FirstOrDefault(k => Meets(k, difference, sessions)) is { } other)
                item.SourceFile.Fault(
                    Faults.ValueWrong,
                    difference.At,
                    $"Line {other.At.Line} is about {Quote.Of(difference.Use)} already.",
                    "Keep one of the two, or say with 'in' which session each is for.",
                    difference.Use.Length
                );
            else
                kept.Add(difference);
        }

        foreach (var session in sessions.Where(s => s.Do.Count > 0 && Difference.Applied(s, kept).Do.Count == 0))
            fields.SourceFile.Fault(
                Faults.ValueWrong,
                kept.First(d => d.IsIn(session)).At,
                $"Nothing is left of {Quote.Of(session.Name)}.",
                "Write a programme of the client's own, or put something in the place of what is left out."
            );
        return kept.ToSeries();
    }

    private static Difference? One(Fields item, SharedProgramme followed, UseReader uses)
    {
        var kind = Kinds.FirstOrDefault(item.Has);
        if (kind is null)
        {
            item.SourceFile.Fault(
                Faults.KeyMissing,
                item.At,
                "Nothing says what is other.",
                $"Begin with one of: {string.Join(", ", Kinds)}."
            );
            return null;
        }

        var why = new Why(item.NeedText("because"), item.Mention("in"));
        var read = kind == "add" ? Added(item, why, uses) : Other(item, kind, why, followed, uses);
        return why.Because is null ? null : read;
    }

    /// <param name="Because">Null where it is missing, which is said.</param>
    private sealed record Why(string? Because, Mention<string>? Within)
    {
        public string? In => Within?.Value;

        public string Text => Because ?? "";
    }

    /// <summary>What is about a use of the shared programme.</summary>
    private static Difference? Other(Fields item, string kind, Why why, SharedProgramme followed, UseReader uses)
    {
        var named = item.NeedMention(kind);
        if (kind == "instead")
            return uses.Other(item, "use") is { } other && named is not null
                ? new Difference.Instead(named.Value, why.In, other.FromWeek, why.Text, named.At, other)
                : null;
        var (side, weeks) = kind == "change" ? uses.Change(item) : (null, null);
        var from = item.Whole("from-week", 1, followed.Weeks, ProgrammeReader.WeeksLimit);
        item.Done();
        if (named is null)
            return null;
        if (kind == "leave-out")
            return new Difference.LeaveOut(named.Value, why.In, from, why.Text, named.At);
        if (kind == "change" && side is null && weeks is null)
            item.SourceFile.Fault(
                Faults.KeyMissing,
                named.At,
                $"Nothing says what of {Quote.Of(named.Value)} is other.",
                "Write 'side', 'by-week', or both.",
                named.Value.Length
            );
        return new Difference.Change(named.Value, why.In, from, why.Text, named.At, side, weeks);
    }

    private static Difference.Add? Added(Fields item, Why why, UseReader uses)
    {
        var (before, after) = (item.Mention("before"), item.Mention("after"));
        var added = uses.Other(item, "add");
        if (before is not null && after is not null)
            item.SourceFile.Fault(
                Faults.ValueWrong,
                before.At,
                "It stands before one and after another.",
                "Keep one of the two.",
                before.Value.Length
            );
        if (before is null && after is null && why.In is null)
            item.SourceFile.Fault(
                Faults.KeyMissing,
                item.At,
                "Nothing says where it is added.",
                "Write 'before' or 'after' with a use, or 'in' with a session, at whose end it then stands."
            );
        var beside = before ?? after;
        return added is null
            ? null
            : new(beside?.Value ?? "", why.In, added.FromWeek, why.Text, beside?.At ?? item.At, added, before is not null);
    }

    private static bool IsThere(Fields item, Difference difference, SharedProgramme followed, Series<ProgrammeSession> sessions)
    {
        var (sheet, path) = (item.SourceFile, SharedProgramme.PathOf(followed.Id));
        if (difference.In is { } within && sessions.All(s => s.Name != within))
        {
            sheet.Fault(
                Faults.IdUnknown,
                item.Entries.First(e => e.Key == "in").Value.At,
                $"There is no session {Quote.Of(within)} in {path}.",
                Nearest.Ask(within, sessions.Select(s => s.Name), "Write the name of one of its sessions."),
                within.Length
            );
            return false;
        }

        var all = sessions.Where(difference.IsIn).SelectMany(s => s.Do).ToArray();
        var named = all.Where(u => u.Name == difference.Use).ToArray();
        if (difference.Use.Length > 0 && named.Length == 0)
        {
            var names = all.Select(u => u.Name).Distinct().ToArray();
            sheet.Fault(
                Faults.IdUnknown,
                difference.At,
                $"There is no use {Quote.Of(difference.Use)} in {(difference.In is { } session ? Quote.Of(session) : path)}.",
                Nearest.Ask(difference.Use, names, $"Its uses are: {string.Join(", ", names)}."),
                difference.Use.Length
            );
            return false;
        }

        // What the shared programme ends before it is other would be the same as if nobody had written anything.
        if (difference is Difference.Add || named.Length == 0 || named.Any(u => !(u.UntilWeek < difference.FromWeek)))
            return true;
        sheet.Fault(
            Faults.ValueWrong,
            difference.At,
            $"It holds from week {difference.FromWeek} on, and {Quote.Of(difference.Use)} ends with week "
                + $"{named.Max(u => u.UntilWeek)}.",
            "Name an earlier week, or take the difference out.",
            difference.Use.Length
        );
        return false;
    }

    /// <summary>Whether two are about the same use of the same session. Several may be added beside one.</summary>
    private static bool Meets(Difference one, Difference other, Series<ProgrammeSession> sessions) =>
        one is not Difference.Add
        && other is not Difference.Add
        && one.Use == other.Use
        && sessions.Any(s =>
            one.IsIn(s) && other.IsIn(s) && one.IsInTheWhole(s) == other.IsInTheWhole(s) && s.Do.Any(u => u.Name == one.Use)
        );
}
