using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class SessionGrowsFast : ICountingRule
{
    /// <summary>Within so many weeks a session does not more than double; common practice, no source.</summary>
    private const int Span = 4;

    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        foreach (var (session, written) in training.Sessions.Zip(client.Programme.Sessions))
        {
            var full = training
                .Weeks.Where(w => !client.Programme.Lighter.Contains(w.Number))
                .SelectMany(w => w.Sessions.Where(s => s.Session == session.Number).Select(s => (w.Number, s.Seconds)))
                .ToArray();
            var found = (
                from before in full
                from now in full
                where now.Number > before.Number && now.Number - before.Number < Span
                where now.Seconds.Value > 2 * before.Seconds.Value
                select new { Before = before, Now = now }
            ).FirstOrDefault();
            if (found is null)
                continue;
            yield return this.Found(
                Level.Note,
                client.Id,
                written.At,
                $"'{written.Name}' takes {Minutes(found.Before.Seconds)} in week {found.Before.Number} and "
                    + $"{Minutes(found.Now.Seconds)} in week "
                    + $"{found.Now.Number}: more than twice as long within {Span} weeks.",
                "Let some uses begin later, or narrow their doses. Who has half an hour in the first week may not have an hour "
                    + "in the fourth (rule of thumb)."
            );
        }
    }

    private static string Minutes(Seconds seconds) =>
        string.Create(CultureInfo.InvariantCulture, $"{seconds.Value / 60m:0.#} min");
}
