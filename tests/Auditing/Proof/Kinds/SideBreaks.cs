using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Gradus.Domain;
using Gradus.Planning;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Left for right.</summary>
internal static partial class SideBreaks
{
    private static readonly (string, string)[] Swapped =
    [
        ("left", "right"),
        ("right", "left"),
        ("LEFT", "RIGHT"),
        ("RIGHT", "LEFT"),
        ("Left", "Right"),
        ("Right", "Left"),
    ];
    private static readonly Place Sided = Steps.Where("step", e =>
        e.GetAttribute(PageData.Step) is { } said && Side().IsMatch(said)
    );
    private static readonly Place Roles = new("before you start", Before, s =>
        s.Saying(s.Plan.Stances.SelectMany(x => x.Roles.Select(r => r.Sentence)))
    );

    public static readonly Series<Sketch> All =
    [
        At("in the words of a step", Steps, (spot, e) => spot.Say(e, Swapped)),
        At("in the side of a step", Sided, Turn),
        At("both in a step", Sided, (spot, e) => spot.Say(e, Swapped) && Turn(spot, e)),
        .. new[] { Session, Exercise }.Select(pages =>
            At("beside the title", Places.At(pages == Session ? "session" : "exercise", pages, ".side"), (spot, e) =>
                spot.Say(e, Swapped)
            )
        ),
        At(
            "on the answer",
            new("before you start", Before, s =>
                s.All("p").Where(p => s.Plan.Stances.Any(x => p.TextContent.Contains(x.Answer, StringComparison.Ordinal)))
            ),
            (spot, e) => spot.Say(e, Swapped)
        ),
        At("which arm is which", Roles, (spot, e) => spot.Say(e, Swapped)),
        .. new[] { Roles, Places.At("exercise", Exercise, ".side") }.Select(place =>
            At("front for rear", place, (spot, e) =>
                spot.Say(e, ("front", "rear"), ("rear", "front"), ("free", "weapon"), ("weapon", "free"))
            )
        ),
        At(
            "on home",
            new("home", Home, s =>
                s.All("p")
                    .Where(p =>
                        p.Closest("section, body") is not null && p.TextContent.Contains("front leg", StringComparison.Ordinal)
                    )
            ),
            (spot, e) => spot.Say(e, Swapped)
        ),
        At("side of what is loaded", Places.At("guide", Session, "[data-version]"), (_, e) =>
            Attribute(e, "data-loads", (":left", ":right"), (":right", ":left"))
        ),
        At("told by a script", Guide, (_, e) => e.SetAttribute("data-left", "right")),
        At("in all steps of a use", Sided, (spot, e) =>
        {
            var uses = Steps.Find(spot).Where(s => LetterOf(s) == LetterOf(e));
            return uses.ToArray().Where(step => spot.Say(step, Swapped) && Turn(spot, step)).ToArray().Length > 0;
        }),
    ];

    internal static bool Attribute(IElement element, string name, params (string Said, string Instead)[] pairs)
    {
        var written = element.GetAttribute(name) ?? "";
        foreach (var (said, instead) in pairs)
        {
            var other = Spot.Once(written, said, instead);
            if (other == written)
                continue;
            element.SetAttribute(name, other);
            return true;
        }

        return false;
    }

    private static string LetterOf(IElement step) => (step.GetAttribute(PageData.Step) ?? " ").Split(' ')[1];

    private static bool Turn(Spot spot, IElement step)
    {
        var written = step.GetAttribute(PageData.Step) ?? "";
        step.SetAttribute(PageData.Step, Side().Replace(written, m => m.Value == "l" ? "r" : "l", 1));
        return step.GetAttribute(PageData.Step) != written;
    }

    /// <summary>Behind the kind and the letter, before anything else.</summary>
    [GeneratedRegex("(?<=^[a-z-]+ [A-Z]+ )[lr](?= |$)", RegexOptions.CultureInvariant)]
    private static partial Regex Side();
}
