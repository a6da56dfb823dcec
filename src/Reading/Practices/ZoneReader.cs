using Gradus.Domain;
using NodaTime;
using NodaTime.TimeZones;

namespace Gradus.Reading;

/// <summary>A time zone by its name in the IANA database, as it came with the package: the same on every machine.</summary>
internal static class ZoneReader
{
    /// <summary>Around a programme, so that its first and last hour have their offset wherever the place is.</summary>
    private const int DaysAround = 2;

    private static readonly HashSet<string> Names = TzdbDateTimeZoneSource.Default.GetIds().ToHashSet(StringComparer.Ordinal);

    /// <summary>The clocks of a zone over the days of a programme.</summary>
    /// <param name="name">One that the database has.</param>
    public static Zone Of(string name, Programme programme)
    {
        var (from, until) = (Instant(programme.Start.AddDays(-DaysAround)), Instant(programme.End.AddDays(DaysAround)));
        var offsets = DateTimeZoneProviders
            .Tzdb[name]
            .GetZoneIntervals(from, until)
            .Select(i => new ZoneOffset(
                i.HasStart && i.Start > from ? i.Start.ToDateTimeUtc() : from.ToDateTimeUtc(),
                i.WallOffset.Seconds
            ));
        return new(name, offsets.ToSeries());
    }

    public static Mention<string>? In(Fields fields)
    {
        if (fields.NeedMention("zone") is not { } zone)
            return null;
        if (Names.Contains(zone.Value))
            return zone;
        fields.Sheet.Fault(
            Faults.ValueWrong,
            zone.At,
            $"{Quote.Of(zone.Value)} is no time zone.",
            Help(zone.Value),
            zone.Value.Length
        );
        return null;
    }

    private static Instant Instant(DateOnly day) => NodaTime.Instant.FromUtc(day.Year, day.Month, day.Day, 0, 0);

    /// <summary>Who writes the place alone means the zone that is called after it.</summary>
    private static string Help(string written)
    {
        var known = Names.Order(StringComparer.Ordinal).ToArray();
        var place = known.FirstOrDefault(name =>
            string.Equals(name[(name.LastIndexOf('/') + 1)..], written.Replace(' ', '_'), StringComparison.OrdinalIgnoreCase)
        );
        return place is null
            ? Nearest.Ask(
                written,
                known,
                "Write the part of the world and the place that the zone is called after, as Europe/London."
            )
            : $"Did you mean '{place}'?";
    }
}
