namespace Gradus.Domain;

/// <summary>What one client does otherwise than the shared programme says. It hangs on the name of a use, never on its place, and
/// holds wherever that use stands, in short and alternate sessions too.</summary>
/// <param name="Use">The name of the use; of something added, the one beside it, and empty where it comes last.</param>
/// <param name="In">The session that it is for; null for all of them.</param>
/// <param name="FromWeek">From 1; null for the whole programme.</param>
/// <param name="Because">Why, for the coach: it stands on no page.</param>
public abstract record Difference(string Use, string? In, int? FromWeek, string Because, Location At)
{
    /// <summary>It is not done.</summary>
    public sealed record LeaveOut(string Use, string? In, int? FromWeek, string Because, Location At)
        : Difference(Use, In, FromWeek, Because, At);

    /// <summary>Something else is done in its place.</summary>
    public sealed record Instead(string Use, string? In, int? FromWeek, string Because, Location At, ProgrammeUse Other)
        : Difference(Use, In, FromWeek, Because, At);

    /// <summary>It is done on another side, or with another dose.</summary>
    /// <param name="Side">Null where it stays.</param>
    /// <param name="Weeks">What holds from which week on; null where that stays.</param>
    public sealed record Change(
        string Use,
        string? In,
        int? FromWeek,
        string Because,
        Location At,
        Mention<SideTerm>? Side,
        UseWeeks? Weeks
    ) : Difference(Use, In, FromWeek, Because, At);

    /// <summary>Something is done beside it.</summary>
    /// <param name="IsBefore">Else behind it.</param>
    public sealed record Add(
        string Use,
        string? In,
        int? FromWeek,
        string Because,
        Location At,
        ProgrammeUse Added,
        bool IsBefore
    ) : Difference(Use, In, FromWeek, Because, At);

    /// <summary>Whether it is about what stands in that session, or in the one that it is taken from.</summary>
    public bool IsIn(ProgrammeSession session) => In is null || In == session.Name || IsInTheWhole(session);

    /// <summary>Whether it is about that session because it is about the one that it is taken from.</summary>
    public bool IsInTheWhole(ProgrammeSession session) => In is not null && In == session.Taken?.Of;

    /// <summary>A session as the client does it.</summary>
    /// <param name="differences">At most one of leaving out, doing something else or changing for each use of the session; of
    /// one that is taken from another, one for the use there besides, before which its own goes.</param>
    public static ProgrammeSession Applied(ProgrammeSession session, IEnumerable<Difference> differences)
    {
        var own = differences.Where(d => d.IsIn(session)).ToArray();
        return own.Length == 0 ? session : session with { Do = Placed(session, own).Select(p => p.Use).ToSeries() };
    }

    /// <summary>The uses of a session as the client does it, in order, each with what it comes of.</summary>
    /// <param name="differences">As for <see cref="Applied"/>.</param>
    public static IEnumerable<PlacedUse> Placed(ProgrammeSession session, IEnumerable<Difference> differences)
    {
        var own = differences.Where(d => d.IsIn(session)).OrderBy(d => d.IsInTheWhole(session)).ToArray();
        var added = own.OfType<Add>().ToArray();
        return session
            .Do.SelectMany(Around)
            .Concat(
                added
                    .Where(a => a.Use.Length == 0 && a.In == session.Name)
                    .Select(a => new PlacedUse(a.Added, session.Do.Count, a))
            );

        IEnumerable<PlacedUse> Around(ProgrammeUse use, int index)
        {
            var beside = added.Where(a => a.Use == use.Name).ToLookup(a => a.IsBefore);
            var other = own.FirstOrDefault(d => d is not Add && d.Use == use.Name);
            return
            [
                .. beside[true].Select(a => new PlacedUse(InRoundsOf(use, a.Added), index, a)),
                .. Done(use, other).Select(u => new PlacedUse(u, index, other)),
                .. beside[false].Select(a => new PlacedUse(InRoundsOf(use, a.Added), index, a)),
            ];
        }
    }

    private static IEnumerable<ProgrammeUse> Done(ProgrammeUse use, Difference? otherwise)
    {
        if (otherwise is null || otherwise.FromWeek > use.UntilWeek)
            return [use];
        // What is other from its first week on is other altogether.
        var week = otherwise.FromWeek is { } from && from > (use.FromWeek ?? 1) ? from : (int?)null;
        ProgrammeUse[] before = week is null ? [] : [use with { UntilWeek = week - 1 }];
        var first = week ?? use.FromWeek;
        return otherwise switch
        {
            Instead instead =>
            [
                .. before,
                InRoundsOf(use, instead.Other) with
                {
                    FromWeek = first,
                    UntilWeek = use.UntilWeek,
                    KeepWhenShort = use.KeepWhenShort || instead.Other.KeepWhenShort,
                    Side = instead.Other.Side ?? use.Side,
                },
            ],
            Change change =>
            [
                .. before,
                use with
                {
                    FromWeek = first,
                    Side = change.Side ?? use.Side,
                    ByWeek = change.Weeks?.Lines ?? use.ByWeek,
                    Versions = change.Weeks?.Versions ?? use.Versions,
                },
            ],
            _ => before,
        };
    }

    /// <summary>What is done beside a use of a round, or in its place, is done in the round.</summary>
    private static ProgrammeUse InRoundsOf(ProgrammeUse use, ProgrammeUse other) => other with { Rounds = use.Rounds };
}

/// <summary>A use that a client does, and where it stands in the session that it comes from.</summary>
/// <param name="Index">Of the use there, from 0, that it is, stands beside or is done in place of; behind the last one the number
/// of uses.</param>
/// <param name="By">What makes the client's own of it; null where it is as it is shared.</param>
public sealed record PlacedUse(ProgrammeUse Use, int Index, Difference? By);
