namespace Gradus.Domain;

/// <summary>Whether one client may do one exercise, on every day of its use.</summary>
public static class Screening
{
    /// <summary>Every reason against that use; none where it is allowed. Answers and clearances are judged for the programme's own dates.</summary>
    public static IEnumerable<Objection> Of(Practice practice, Client client, Use use)
    {
        if (use.Weeks.Count == 0) return [];
        var notWith = use.Exercise.NotWith.Select(c => c.Value).ToHashSet();
        return use.Exercise.Contraindications
            .Select(named => (named, condition: practice.Find(named.Value)))
            .SelectMany(n => n.condition is null ? [] : Against(practice, client, use, n.condition, notWith.Contains(n.condition.Id), n.named.At));
    }

    private static IEnumerable<Objection> Against(Practice practice, Client client, Use use, Condition condition, bool forbids, Location at)
    {
        if (client.AnswerTo(condition.Id) is not { } answer) return [new Objection.NotAsked(condition, at)];
        if (answer.Reply is Reply.Unread) return [new Objection.Unread(condition, at)];
        if (answer.Reply is not Reply.Yes yes || !Concerns(yes, condition, use)) return [];
        if (forbids) return [new Objection.Forbidden(condition, answer, at)];
        var clearances = client.Clearances.Where(c => c.Condition == condition.Id).ToArray();
        if (clearances.Length == 0) return [new Objection.NotCleared(condition, answer, at)];
        var (from, until) = (client.Programme.FirstDayOf(use.Weeks[0].Week), client.Programme.LastDayOf(use.Weeks[^1].Week));
        var inForce = clearances.Where(c => c.On <= from && c.Until >= until).ToArray();
        if (inForce.Length == 0) return [new Objection.ClearanceShort(condition, clearances.MaxBy(c => c.Until) ?? clearances[0], from, until, at)];
        return inForce.SelectMany(clearance => clearance.Limits
            .Select(limit => (limit, week: use.Weeks.FirstOrDefault(w => IsBeyond(limit, w.Dose, use.Exercise, practice.Card.Settings.Dose))))
            .Where(l => l.week is not null)
            .Select(l => new Objection.BeyondLimit(condition, clearance, l.limit, l.week ?? use.Weeks[0], at)));
    }

    /// <summary>A yes for one side concerns what loads the condition's region on that side; where the exercise does not say that it loads
    /// that region, a yes for either side concerns it.</summary>
    private static bool Concerns(Reply.Yes yes, Condition condition, Use use)
    {
        if (yes.Side is not { } hurt) return true;
        var loads = use.Exercise.Loads.Where(l => l.Region == condition.Where).ToArray();
        return loads.Length == 0 || loads.Any(l => use.Sides.Any(worked => (l.Other ? worked.Other() : worked) == hurt));
    }

    private static bool IsBeyond(ClearanceLimit limit, Dose dose, Exercise exercise, DoseSettings settings) => limit switch
    {
        ClearanceLimit.EffortAtMost most => dose.Actions.Any(a => IsBeyond(a, most.Percent)),
        ClearanceLimit.HoldAtMost most => dose.Actions.Any(a => HeldFor(a, dose.Terms, settings) > most.Seconds.Value),
        ClearanceLimit.NoEndRangeTrunkBending => exercise.Properties.Contains("trunk-end-range"),
        ClearanceLimit.NotLyingOnTheFront => exercise.Position == Position.Prone,
        _ => throw new NotSupportedException(limit.GetType().Name),
    };

    /// <summary>How many seconds on end an action is held: its repetitions together where nothing pauses between them, breaths at the
    /// practice's own length. Moving, carrying and slow breathing are no holds.</summary>
    private static int HeldFor(DoseAction action, DoseTerms terms, DoseSettings settings)
    {
        var once = action switch
        {
            { Verb: Verb.Move or Verb.Carry or Verb.Breathe } => 0,
            { Amount: Amount.Breaths breaths } => breaths.Number.High * settings.Breath.Value,
            _ => action.Amount.Number.High,
        };
        return terms.Pause is { Value: > 0 } ? once : once * (action.Times?.High ?? 1);
    }

    /// <summary>A contraction whose effort nobody stated may be as hard as it likes, so a limit does not allow it.</summary>
    private static bool IsBeyond(DoseAction action, int percent) => action.Effort switch
    {
        Effort.Steady steady => steady.Percent.High > percent,
        Effort.Ramp ramp => Math.Max(ramp.First.High, ramp.Last.High) > percent,
        Effort.Felt felt => felt.Rating * 10 > percent,
        _ => action.Verb is Verb.Press or Verb.Pull or Verb.Raise,
    };
}
