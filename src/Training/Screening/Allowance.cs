using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>Whether a client may do an exercise of the library.</summary>
public enum Verdict
{
    Allowed,

    /// <summary>Only on one side, only within a limit, or only as long as a clearance holds.</summary>
    Limited,

    Forbidden,
}

/// <summary>What a client may do of one exercise, with its own dose through the whole programme.</summary>
/// <param name="Reasons">Why it is limited or forbidden; empty where it is allowed.</param>
/// <param name="Tried">What was judged: one use, or one for each side.</param>
public sealed record Allowance(Exercise Exercise, Verdict Verdict, Series<AllowanceReason> Reasons, Series<Use> Tried)
{
    /// <summary>Every exercise of the library whose dose can be understood, by id.</summary>
    public static Series<Allowance> Of(Practice practice, Client client)
    {
        var trial = new TrialUse(practice, client);
        return practice.Exercises.Where(e => e.Dose.Dose is not null).Select(e => Of(practice, client, trial, e)).ToSeries();
    }

    /// <summary>One side after the other, where the exercise is done on one side at a time: what is forbidden on one may be
    /// allowed on the other.</summary>
    private static Allowance Of(Practice practice, Client client, TrialUse trial, Exercise exercise)
    {
        Side?[] sides =
            exercise.Trains.IsPaired && exercise.Dose.Dose?.Terms.Side is not (null or SideTerm.Both)
                ? [Side.Left, Side.Right]
                : [null];
        var tried = sides
            .Select(side => (Side: side, Use: trial.Whole(exercise, side)))
            .Select(t => (t.Side, t.Use, t.Use.Against))
            .ToArray();
        var forbidden = tried.Where(t => !t.Against.All(IsOnlyOfSome(t.Use))).ToArray();
        var reasons = tried
            .SelectMany(t => t.Against.Select(a => new AllowanceReason(t.Side, a.Condition, a, null)))
            .Concat(
                tried.SelectMany(t =>
                    Resting(practice, client, t.Use, t.Against)
                        .Select(r => new AllowanceReason(t.Side, r.Condition, null, r.Clearance))
                )
            )
            .ToArray();
        var verdict =
            forbidden.Length == tried.Length ? Verdict.Forbidden
            : reasons.Length > 0 ? Verdict.Limited
            : Verdict.Allowed;
        return new(exercise, verdict, OnBothSidesOnce(reasons, sides.Length).ToSeries(), tried.Select(t => t.Use).ToSeries());
    }

    /// <summary>A limit that some week of the dose, but not the first, goes beyond leaves the exercise to be done with less; work
    /// that is too hard for the first weeks leaves it for later.</summary>
    private static Func<Objection, bool> IsOnlyOfSome(Use use) =>
        objection =>
            objection is Objection.TooEarly
            || (objection is Objection.BeyondLimit beyond && beyond.Week.Week > use.Weeks[0].Week);

    /// <summary>The clearances in whose shelter it is done.</summary>
    private static IEnumerable<(ConditionId Condition, Clearance Clearance)> Resting(
        Practice practice,
        Client client,
        Use use,
        Series<Objection> against
    ) =>
        practice
            .Conditions.Where(c => Screening.RestsOnClearance(practice, client, use, c) && against.All(a => a.Condition != c.Id))
            .SelectMany(c =>
                client.Clearances.Where(clearance => clearance.Condition == c.Id).Select(clearance => (c.Id, clearance))
            );

    /// <summary>What is true of both sides is said once, without a side.</summary>
    private static IEnumerable<AllowanceReason> OnBothSidesOnce(AllowanceReason[] reasons, int sides) =>
        reasons
            .GroupBy(r => r.Key)
            .SelectMany(same =>
                sides == 2 && same.Select(r => r.Side).Distinct().Count() == 2
                    ? [same.First() with { Side = null }]
                    : same.AsEnumerable()
            );
}

/// <summary>Why an exercise is not simply allowed.</summary>
/// <param name="Side">Where that is true of one side only.</param>
/// <param name="Against">What stands against it; null where a clearance lets it be done.</param>
/// <param name="Cleared">The clearance that it rests on; null where something stands against it.</param>
public sealed record AllowanceReason(Side? Side, ConditionId Condition, Objection? Against, Clearance? Cleared)
{
    internal object Key =>
        Against switch
        {
            null => Cleared as object ?? this,
            Objection.BeyondLimit beyond => (beyond.Condition, beyond.Limit, beyond.Clearance.Value.At),
            var other => (other.GetType(), other.Condition, (other as Objection.Painful)?.Pain),
        };
}
