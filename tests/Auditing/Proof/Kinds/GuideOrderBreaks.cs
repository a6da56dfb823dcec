using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>The guided session asks too late, or not at all.</summary>
internal static class GuideOrderBreaks
{
    private static readonly Place Questions = Places.At("question", Session, "[data-form=questions] fieldset");
    private static readonly Place Signs = Places.At("signs that need help", Session, "[data-guide] .flags");

    public static readonly Series<Sketch> All =
    [
        Pair("two panels swapped", Panels, CautionOrderBreaks.Swap),
        At("panel taken out", Panels, (_, e) => e.Remove()),
        At("panel twice", Panels, (_, e) => e.After(e.Clone(true))),
        At("question taken out", Questions, (_, e) => e.Remove()),
        Pair("two questions swapped", Questions, CautionOrderBreaks.Swap),
        At("signs that need help taken out", Signs, (_, e) => e.Remove()),
        At("start above the cautions", Places.At("start", Session, "[data-lead]"), (_, e) =>
            e.Closest("main")!.QuerySelector(".cautions")!.Before(e)
        ),
        At("guide twice", Guide, (_, e) => e.After(e.Clone(true))),
        At("stop button taken out", Places.At("guide", Session, "[data-act=hurts]"), (_, e) => e.Remove()),
        At("panel under another name", Panels, (spot, e) =>
        {
            var others = Panels.Find(spot).Where(o => o != e).ToList();
            e.SetAttribute("data-panel", spot.Chance.Of(others).GetAttribute("data-panel")!);
        }),
    ];
}
