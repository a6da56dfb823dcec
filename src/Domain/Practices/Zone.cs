namespace Gradus.Domain;

/// <summary>The clocks of a place, for the days of one programme.</summary>
/// <param name="Name">As the IANA database calls it: Europe/London.</param>
/// <param name="Offsets">In the order of time, the first long before the programme begins; at least one.</param>
public sealed record Zone(string Name, Series<ZoneOffset> Offsets)
{
    /// <summary>The instant at which the clocks of the place show that hour, in UTC. An hour that they skip is as much later; of
    /// an hour that comes twice it is the first.</summary>
    public DateTime ToUtc(DateOnly day, TimeOnly hour)
    {
        var local = day.ToDateTime(hour, DateTimeKind.Utc);
        for (var i = 0; i < Offsets.Count; i++)
        {
            var instant = local.AddSeconds(-Offsets[i].Seconds);
            if (i + 1 == Offsets.Count || instant < Offsets[i + 1].From)
                return instant;

            // The clocks show it after the change too, or they skip it: then what they would have shown without the change.
            if (local.AddSeconds(-Offsets[i + 1].Seconds) < Offsets[i + 1].From)
                return instant;
        }

        throw new InvalidOperationException($"'{Name}' has no clocks.");
    }
}

/// <param name="From">The instant from which it holds, in UTC.</param>
/// <param name="Seconds">How far the clocks are ahead of UTC; negative where they are behind.</param>
public sealed record ZoneOffset(DateTime From, int Seconds);
