using Gradus.Domain;
using NodaTime;

namespace Gradus.Trainings;

/// <summary>The clocks of a place, by the IANA database that is built into NodaTime: the same on every machine.</summary>
internal static class Clocks
{
    /// <summary>The instant at which the clocks of the place show that hour, in UTC. An hour that they skip is as much later; of
    /// an hour that comes twice it is the first.</summary>
    public static DateTime ToUtc(this ZoneName zone, DateOnly day, TimeOnly hour)
    {
        var local = LocalDateTime.FromDateTime(day.ToDateTime(hour));
        return DateTimeZoneProviders.Tzdb[zone.Text].AtLeniently(local).ToDateTimeUtc();
    }
}
