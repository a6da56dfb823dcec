using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Words are written in another direction than they are read.</summary>
internal static class TurnedBreaks
{
    private static readonly Series<Place> Turned = [Body, Steps, Emergency, SideSaid];

    public static readonly Series<Sketch> All =
    [
        .. AtEach("right to left", Turned, (_, e) => e.SetAttribute("dir", "rtl")),
        .. Inner("override element", "<bdo dir=\"rtl\">", "</bdo>"),
        .. Inner("override letter", "\u202e", "\u202c"),
        .. Inner("override letter by number", "&#x202E;", "&#x202C;"),
        .. Inner("isolated and overridden", "\u2067\u202e", "\u202c\u2069"),
        .. Inner("foreign element", "<math><mtext>", "</mtext></math>"),
    ];

    private static IEnumerable<Sketch> Inner(string name, string opens, string closes) => AtEach(name, Turned, (spot, e) =>
        {
            e.Prepend(spot.Raw(opens));
            e.Append(spot.Raw(closes));
        });
}
