using AngleSharp.Dom;
using Gradus.Domain;
using Gradus.Planning;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Somebody does things in a wrong order, or too often.</summary>
internal static class StepOrderBreaks
{
    private static readonly Place Lists = new("steps", Session, s => Steps.Find(s).Select(e => e.ParentElement!).Distinct());

    private static readonly Place Headings = new("steps", Session, s =>
        Lists.Find(s).Select(l => l.ParentElement!.QuerySelector("h2, h3")).OfType<IElement>()
    );

    private static readonly Place Titles = Places.At("session", Session, "article > h3, h2:has(> a)");

    public static readonly Series<Sketch> All =
    [
        At("two steps swapped", Steps, Later),
        At("step twice", Steps, (_, e) => e.After(e.Clone(true))),
        At("step taken out", Steps, (_, e) => e.Remove()),
        At("rest taken out", Steps.Where("rest", Rests), (_, e) => e.Remove()),
        At("step in another week", Steps, ToAnotherWeek),
        Pair("weeks' headings swapped", Headings, CautionOrderBreaks.SwapInner),
        Pair("two instructions swapped", Doing, CautionOrderBreaks.SwapInner),
        Pair("instructions of two exercises swapped", SetUp, CautionOrderBreaks.SwapInner),
        Pair("two exercises' titles swapped", Titles, CautionOrderBreaks.SwapInner),
        At("list backwards", Lists, (_, e) => e.SetAttribute("reversed", "")),
        At("list begins elsewhere", Lists, (_, e) => e.SetAttribute("start", "5")),
        At("item numbered otherwise", Steps, (_, e) => e.SetAttribute("value", "9")),
        At("steps of two exercises mixed", Steps, BehindAnother),
        At("week's list gone", Lists, (_, e) => e.Remove()),
    ];

    private static bool Later(Spot spot, IElement step)
    {
        if (step.NextElementSibling is not { } next || next.TextContent == step.TextContent)
            return false;
        step.Before(next);
        return true;
    }

    private static bool ToAnotherWeek(Spot spot, IElement step)
    {
        var others = Lists.Find(spot).Where(l => l != step.ParentElement).ToList();
        if (others.Count == 0)
            return false;
        spot.Chance.Of(others).Append(step);
        return true;
    }

    private static bool BehindAnother(Spot spot, IElement step)
    {
        if (step.ParentElement!.Children.FirstOrDefault(c => Of(c) != Of(step)) is not { } other)
            return false;
        other.After(step);
        return true;
    }

    private static bool Rests(IElement step) => step.GetAttribute(PageData.Step)?.Split(' ')[0] == "rest";

    private static string? Of(IElement step) => step.GetAttribute(PageData.Step)?.Split(' ')[1];
}
