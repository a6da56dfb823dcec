using Gradus.Domain;
using NodaTime.TimeZones;

namespace Gradus.Reading;

/// <summary>A time zone by its name in the IANA database, as it came with the package: the same on every machine.</summary>
internal static class ZoneReader
{
    private static readonly HashSet<string> Names = TzdbDateTimeZoneSource.Default.GetIds().ToHashSet(StringComparer.Ordinal);

    public static ZoneName? In(Fields fields)
    {
        if (fields.NeedMention("zone") is not { } zone)
            return null;
        fields.SourceFile.Note(zone, ValueKind.Of(Names.Order(StringComparer.Ordinal)));
        if (Names.Contains(zone.Value))
            return new(zone.Value);
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            zone.At,
            $"{Quote.Of(zone.Value)} is no time zone.",
            Help(zone.Value),
            zone.Value.Length
        );
        return null;
    }

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
