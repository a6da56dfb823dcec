using System.Text.RegularExpressions;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>A caution says something else.</summary>
internal static partial class CautionWordBreaks
{
    private static readonly (string, string)[] Weaker =
    [
        ("at once", "when it suits you"),
        ("Stop and", "You may stop and"),
        ("Stop,", "Slow down,"),
        ("Do not", "Try not to"),
        ("do not", "try not to"),
        ("see a doctor today", "see a doctor some day"),
        ("now ", "later "),
        ("soon", "in a while"),
        ("never", "seldom"),
        ("Breathe", "If you like, breathe"),
        ("should", "might"),
        ("You ", "Others "),
    ];

    private static readonly (string, string)[] Opposite =
    [
        ("Do not", "Do"),
        ("do not", "do"),
        ("Stop", "Do not stop"),
        ("stop", "go on"),
        ("Come out", "Stay in"),
        ("Call", "Never call"),
        ("call", "never call"),
        ("never", "always"),
        ("may go on", "may not go on"),
        ("less", "more"),
        ("is no", "is"),
        ("Breathe", "Hold your breath"),
        ("should", "should not"),
        ("spreads", "does not spread"),
        ("Keep", "Do not keep"),
    ];

    public static readonly Series<Sketch> All =
    [
        .. AtEach("word changed", [Title, Body], (spot, e) => spot.Say(e, text => LongWord().Replace(text, "other", 1))),
        .. AtEach("word dropped", [Title, Body], (spot, e) => spot.Say(e, text => LongWord().Replace(text, "", 1))),
        At("word doubled", Body, (spot, e) => spot.Say(e, text => LongWord().Replace(text, "$0 $0", 1))),
        At("weakened", Body, (spot, e) => spot.Say(e, Weaker)),
        .. AtEach("negated", [Body, PainRule], (spot, e) => spot.Say(e, Opposite)),
        At("not taken out", Body, (spot, e) =>
            spot.Say(e, (" not ", " "), ("Do not", "Do"), ("do not", "do"), ("never ", ""), ("cannot", "can"))
        ),
        At("number changed", PainRule, (spot, e) =>
            spot.Say(e, text => Number().Replace(text, m => m.Value == "9" ? "8" : "9", 1))
        ),
        At("sentence dropped", Body, (spot, e) => spot.Say(e, text => Sentence().Replace(text, " ", 1))),
        At("words of a condition added", Body, (spot, e) =>
            spot.Say(e, text => text.TrimEnd() + " But only if you are over 60.")
        ),
        At("applies to fewer", Belongs, (spot, e) => spot.Say(e, text => Last().Replace(text, ""))),
        At("applies to others", Belongs, (spot, e) =>
            spot.Say(e, text => text.Contains(':') ? text[..(text.IndexOf(':') + 1)] + " Something else" : text)
        ),
        At("condition changed", Told, (spot, e) => spot.Say(e, text => LongWord().Replace(text, "other", 1))),
        At("leave out becomes do", Note, (spot, e) =>
            spot.Say(e, ("Leave out with", "Do with"), ("Ask a doctor first with", "No need to ask with"))
        ),
        At("kind of sign changed", Kind, (spot, e) => spot.Say(e, _ => "Good to know")),
        At("quoted as an opinion", Body, (spot, e) => spot.Say(e, text => "Some say: " + text)),
        At("first word changed again beside the steps", Again, (spot, e) =>
            spot.Say(e, text => LongWord().Replace(text, "other", 1))
        ),
    ];

    [GeneratedRegex(@"\b\p{L}{4,}\b")]
    private static partial Regex LongWord();

    [GeneratedRegex(@"\b\d{1,2}\b")]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<=[.!?])\s+[^.!?]+[.!?]")]
    private static partial Regex Sentence();

    [GeneratedRegex(@", [^,]+$")]
    private static partial Regex Last();
}
