using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>What belongs together is apart, and what comes first comes late.</summary>
internal static class CautionOrderBreaks
{
    private static readonly Place Block = Places.At("caution", Moves, ".cautions .caution");

    public static readonly Series<Sketch> All =
    [
        Pair("two cautions swapped", Block, Swap),
        Pair("two titles swapped", Title, SwapInner),
        Pair("two bodies swapped", Body, SwapInner),
        Pair("two lists of exercises swapped", Belongs, SwapInner),
        Pair("two conditions swapped", Told, SwapInner),
        Pair("kinds swapped", Places.At("kinds", Moves, ".cautions > .kind"), Swap),
        .. AtEach(
            "cautions behind the exercises",
            [Places.At("session", Session, ".cautions"), Places.At("exercise", Exercise, ".cautions")],
            (spot, e) => (spot.Of.IsOneFile ? spot.Root : Content(spot)).Append(e)
        ),
        .. AtEach(
            "instruction in front",
            [new("session", Session, s => Doing.Find(s)), new("exercise", Exercise, s => Doing.Find(s))],
            (spot, e) =>
            {
                var said = e.TextContent;
                var block = spot.Document.CreateElement("p");
                block.TextContent = said;
                spot.First(".cautions")!.Before(block);
            }
        ),
        At("steps in front", Places.At("session", Session, "section:has(> ol > li > time)"), (spot, e) =>
            spot.First(".cautions")!.Before(e)
        ),
        At("body before its title", Title, (_, e) =>
        {
            if (e.NextElementSibling is not { LocalName: "p" } body)
                return false;
            e.Before(body);
            return true;
        }),
        At("caution in a cell beside", Block, (spot, e) =>
            spot.Around(e, "<table><tr><td>Example</td><td>", "</td></tr></table>")
        ),
        At("pain rule backwards", Places.At("pain rule", Moves, ".pain-rule ul"), (_, e) =>
        {
            foreach (var item in e.Children.ToArray())
                e.Prepend(item);
        }),
    ];

    internal static void Swap(IElement one, IElement other)
    {
        var mark = one.Owner!.CreateElement("span");
        one.Before(mark);
        other.Before(one);
        mark.Before(other);
        mark.Remove();
    }

    internal static void SwapInner(IElement one, IElement other) =>
        (one.InnerHtml, other.InnerHtml) = (other.InnerHtml, one.InnerHtml);
}
