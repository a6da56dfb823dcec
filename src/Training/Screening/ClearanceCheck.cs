using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Clearances held against every day and every dose of a use.</summary>
internal static class ClearanceCheck
{
    /// <summary>What stands against a use that needs a clearance for that condition; nothing where one is in force on every
    /// day.</summary>
    /// <param name="weeks">The weeks that need it.</param>
    /// <param name="need">What asks for it: the decision before training, or none where the exercise does.</param>
    /// <param name="with">What of the work asks for it, where the exercise does not name it.</param>
    public static IEnumerable<Objection> Of(
        Client client,
        Condition condition,
        Answer answer,
        Use use,
        Series<WeekDose> weeks,
        ClearanceNeed need,
        string? with,
        Aside<Location> at
    )
    {
        if (weeks.Count == 0)
            return [];
        var clearances = client.Clearances.Where(c => Knows(c, condition, client)).ToArray();
        if (clearances.Length == 0)
            return [new Objection.NotCleared(condition.Id, Aside.Of(answer), need, with, at)];
        // A sign of the log may come in the middle of a programme: what was done before it, and until the client was asked again,
        // needs no leave that nobody can give any more.
        var from =
            client.OpenSignFor(condition.Id) is not { } sign ? DateOnly.MinValue
            : client.Answered > sign.Day ? client.Answered
            : client.SignFor(condition.Id) is null ? DateOnly.MinValue
            : clearances.Min(c => c.On);
        var bare = weeks
            .Where(w =>
            {
                var isRecent = need != ClearanceNeed.None && Hardness.IsVigorous(use.Exercise, w.Dose.AsDose);
                return !client
                    .Programme.Calendar.DaysOf(w.Week)
                    .Where(day => day >= from)
                    .All(day => clearances.Any(c => c.IsInForce(day, isRecent)));
            })
            .ToArray();
        if (bare.Length > 0)
        {
            var until = client.Programme.LastDayOf(bare[^1].Week);
            return
            [
                new Objection.ClearanceShort(
                    condition.Id,
                    Aside.Of(clearances.MaxBy(c => c.Until) ?? clearances[0]),
                    Later(client.Programme.Calendar.DaysOf(bare[0].Week).First(), from),
                    until,
                    need,
                    at
                ),
            ];
        }

        return [];
    }

    /// <summary>The limits that a use goes beyond. A limit belongs to the person: it holds for every exercise in every week in
    /// which its clearance is in force, whether or not the exercise names the condition.</summary>
    public static IEnumerable<Objection> Limits(
        Client client,
        Condition condition,
        Use use,
        DoseSettings settings,
        Aside<Location> at
    ) =>
        from clearance in client.Clearances
        where clearance.Condition == condition.Id
        from limit in clearance.Limits
        let beyond = use.Weeks.FirstOrDefault(w =>
            client.Programme.Calendar.DaysOf(w.Week).Any(day => clearance.On <= day && day <= clearance.Until)
            && IsBeyond(limit, w.Dose, use.Exercise, settings)
        )
        where beyond is not null
        select new Objection.BeyondLimit(condition.Id, Aside.Of(clearance), limit, beyond, at);

    /// <summary>Whether it is of that condition, and who gave it can have known what the client said: what comes and goes is
    /// cleared on or after the day of the answers that name it, and after the day of a sign that came back.</summary>
    public static bool Knows(Clearance clearance, Condition condition, Client client) =>
        clearance.Condition == condition.Id
        && (condition.Basis is not { IsOfNow: true } || clearance.On >= client.ClearableFrom(condition.Id));

    /// <param name="isRecent">Whether only one of the last 12 months holds, as before vigorous training.</param>
    private static bool IsInForce(this Clearance clearance, DateOnly day, bool isRecent) =>
        clearance.On <= day
        && day <= clearance.Until
        && (!isRecent || day <= clearance.On.AddMonths(PreParticipation.VigorousMonths));

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;

    public static bool IsBeyond(ClearanceLimit limit, SettledDose dose, Drill exercise, DoseSettings settings) =>
        limit switch
        {
            ClearanceLimit.EffortAtMost most => Hardness.IsBeyond(dose.AsDose, most.Percent),
            ClearanceLimit.HoldAtMost most => LongestHold(dose, settings) > most.Seconds.Value,
            ClearanceLimit.NoEndRangeTrunkBending => WorkProperty.BendsTheTrunk(exercise, dose.AsDose),
            ClearanceLimit.NotLyingOnTheFront => exercise.Position == Position.Prone,
            ClearanceLimit.NotLyingOnTheBack => exercise.Position == Position.Supine,
            _ => throw new NotSupportedException(limit.GetType().Name),
        };

    /// <summary>The most seconds on end that are held: actions that follow each other without a move between them are one
    /// hold.</summary>
    private static int LongestHold(SettledDose dose, DoseSettings settings)
    {
        var (longest, now) = (0, 0);
        foreach (var action in dose.Actions)
        {
            var held = HeldFor(action, dose.Pause, settings);
            now = held > 0 ? now + held : 0;
            longest = Math.Max(longest, now);
        }

        return longest;
    }

    /// <summary>How many seconds on end an action is held: its repetitions together where nothing pauses between them, breaths at
    /// the practice's own length. Moving and slow breathing are no holds.</summary>
    private static int HeldFor(SettledAction action, Seconds? pause, DoseSettings settings)
    {
        var once = action.Verb switch
        {
            Verb.Move or Verb.Breathe => 0,

            // Hand and trunk contract for as long as it takes: 10 s for each 10 m where no time is said.
            Verb.Carry => action.Amount,
            Verb.Hold or Verb.Press or Verb.Pull or Verb.Raise => action.In(AmountUnit.Breaths) is { } breaths
                ? breaths * settings.Breath.Value
                : action.Amount,
        };
        return pause is { Value: > 0 } ? once : once * (action.Times ?? 1);
    }
}
