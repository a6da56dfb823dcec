using AngleSharp.Dom;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Where texts stand that matter, in a theme of any build: by what they say where that is enough.</summary>
internal static class Places
{
    public static readonly Place Title = Place.Of("caution title", Moves, ".cautions .caution > h4, .cautions > h3");

    public static readonly Place Body = Place.Of(
        "caution body",
        Moves,
        ".cautions .caution > p:not(.belongs), .cautions > h3 + p"
    );

    public static readonly Place Kind = Place.Of("heading of the kind", Moves, ".cautions .kind > h3, .cautions > h2");

    public static readonly Place Belongs = Place.Of("applies to", Moves, ".cautions .belongs");

    public static readonly Place Note = Place.Of(
        "who must leave it out",
        Moves,
        ".cautions .not-with h4, .cautions > h3:last-of-type + p"
    );

    public static readonly Place Told = Place.Of("condition", Moves, ".cautions .not-with .run li, .cautions > h3:last-of-type");

    public static readonly Place PainRule = Place.Of("pain rule", Moves, ".cautions .pain-rule li");

    public static readonly Place Again = Place.Of("caution beside an exercise", Session, ".again");

    public static readonly Place Cautions = Place.Of("cautions", Moves, ".cautions");

    public static readonly Place Emergency = new(
        "emergency",
        _ => true,
        spot => spot.Saying(Prose.PlainOf(spot.Plan.Emergency.Sentence))
    );

    public static readonly Place SideSaid = new(
        "side",
        path => path != PagePath.Weeks,
        spot =>
            spot.Saying(
                spot.Plan.Stances.SelectMany(s => s.Roles.Select(r => r.Sentence))
                    .Concat(spot.Plan.Exercises.SelectMany(e => e.Uses).Select(u => u.Sides))
            )
    );

    public static readonly Place Steps = new("step", Session, spot =>
        spot.All("ol > li").Where(li => li.QuerySelector("time") is not null)
    );

    public static readonly Place Doing = new(
        "instruction",
        path => Session(path) || Exercise(path),
        spot => spot.Saying(Texts(spot).SelectMany(t => t.Do.Lines()))
    );

    public static readonly Place SetUp = new(
        "set-up",
        path => Session(path) || Exercise(path),
        spot => spot.Saying(Texts(spot).SelectMany(t => t.SetUp.Lines()))
    );

    public static readonly Place Scope = new(
        "scope",
        _ => true,
        spot => spot.Saying(spot.Plan.Publisher.Scope.Lines().Append(spot.Plan.Words.Say("not-medical")))
    );

    public static readonly Place DoseSaid = new("dose of an exercise", Exercise, spot => spot.All("td"));

    public static readonly Place DoseInSession = Place.Of("dose of a session", Session, "[data-doses] td");

    public static readonly Place Totals = new("total", Session, spot =>
        spot.All("section time").Where(t => t.Closest("li") is null && t.ParentElement!.NextElementSibling is { LocalName: "ol" })
    );

    public static readonly Place Stops = new("stop signs", Home, spot => spot.Saying(spot.Plan.Cautions.Select(c => c.Title)));

    public static readonly Place Weeks = Place.Of("list of a week", Session, "section[data-weeks]");

    public static readonly Place Guide = Place.Of("guide", Session, "[data-guide]");

    public static readonly Place Panels = Place.Of("panel", Session, "[data-guide] > [data-panel]");

    public static readonly Place Cards = Place.Of("session on home", Home, "li[data-due], ul > li:has(> a)");

    public static readonly Place Articles = Place.Of("exercise in a session", Session, "article[data-about]");

    public static readonly Place GuideCalls = Place.Of("call in the guide", Session, "[data-guide] a[href^='tel:']");

    public static readonly Place Calls = new(
        "call",
        _ => true,
        spot => spot.All("a[href^='tel:']").Where(a => a.Closest("dialog") is null)
    );

    public static readonly Place Main = new("page", _ => true, spot => [spot.Of.IsOneFile ? spot.Root : Content(spot)]);

    public static readonly Place Top = new("head", _ => true, spot => [spot.Head]);

    public static readonly Place All = new("body", _ => true, spot => [spot.Document.Body!]);

    /// <summary>What a client must get whole, on whichever page.</summary>
    public static readonly Series<Place> Vital = [Title, Body, Note, PainRule, Emergency, SideSaid, Steps, Doing, Scope];

    public static bool Session(string path) => path.StartsWith("session-", StringComparison.Ordinal);

    public static bool Exercise(string path) => path.StartsWith("exercise-", StringComparison.Ordinal);

    public static bool Home(string path) => path == PagePath.Home;

    public static bool Before(string path) => path == PagePath.BeforeYouStart;

    public static bool OfWeeks(string path) => path == PagePath.Weeks;

    public static bool Any(string path) => path.Length > 0;

    /// <summary>Pages with cautions in front of what somebody does.</summary>
    public static bool Moves(string path) => Session(path) || Exercise(path) || Before(path);

    public static bool Does(string path) => Session(path) || Exercise(path);

    /// <summary>Something of the page's, by selector.</summary>
    public static Place At(string name, Func<string, bool> pages, string selector) => Place.Of(name, pages, selector);

    /// <summary>What says one of these texts of the plan.</summary>
    public static Place Says(string name, Func<string, bool> pages, Func<Spot, IEnumerable<string>> texts) =>
        new(name, pages, spot => spot.Saying(texts(spot)));

    public static IElement Content(Spot spot) => spot.Document.QuerySelector("main") ?? spot.Document.Body!;

    private static IEnumerable<ExerciseText> Texts(Spot spot) =>
        spot
            .Plan.Sessions.Where(s => s.Path == spot.Path)
            .SelectMany(s => s.Uses.Select(u => u.Text))
            .Concat(spot.Plan.Exercises.Where(e => e.Path == spot.Path).Select(e => e.Text));
}
