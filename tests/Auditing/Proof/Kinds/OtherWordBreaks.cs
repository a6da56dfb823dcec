using System.Text.RegularExpressions;
using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>What is not a caution says something else.</summary>
internal static partial class OtherWordBreaks
{
    internal static readonly Place GoodUntil = Says("good until", Any, s => [s.Plan.GoodUntil.Sentence]);

    public static readonly Series<Sketch> All =
    [
        Worded("instruction changed", Doing),
        Worded("set-up changed", SetUp),
        At("not taken out of an instruction", new("instruction", Does, s => Doing.Find(s).Concat(SetUp.Find(s))), (spot, e) =>
            spot.Say(e, (" not ", " "), ("Do not", "Do"), ("do not", "do"), ("without", "with"), ("Keep", "Do not keep"))
        ),
        Worded("equipment changed", Says("what you need", Does, s => s.Plan.Exercises.SelectMany(e => e.Equipment))),
        Worded("scope changed", Scope),
        Worded("good until changed", GoodUntil),
        Worded("do not start changed", Says("sides", p => Home(p) || Before(p), s => [s.Plan.Words.Say("stance-check")])),
        Worded(
            "move-on changed",
            Says(
                "conditions to move on",
                p => !Home(p),
                s =>
                    s.Plan.Programme.MoveOn.SelectMany(m => m.Conditions)
                        .Concat(s.Plan.Exercises.SelectMany(e => e.Uses).SelectMany(u => u.MoveOn))
            )
        ),
        At("answer about health changed", Places.At("before you start", Before, ".answers dd"), (spot, e) =>
            spot.Say(e, text => text.Trim() == "No" ? "Yes" : "No")
        ),
        Worded("question about health changed", Places.At("before you start", Before, ".answers dt")),
        .. new[] { DoseSaid, DoseInSession }.Select(place =>
            At("dose changed", place, (spot, e) => spot.Say(e, text => Number().Replace(text, m => m.Value + "0", 1)))
        ),
        Worded("title of an exercise changed", Says("session", Session, s => s.Plan.Exercises.Select(e => e.Title))),
        Worded("days changed", Says("home, weeks", p => Home(p) || OfWeeks(p), s => s.Plan.Sessions.Select(x => x.Days))),
        Worded("why changed", Says("exercise", Exercise, s => s.Plan.Exercises.SelectMany(e => e.Text.Why.Lines()))),
        Worded("explanation of a word changed", Places.At("terms", Any, ".terms dd")),
        Worded("letter changed", new("home", Home, s => s.Saying(AddedWordBreaks.Letter(s)))),
        Worded("step changed", Steps),
        At("effort changed", Steps, (spot, e) => spot.Say(e, text => Percent().Replace(text, "95%"))),
        Worded("stop sign of home changed", Stops),
    ];

    private static Sketch Worded(string name, Place place) =>
        At(name, place, (spot, e) => spot.Say(e, text => LongWord().Replace(text, "other", 1)));

    [GeneratedRegex(@"\b\p{L}{3,}\b")]
    private static partial Regex LongWord();

    [GeneratedRegex(@"\b\d+\b")]
    private static partial Regex Number();

    [GeneratedRegex(@"\d+%")]
    private static partial Regex Percent();
}
