using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What one exercise of a session loads, on the client's own sides.</summary>
internal static class PlacesLoaded
{
    /// <summary>"ankle-rock=ankle,knee:left". A step without a side loads both; what both sides load needs no side.</summary>
    public static string Of(PlannedUse use, Series<PlannedWeeks> weeks)
    {
        Side?[] sides = [.. weeks.SelectMany(w => w.Steps).Where(s => s.Exercise == use.Exercise).Select(s => s.Side).Distinct()];
        var places = use
            .Loads.SelectMany(load => Placed(load.Split(':'), sides))
            .GroupBy(place => place.Split(':')[0], StringComparer.Ordinal)
            .Select(region => region.Distinct(StringComparer.Ordinal).Count() == 1 ? region.First() : region.Key);
        return $"{use.Exercise}={string.Join(',', places)}";
    }

    private static IEnumerable<string> Placed(string[] load, Side?[] sides) =>
        load is [var region, var which] ? sides.SelectMany(s => Sided(region, which == "other" ? s?.Other() : s)) : load;

    private static string[] Sided(string region, Side? side) =>
        side is { } one ? [$"{region}:{one.Word()}"] : [$"{region}:left", $"{region}:right"];
}
