using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Gradus.Domain;
using Gradus.Planning;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>A button or an answer does something else than it says.</summary>
internal static class AnswerBreaks
{
    private static readonly Place Radios = InGuide("input[type=radio]");
    private static readonly Place Buttons = InGuide("button[data-act]");
    private static readonly Place Alarms = InGuide("button[data-alarm]");
    private static readonly Place Because = InGuide("[data-because]");
    private static readonly Place Versions = InGuide("[data-version]");

    public static readonly Series<Sketch> All =
    [
        At(
            "yes and no swapped in words",
            InGuide("fieldset").Where("guide", f => f.QuerySelectorAll("input[type=radio]").Length > 1),
            (_, e) =>
            {
                var texts = e.QuerySelectorAll("label").Select(l => l.ChildNodes.OfType<IText>().Last()).ToArray();
                (texts[0].Data, texts[1].Data) = (texts[1].Data, texts[0].Data);
            }
        ),
        At(
            "yes and no swapped in values",
            InGuide("fieldset").Where("guide", f => f.QuerySelectorAll("input[type=radio]").Length > 1),
            (_, e) => Swap(e.QuerySelectorAll("input[type=radio]"), "value")
        ),
        Pair("two buttons' actions swapped", Buttons, (one, other) => Swap([one, other], "data-act")),
        Pair("two buttons' words swapped", Buttons, CautionOrderBreaks.SwapInner),
        At("sign leads elsewhere", Alarms, (spot, e) => e.SetAttribute("data-act", spot.Chance.Of(["none", "some", "close"]))),
        Pair("sign counts as another", Alarms, (one, other) => Swap([one, other], "data-alarm")),
        At("answered beforehand", Radios, (_, e) => e.SetAttribute("checked", "")),
        At("place counts as another", InGuide("[data-where] option[value]:not([value=''])"), (_, e) => Shift(e, "knee", "hand")),
        At("side counts as another", InGuide("select[data-side] option[value]:not([value=''])"), (_, e) =>
            Shift(e, "left", "right")
        ),
        At(
            "pain counts as less",
            InGuide("select[data-level] option").Where("guide", o => o.TextContent is "5" or "8" or "10"),
            (_, e) => e.SetAttribute("value", "1")
        ),
        Pair("reason swapped", Because, (one, other) => Swap([one, other], "data-because")),
        At("button switched off", Buttons, (_, e) => e.SetAttribute("disabled", "")),
        At("answer under another name", Radios, (_, e) => e.SetAttribute("name", "other")),
        At("asked no more", InGuide("form[data-form]"), (_, e) => e.RemoveAttribute("data-form")),
        At(
            "pain rule's numbers for the script",
            Places.At("page", Session, "[data-pain]").With(s => s.Document.QuerySelectorAll("[data-pain]")),
            (_, e) => e.SetAttribute("data-pain", "8 10")
        ),
        At("what an exercise loads", Articles, (_, e) => e.SetAttribute("data-loads", "hand")),
        At("what an exercise loads", Versions, (_, e) => e.SetAttribute("data-loads", "")),
        At("version leads elsewhere", InGuide("a[data-take]"), (spot, e) => e.SetAttribute("href", spot.To("weeks.html"))),
        At("version of another session", Versions, (_, e) =>
            e.SetAttribute("data-version", e.GetAttribute("data-version") == "1" ? "2" : "1")
        ),
        At("unit in what is told", Guide, (_, e) => e.SetAttribute("data-seconds-other", "{n} minutes")),
        At("step's effort for the script", Steps, (_, e) => Told(e, " p[0-9.]+", " p95")),
        At("step's kind for the script", Steps, (_, e) => Told(e, "^rest ", "hold ") || Told(e, "^hold ", "rest ")),
        At("step's exercise for the script", Steps, (_, e) => Told(e, "^(\\S+) A", "$1 B") || Told(e, "^(\\S+) [B-Z]", "$1 A")),
        At("step's set for the script", Steps, (_, e) => Told(e, " s[0-9]+", " s7")),
        At("breaths for the script", Steps, (_, e) => Told(e, " b[0-9]+", " b2")),
    ];

    /// <summary>What a step tells the script, otherwise.</summary>
    internal static bool Told(IElement step, string said, string instead)
    {
        var written = step.GetAttribute(PageData.Step) ?? "";
        var other = Regex.Replace(written, said, instead, RegexOptions.CultureInvariant);
        step.SetAttribute(PageData.Step, other);
        return other != written;
    }

    private static Place InGuide(string selector) =>
        new("guide", Session, spot => spot.All("[data-guide]").SelectMany(g => g.QuerySelectorAll(selector)));

    private static Place With(this Place place, Func<Spot, IEnumerable<IElement>> find) => place with { Find = find };

    private static void Shift(IElement element, string one, string other) =>
        element.SetAttribute("value", element.GetAttribute("value") == one ? other : one);

    private static void Swap(IEnumerable<IElement> elements, string name)
    {
        var two = elements.Take(2).ToArray();
        var (one, other) = (two[0].GetAttribute(name), two[1].GetAttribute(name));
        two[0].SetAttribute(name, other ?? "");
        two[1].SetAttribute(name, one ?? "");
    }
}
