using System.Text.Json;
using System.Text.Json.Nodes;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <param name="Drawn">Every step once, as it began.</param>
/// <param name="Waits">Where somebody was waited for.</param>
/// <param name="Over">The heading at the end.</param>
internal sealed record Played(Drawn[] Drawn, string[] Waits, string Over, string Did, string Kept, LoggedSession[] Log)
{
    /// <summary>What plays a session whole in a page of any browser.</summary>
    public static readonly string Whole = $"({File.ReadAllText(Repository.Path("tests", "Browser", "play-whole.js"))})()";

    /// <summary>A sentence for everything that is other than what the list of the session says.</summary>
    public List<string> Against(PlayedSession playing, Listed[] list)
    {
        var work = list.Count(s => s.IsWork);
        return
        [
            .. Differences.Between([.. list.Select((_, i) => Browser.Drawn.Of(list, i))], Drawn),
            .. Differences.Between([.. WaitsOf(list, playing.Week)], Waits),
            .. Differences.Between(
                [
                    "That is all for today",
                    $"You did {work} of {work} step{(work == 1 ? "" : "s")}.",
                    "Saved on this phone. Your weeks go on from it.",
                ],
                [Over, Did, Kept]
            ),
            .. Differences.Between([new LoggedSession(playing.Now[..10], playing.Week, playing.Session.Number, true)], Log),
        ];
    }

    /// <summary>Who begins, and in the first week everybody, is waited for at each exercise and side; later only at what is
    /// new.</summary>
    private static IEnumerable<string> WaitsOf(Listed[] list, int week)
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        var before = "";
        foreach (var (i, step) in list.Index().Where(s => !s.Item.IsBetween))
        {
            var isNew = met.Add(step.Exercise);
            if (isNew || (week == 1 && before != step.Exercise + step.Side))
                yield return Browser.Drawn.PlaceOf(list, i);
            before = step.Exercise + step.Side;
        }
    }
}

internal sealed record LoggedSession(string Day, int Week, int Session, bool Done);

internal static class Differences
{
    /// <summary>A sentence for each that is other than it should be, with what is other about it, and one where there are more or
    /// fewer.</summary>
    public static IEnumerable<string> Between<T>(IReadOnlyList<T> due, IReadOnlyList<T> found)
    {
        if (due.Count != found.Count)
            yield return $"{found.Count} in place of {due.Count}";
        foreach (var (i, (one, other)) in due.Zip(found).Index())
        {
            var parts = Parts(one)
                .Zip(Parts(other))
                .Where(p => p.First != p.Second)
                .Select(p => $"{p.Second} in place of {p.First}")
                .ToArray();
            if (parts.Length > 0)
                yield return $"{i + 1}: {string.Join("; ", parts)}";
        }
    }

    private static IEnumerable<string> Parts<T>(T one) =>
        JsonSerializer.SerializeToNode(one) is JsonObject whole
            ? whole.Select(p => $"{p.Key} {p.Value?.ToJsonString()}")
            : [$"{one}"];
}
