using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class TwoThingsAtOnce : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from week in use.Weeks
        where !week.IsLighter
        let before = use.Weeks.LastOrDefault(w => w.Week < week.Week && !w.IsLighter)
        where before is not null
        let harder = Harder(before.Dose, week.Dose).Distinct().ToArray()
        where harder.Select(h => h.Kind).Distinct().Count() > 1
        select this.Found(
            Level.Note,
            client.Id,
            week.Line is null ? use.At : week.At,
            $"Week {week.Week} of '{practice.TitleOf(use)}' makes several things harder at once: "
                + $"{string.Join(", ", harder.Select(h => h.Words))}.",
            "Change one of them and keep the others for a week, so that you know what it was if something hurts (rule of "
                + "thumb).",
            week.Line?.Line.Length ?? use.Exercise.Id.Text.Length
        );

    /// <summary>What is harder, by kind: all amounts are one, as they are where a dose grows by itself.</summary>
    private static IEnumerable<(string Kind, string Words)> Harder(SettledDose before, SettledDose now)
    {
        if (now.Sets > before.Sets)
            yield return ("sets", "more sets");
        foreach (var (was, part) in before.Parts.Zip(now.Parts))
            if (part.Times > was.Times)
                yield return ("times", "more times");
        foreach (var (was, action) in before.Actions.Zip(now.Actions).Where(pair => pair.First.Verb == pair.Second.Verb))
        {
            if ((action.Times ?? 1) > (was.Times ?? 1))
                yield return ("times", "more times");
            if (action.Unit == was.Unit && action.Amount > was.Amount)
                yield return ("amount", action.Unit == AmountUnit.Seconds ? "longer times" : "more of each");
            if (Hardest(action.Effort) > Hardest(was.Effort))
                yield return ("effort", "more effort");
        }

        if (now.Load is { } load && load != before.Load)
            yield return ("load", "another load");
        if (now.Tempo is { } tempo && before.Tempo is { } slow && tempo.Seconds > slow.Seconds)
            yield return ("tempo", "a slower tempo");
    }

    private static int Hardest(SettledEffort? effort) =>
        effort?.Match(steady => steady.Percent, ramp => Math.Max(ramp.First, ramp.Last), felt => felt.Rating * 10) ?? 0;
}
