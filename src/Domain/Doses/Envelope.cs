namespace Gradus.Domain;

/// <summary>Holds a dose against the dose that its exercise allows.</summary>
public static class Envelope
{
    /// <summary>Where the dose lies outside the envelope, in the order of the line; empty where it lies inside. Totals are not
    /// compared, nor are sides and load. With other verbs, another order or other brackets there is one hard departure that says
    /// so.
    /// <para>Hard is more time, count or effort of an action, more sets, more sets of plus, another side of plus, less rest or
    /// pause, a slower tempo, fewer repetitions left; an effort left out where the exercise names one; and what cannot be
    /// compared: breaths with seconds, a felt effort with a percentage, a steady effort where the exercise has a ramp. Easy is
    /// the other way, and any other number of ramp steps, another switch, other beats of a tempo of the same length. An effort,
    /// tempo or leave that only the dose names lies inside, for the exercise leaves it open; a ramp lies inside a steady effort
    /// where both its ends do.</para></summary>
    /// <param name="written">Usually settled; of a range each end is held against the same end.</param>
    public static Series<Departure> Compare(Dose envelope, Dose written)
    {
        if (OtherWork(envelope, written) is { } other)
            return [other];
        return
        [
            .. EnvelopeNumbers.Compare(envelope.Sets, written.Sets, n => EnvelopeNumbers.Counted(n, "set", "sets")),
            .. GroupsOf(envelope, written).SelectMany(CompareRounds),
            .. envelope.Actions.Zip(written.Actions).SelectMany(pair => EnvelopeActions.Compare(pair.First, pair.Second)),
            .. EnvelopeTerms.Compare(envelope, written),
        ];
    }

    private static Departure? OtherWork(Dose envelope, Dose written)
    {
        if (!envelope.Actions.Select(a => a.Verb).SequenceEqual(written.Actions.Select(a => a.Verb)))
            return new(DepartureSide.Hard, $"{Chain(written.Actions)}, the exercise is {Chain(envelope.Actions)}");
        return
            GroupsOf(envelope, written).FirstOrDefault(g => g.Allowed is null && g.Written.Times.High > 1)
                is { Written: var group }
            ? new(DepartureSide.Hard, $"{Rounds(group.Times)} of {Chain(group.Actions)}, the exercise has no such bracket")
            : null;
    }

    private static IEnumerable<Departure> CompareRounds(GroupPair pair) =>
        pair.Allowed is null
            ? []
            : EnvelopeNumbers.Compare(
                pair.Allowed.Times,
                pair.Written.Times,
                n => $"{Rounds(n)} of {Chain(pair.Written.Actions)}",
                Rounds
            );

    /// <summary>The groups over the same actions on both sides. A group of the exercise that is written without brackets is done
    /// once.</summary>
    private static IEnumerable<GroupPair> GroupsOf(Dose envelope, Dose written)
    {
        var (allowed, own) = (Placed(envelope), Placed(written));
        foreach (var (place, group) in own)
            yield return new(allowed.GetValueOrDefault(place), group);
        foreach (var (place, group) in allowed)
        {
            if (!own.ContainsKey(place))
                yield return new(group, new DosePart.Group(new(1), group.Actions));
        }
    }

    /// <summary>The groups by their first action and their number of actions.</summary>
    private static Dictionary<(int Start, int Length), DosePart.Group> Placed(Dose dose)
    {
        var groups = new Dictionary<(int, int), DosePart.Group>();
        var start = 0;
        foreach (var part in dose.Parts)
        {
            if (part is DosePart.Group group)
                groups.Add((start, group.Actions.Count), group);
            start += part.Actions.Count;
        }

        return groups;
    }

    private static string Rounds(Count times) => EnvelopeNumbers.Counted(times, "round", "rounds");

    private static string Chain(IEnumerable<DoseAction> actions) => string.Join(" then ", actions.Select(a => a.Verb.Word()));

    private sealed record GroupPair(DosePart.Group? Allowed, DosePart.Group Written);
}
