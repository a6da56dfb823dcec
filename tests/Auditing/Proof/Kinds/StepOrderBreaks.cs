using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Somebody does things in a wrong order, or too often.</summary>
internal static class StepOrderBreaks
{
    private static readonly Place Lists = new("steps", Session, s => Steps.Find(s).Select(e => e.ParentElement!).Distinct());

    public static readonly Series<Sketch> All = [At("two steps swapped", Steps, (_, e) =>
        {
            if (e.NextElementSibling is not { } next || next.TextContent == e.TextContent)
                return false;
            e.Before(next);
            return true;
        }), At("step twice", Steps, (_, e) => e.After(e.Clone(true))), At("step taken out", Steps, (_, e) => e.Remove()), At("rest taken out", Steps.Where("rest", Rests), (_, e) => e.Remove()), At("step in another week", Steps, (spot, e) =>
        {
            var others = Lists.Find(spot).Where(l => l != e.ParentElement).ToList();
            if (others.Count == 0)
                return false;
            spot.Chance.Of(others).Append(e);
            return true;
        }), Pair("weeks' headings swapped", new("steps", Session, s => Lists.Find(s).Select(l => l.ParentElement!.QuerySelector("h2, h3")).OfType<IElement>()), CautionOrderBreaks.SwapInner), Pair("two instructions swapped", Doing, CautionOrderBreaks.SwapInner), Pair("instructions of two exercises swapped", SetUp, CautionOrderBreaks.SwapInner), Pair("two exercises' titles swapped", Places.At("session", Session, "article > h3, h2:has(> a)"), CautionOrderBreaks.SwapInner), At("list backwards", Lists, (_, e) => e.SetAttribute("reversed", "")), At("list begins elsewhere", Lists, (_, e) => e.SetAttribute("start", "5")), At("item numbered otherwise", Steps, (_, e) => e.SetAttribute("value", "9")), At("steps of two exercises mixed", Steps, (spot, e) =>
        {
            var other = e.ParentElement!.Children.FirstOrDefault(c => Of(c) != Of(e));
            if (other is null)
                return false;
            other.After(e);
            return e.PreviousElementSibling == other;
        }), At("week's list gone", Lists, (_, e) => e.Remove())];

    private static bool Rests(IElement step) =>
        step.GetAttribute("data-kind") == "rest" || step.TextContent.TrimStart().StartsWith("Rest", StringComparison.Ordinal);

    private static string Of(IElement step) => step.GetAttribute("data-exercise") ?? step.TextContent.Split(',')[0];
}
