using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>A time is not the planned one.</summary>
internal static partial class TimeBreaks
{
    private static readonly Place Step = new("step", Session, s => Steps.Find(s).Select(e => e.QuerySelector("time")!));
    private static readonly Place Dosed = Places.At("dose", Does, "td time, h2 ~ p > time");
    private static readonly Place Weekly = Places.At("weeks", OfWeeks, "section[data-weeks] .total time, h2 + p ~ p > time");

    public static readonly Series<Sketch> All =
    [
        At("step's machine time", Step, Machine),
        At("step's words", Step, Words),
        At("step's both", Step, Both),
        At("total's machine time", Totals, Machine),
        At("total's words", Totals, Words),
        At("total's both", Totals, Both),
        At("dose's machine time", Dosed, Machine),
        At("dose's words", Dosed, Words),
        At("dose's both", Dosed, Both),
        At("length on home", Places.At("home", Home, ".lengths time"), Both),
        At("week's total", Weekly, Both),
        At("session in a week", Places.At("weeks", OfWeeks, "td time"), Both),
        At("other unit", Step, (spot, e) => spot.Say(e, (" s", " min"), ("min", "s"))),
        At("no machine time", Step, (_, e) => e.RemoveAttribute("datetime")),
        // A thousandth of a drawing is nothing that an eye sees.
        At("bar longer", Places.At("weeks", OfWeeks, "svg rect"), (_, e) =>
            e.SetAttribute("width", Enumerable.Range(0, 20).Aggregate(e.GetAttribute("width") ?? "1", (width, _) => More(width)))
        ),
        At("about dropped", Places.At("total", Any, "*:has(> time)"), (spot, e) =>
            spot.Say(e, text => text.Replace("about", "", StringComparison.Ordinal))
        ),
        Pair("times of two steps swapped", Step, CautionOrderBreaks.SwapInner),
        At("seconds of a version", Places.At("guide", Session, "[data-version]"), (_, e) =>
            e.SetAttribute("data-lengths", Number().Replace(e.GetAttribute("data-lengths")!, m => More(m.Value)))
        ),
    ];

    private static bool Machine(Spot spot, IElement time)
    {
        var written = time.GetAttribute("datetime") ?? "";
        var other = Number().Replace(written, m => More(m.Value), 1);
        time.SetAttribute("datetime", other);
        return other != written;
    }

    private static bool Words(Spot spot, IElement time) => spot.Say(time, text => Number().Replace(text, m => More(m.Value), 1));

    /// <summary>Both alike, so that one does not give the other away.</summary>
    private static bool Both(Spot spot, IElement time)
    {
        if (time.GetAttribute("datetime") is not { } machine || !machine.StartsWith("PT", StringComparison.Ordinal))
            return false;
        var seconds = int.Parse(Number().Match(machine).Value, CultureInfo.InvariantCulture) + 60;
        time.SetAttribute("datetime", $"PT{seconds.ToString(CultureInfo.InvariantCulture)}S");
        time.TextContent = spot.Plan.Words.Span(new Seconds(seconds));
        return true;
    }

    private static string More(string number) =>
        (decimal.Parse(number, CultureInfo.InvariantCulture) + 1).ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\d+")]
    private static partial Regex Number();
}
