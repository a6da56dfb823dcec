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
        let harder = HarderDose.Of(before.Dose, week.Dose).Distinct().ToArray()
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
}
