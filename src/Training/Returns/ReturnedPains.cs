using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>The pain of a whole log. It belongs to the person: whatever programme it was told in, it counts.</summary>
public static class ReturnedPains
{
    /// <summary>Within so many days after the first a second stop at one place asks for a clinician.</summary>
    private const int AgainWithin = 14;

    /// <summary>What was worse on a morning twice is left out for so many days.</summary>
    public const int OutFor = 7;

    /// <summary>Those of single entries, in the order of their days, with what follows from those before them.</summary>
    public static Series<ReturnedPain> Of(Series<LogEntry> log, DayRules rules)
    {
        var told = new List<ReturnedPain>();
        foreach (var pain in LogBook.Joined(log).SelectMany(e => EntryPains.Of(e, rules)))
            told.Add(pain with { Step = StepOf(pain, told.Where(t => t.Kind == pain.Kind && t.Place.Meets(pain.Place))) });
        return told.ToSeries();
    }

    /// <summary>What came back on the day of the answers or later, so that they cannot have known of it; worst first, of one kind
    /// the latest.</summary>
    public static Series<ReturnedPain> Unasked(Client client, DayRules rules) =>
        client.Log.Count == 0
            ? []
            : Of(client.Log, rules)
                .Where(p => p.Overtakes && p.Day >= client.Answered)
                .OrderBy(p => p.Kind)
                .ThenByDescending(p => p.Day)
                .ToSeries();

    /// <summary>What a clinician must look at before what loads the place is done again, and nobody has written that one did: a
    /// clearance for pain, or a restriction, dated after that day. A sign that cannot wait has a clearance of its own.</summary>
    public static Series<ReturnedPain> Unseen(Client client, DayRules rules) =>
        client.Log.Count == 0
            ? []
            : Of(client.Log, rules)
                .Where(p => p.Kind != PainKind.Now && p.Step == PainStep.Clinician && !IsSeen(client, p.Day))
                .OrderBy(p => p.Kind)
                .ThenByDescending(p => p.Day)
                .ToSeries();

    /// <summary>What was worse on a morning again, so that what loads the place is left out on that day.</summary>
    public static IEnumerable<ReturnedPain> Out(Client client, DayRules rules, DateOnly today) =>
        Of(client.Log, rules).Where(p => p.Step == PainStep.Out && today <= p.Day.AddDays(OutFor));

    private static bool IsSeen(Client client, DateOnly day) =>
        client.Clearances.Any(c => c.Condition == AlwaysAsked.PainNow && c.On > day) || client.Restrictions.Any(r => r.On > day);

    /// <summary>Of what was worse on a morning: again within 14 days is out for 7, and within 14 days after those a
    /// clinician's.</summary>
    private static PainStep StepOf(ReturnedPain pain, IEnumerable<ReturnedPain> before)
    {
        if (before.LastOrDefault() is not { } last || pain.Kind is not (PainKind.Stopped or PainKind.NextMorning))
            return pain.Step;
        var days = pain.Day.DayNumber - last.Day.DayNumber;
        if (pain.Kind == PainKind.Stopped)
            return days <= AgainWithin ? PainStep.Clinician : PainStep.First;
        return last.Step switch
        {
            PainStep.First => days <= AgainWithin ? PainStep.Out : PainStep.First,
            PainStep.Out or PainStep.Clinician => days <= OutFor + AgainWithin ? PainStep.Clinician : PainStep.First,
        };
    }
}
