using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class DayNotAvailable : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        from session in client.Programme.Sessions
        let fault = Fault(session.Days, client)
        where fault is not null
        select this.Found(
            Level.Warning,
            client.Id,
            session.At,
            $"'{session.Name}' {fault}, but {client.Name} has {Named(client.Days)}.",
            "Choose other days for the session, or add them to 'days' in client.yaml if they are there."
        );

    private static string? Fault(SessionDays days, Client client) =>
        days switch
        {
            SessionDays.On on when on.Weekdays.Where(d => !client.Days.Contains(d)).ToArray() is { Length: > 0 } missing =>
                $"is on {Named(missing)}",
            SessionDays.EveryDays every when client.Days.Count < 7 && every.Days % 7 != 0 =>
                $"comes every {(every.Days == 1 ? "day" : $"{every.Days} days")}, which falls on every day of the week in time",
            SessionDays.TimesAWeek { DayBetween: true } times when times.Times > MostWithADayBetween(client.Days) =>
                $"comes {times.Times} times a week with a day between",
            SessionDays.TimesAWeek { DayBetween: false } times when times.Times > client.Days.Count =>
                $"comes {times.Times} times a week",
            _ => null,
        };

    /// <summary>How many of those days have a day between each and the next, week after week.</summary>
    private static int MostWithADayBetween(IReadOnlyCollection<DayOfWeek> days) =>
        Enumerable
            .Range(0, 1 << 7)
            .Select(choice => Enumerable.Range(0, 7).Where(d => (choice & (1 << d)) != 0).ToArray())
            .Where(chosen => chosen.All(d => days.Contains((DayOfWeek)d) && !chosen.Contains((d + 1) % 7)))
            .Max(chosen => chosen.Length);

    private static string Named(IReadOnlyCollection<DayOfWeek> days) =>
        days.Count == 7 ? "every day"
        : days.Count == 0 ? "no day"
        : string.Join(", ", days);
}
