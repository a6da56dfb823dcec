using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DaysTooClose : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var (settings, programme) = (practice.Card.Settings, client.Programme);
        var hard =
            from use in training.Uses
            where use.Session <= programme.Sessions.Count
            from week in use.Weeks
            where DoseProperties.HasHardContraction(week.Dose.AsDose)
            from side in week.BySide
            from date in programme.DatesOf(programme.Sessions[use.Session - 1].Days, week.Week)
            select (use, side.Side, date);
        return hard.GroupBy(h => (h.use.Exercise.Trains, h.Side))
            .Select(same => First([.. same.OrderBy(h => h.date)], settings.HardDaysApart))
            .OfType<(Use Use, Side? Side, DateOnly Date, DateOnly Next)>()
            .GroupBy(c => (c.Use, c.Date, c.Next))
            .Select(same =>
                Said(
                    client,
                    same.Key.Use,
                    Trained.Named(same.Key.Use.Exercise.Trains, same.Select(s => s.Side)),
                    same.Key.Date,
                    same.Key.Next,
                    settings.HardDaysApart
                )
            );
    }

    /// <summary>The first two days that stand too close.</summary>
    private static (Use Use, Side? Side, DateOnly Date, DateOnly Next)? First(
        (Use Use, Side? Side, DateOnly Date)[] hard,
        int apart
    )
    {
        foreach (var (before, next) in hard.Zip(hard.Skip(1)))
        {
            var days = next.Date.DayNumber - before.Date.DayNumber;
            if (days > 0 && days < apart)
                return (next.Use, next.Side, before.Date, next.Date);
        }

        return null;
    }

    private Finding Said(Client client, Use use, string what, DateOnly date, DateOnly next, int apart) =>
        this.Found(
            Level.Warning,
            client.Id,
            use.At,
            $"{what} gets hard contractions on {date.DayOfWeek} and again on {next.DayOfWeek}, in week "
                + $"{client.Programme.WeekOf(next)}; this practice keeps {apart} days from "
                + "one to the next.",
            "Move one of the sessions, or make one of them easier (rule of thumb); 'hard-days-apart' in "
                + "practice.md changes it.",
            use.Exercise.Id.Text.Length
        );
}
