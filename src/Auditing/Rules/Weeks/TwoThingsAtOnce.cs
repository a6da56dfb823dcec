using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class TwoThingsAtOnce : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from use in training.Uses
        from week in use.Weeks
        let line = week.Line
        where line is not null && !week.IsLighter
        let before = use.Weeks.LastOrDefault(w => w.Week < week.Week && !w.IsLighter)
        where before is not null && before.Line != line
        let harder = Harder(before.Dose, week.Dose).Distinct().ToArray()
        where harder.Length > 1
        select this.Found(
            Level.Note,
            client.Id,
            week.At,
            $"Week {week.Week} of '{practice.TitleOf(use)}' makes several things harder at once: {string.Join(", ", harder)}.",
            "Change one of them and keep the others for a week, so that you know what it was if something hurts. Common "
                + "practice, with no source.",
            line.Line.Length
        );

    private static IEnumerable<string> Harder(SettledDose before, SettledDose now)
    {
        if (now.Sets > before.Sets)
            yield return "more sets";
        foreach (var (was, action) in before.Actions.Zip(now.Actions).Where(pair => pair.First.Verb == pair.Second.Verb))
        {
            if ((action.Times ?? 1) > (was.Times ?? 1))
                yield return "more times";
            if (action.Unit == was.Unit && action.Amount > was.Amount)
                yield return action.Unit == AmountUnit.Seconds ? "longer times" : "more of each";
            if (Hardest(action.Effort) > Hardest(was.Effort))
                yield return "more effort";
        }

        if (now.Load is { } load && load != before.Load)
            yield return "another load";
        if (now.Tempo is { } tempo && before.Tempo is { } slow && tempo.Seconds > slow.Seconds)
            yield return "a slower tempo";
    }

    private static int Hardest(SettledEffort? effort) =>
        effort?.Match(steady => steady.Percent, ramp => Math.Max(ramp.First, ramp.Last), felt => felt.Rating * 10) ?? 0;
}
