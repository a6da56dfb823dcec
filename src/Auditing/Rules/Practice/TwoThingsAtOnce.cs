using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class TwoThingsAtOnce : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Series<Use> uses, DateOnly today) =>
        from use in uses
        from week in use.Weeks
        let line = week.Line
        where line is not null && !week.IsLighter
        let before = use.Weeks.LastOrDefault(w => w.Week < week.Week && !w.IsLighter)
        where before is not null && before.Line != line
        let harder = Harder(before.Dose, week.Dose).Distinct().ToArray()
        where harder.Length > 1
        select new Finding(
            RuleId.Of(GetType()),
            Level.Note,
            client.Id,
            week.At,
            $"Week {week.Week} of '{use.Exercise.Title}' makes several things harder at once: {string.Join(", ", harder)}.",
            "Change one of them and keep the others for a week, so that you know what it was if something hurts. Common "
                + "practice, with no source.",
            line.Line.Length
        );

    private static IEnumerable<string> Harder(Dose before, Dose now)
    {
        if (now.Sets.Low > before.Sets.Low)
            yield return "more sets";
        foreach (var (was, action) in before.Actions.Zip(now.Actions).Where(pair => pair.First.Verb == pair.Second.Verb))
        {
            if ((action.Times?.Low ?? 1) > (was.Times?.Low ?? 1))
                yield return "more times";
            if (action.Amount.GetType() == was.Amount.GetType() && action.Amount.Number.Low > was.Amount.Number.Low)
                yield return action.Amount is Amount.Span ? "longer times" : "more of each";
            if (Hardest(action.Effort) > Hardest(was.Effort))
                yield return "more effort";
        }

        if (now.Terms.Load is { } load && load != before.Terms.Load)
            yield return "another load";
        if (now.Terms.Tempo is { } tempo && before.Terms.Tempo is { } slow && tempo.Seconds > slow.Seconds)
            yield return "a slower tempo";
    }

    private static int Hardest(Effort? effort) =>
        effort switch
        {
            Effort.Steady steady => steady.Percent.Low,
            Effort.Ramp ramp => Math.Max(ramp.First.Low, ramp.Last.Low),
            Effort.Felt felt => felt.Rating * 10,
            _ => 0,
        };
}
