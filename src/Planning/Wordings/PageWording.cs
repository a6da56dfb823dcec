using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what each page says.</summary>
public static class PageWording
{
    /// <summary>What each page says whole, head and foot too, by its path: where it is a file of its own, and where it stands in
    /// one file with all others.</summary>
    public static IReadOnlyDictionary<string, (Wording Apart, Wording InOne)> Of(Plan plan)
    {
        Series<Wording> before = [.. Head(plan), Past(plan)];
        Series<Wording> behind = [Back(plan), .. Foot(plan)];
        var all = new Dictionary<string, (Wording, Wording)>(StringComparer.Ordinal);
        Add(PagePath.Home, HomeWording.Of(plan));
        Add(PagePath.BeforeYouStart, BeforeWording.Of(plan));
        Add(PagePath.Weeks, WeeksWording.Of(plan));
        if (plan.Progress is { } progress)
            Add(PagePath.Progress, ProgressWording.Of(progress, plan.Words));
        foreach (var session in plan.Sessions)
            Add(session.Path, SessionWording.Of(plan, session));
        foreach (var exercise in plan.Exercises)
        {
            var (apart, inOne) = ExerciseWording.Of(plan, exercise);
            all[exercise.Path] = (Whole(apart), Whole(inOne));
        }

        return all;

        void Add(string path, Wording content)
        {
            var whole = Whole(content);
            all[path] = (whole, whole);
        }

        Wording Whole(Wording content) => AnyOrder([.. before, content, .. behind]);
    }

    /// <summary>What may stand in its title; a page that holds all others has that of the whole. Null where the plan has no such
    /// page.</summary>
    public static Wording? Title(Plan plan, string path) =>
        NameOf(plan, path) is { Length: > 0 } name
            ? AnyOrder(May(name), May(plan.Words.Say("site-of", ("name", plan.ClientName))), May(plan.Publisher.Practice))
            : null;

    private static string NameOf(Plan plan, string path) =>
        path switch
        {
            PagePath.Home => plan.Programme.Title,
            PagePath.BeforeYouStart => plan.Words.Say("before-you-start"),
            PagePath.Weeks => plan.Words.Say("your-weeks"),
            PagePath.Progress => plan.Words.Say("progress"),
            _ => plan.Sessions.FirstOrDefault(s => s.Path == path)?.Name
                ?? plan.Exercises.FirstOrDefault(e => e.Path == path)?.Title
                ?? "",
        };

    /// <summary>What parts of a page may be called for somebody who hears it; any other word of the catalogue could say something
    /// else of them.</summary>
    private static readonly Series<string> PartNames =
    [
        "pages",
        "today",
        "before-you-start",
        "your-weeks",
        "progress",
        "which-side",
        "watch-for",
        "captions",
        "guide",
        "guide-resume",
        "guide-today",
        "guide-questions",
        "guide-not-today",
        "guide-other",
        "guide-skip-why",
        "guide-ready",
        "guide-seconds-left",
        "guide-progress",
        "guide-stopped",
        "guide-over",
    ];

    /// <summary>What may stand where only somebody who hears the page gets it: the names of parts, and what pictures
    /// show.</summary>
    public static IReadOnlySet<string> Labels(Plan plan)
    {
        var words = plan.Words;
        return PartNames
            .Select(key => words.Say(key))
            .Concat(plan.Sessions.SelectMany(s => s.Weeks.Select(w => ShareWords.Of(s, w, words))))
            .Concat(plan.Progress?.Pictures.Select(p => p.Sentence) ?? [])
            .Concat(plan.Sessions.Select(s => s.Name))
            .Concat(plan.Exercises.Select(e => e.Title))
            .Concat(Pictured(plan))
            .Append(plan.Programme.Title)
            .Append(words.Say("guide-alarm", ("call", plan.Emergency.Call)))
            .Select(Spacing.Collapse)
            .ToHashSet(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Pictured(Plan plan) =>
        LinkNames
            .Written(plan)
            .Select(i =>
                i switch
                {
                    Inline.Picture picture => picture.Shows,
                    Inline.Clip clip => clip.Shows,
                    _ => "",
                }
            );

    private static Series<Wording> Head(Plan plan)
    {
        var words = plan.Words;
        return
        [
            May(words.Say("skip")),
            May(words.Say("site-of", ("name", plan.ClientName))),
            May(words.Say("stop-signs-link")),
            May(words.Say("home")),
            Order(
                May(words.Say("home")),
                May(words.Say("before-you-start")),
                May(words.Say("your-weeks")),
                plan.Progress is null ? Order() : May(words.Say("progress"))
            ),
        ];
    }

    private static Wording Past(Plan plan) =>
        May(plan.GoodUntil.Past, PageMark.Of((PageData.GoodUntil, plan.GoodUntil.Day.Iso())));

    /// <summary>What is new must stand on home; on the page that it touches a theme may say it again.</summary>
    internal static Wording News(Plan plan, string path)
    {
        if (plan.News is not { } news || news.On(path).ToArray() is not { Length: > 0 } lines)
            return Order();
        return path == PagePath.Home
            ? Order(lines.Prepend(news.Heading).Select(l => Must(l)))
            : WholeOrNot(lines.Prepend(news.Heading).Select(l => May(l)));
    }

    private static Wording Back(Plan plan) => May(plan.Words.Say("home"));

    private static Series<Wording> Foot(Plan plan)
    {
        var words = plan.Words;
        return
        [
            Order(May(words.Say("emergency")), Must(plan.Emergency.Sentence)),
            Guarded(plan.GoodUntil.Sentence),
            Order(
                Must(words.Say("written-by", ("coach", plan.Publisher.Coach), ("practice", plan.Publisher.Practice))),
                Must(plan.Publisher.Contact.Email),
                Must(plan.Publisher.Contact.Phone)
            ),
            Must(words.Say("not-medical")),
        ];
    }

    /// <summary>The words that a page explains.</summary>
    internal static Wording Terms(Plan plan, string path) =>
        Order(
            plan.TermsOn(path)
                .Select(t => Order(Guarded(t.Word), Guarded(t.Explanation)))
                .Prepend(May(plan.Words.Say("words-on-page")))
        );

    /// <summary>A span of time to the second.</summary>
    internal static Wording Time(Seconds span, bool about, Words words) =>
        Order(about ? Must(words.Say("about")) : Order(), Guarded(words.ShortSpan(span)));

    /// <summary>A span of time as a person says it.</summary>
    internal static Wording Roughly(Seconds span, Words words) => Order(Must(words.Say("about")), Guarded(words.About(span)));

    /// <summary>Which week it is, and why it is another than the calendar's.</summary>
    internal static Wording WeekNow(Plan plan)
    {
        var words = plan.Words;
        return AnyOrder(
            Order(
                plan.Weeks.Select(w =>
                    May(
                        words.Say("week-of", ("week", words.Say("week", ("week", w.Number))), ("weeks", plan.Course.Weeks)),
                        PageMark.Of(("week-now", FormattableString.Invariant($"{w.Number}")))
                    )
                )
            ),
            Order(plan.Weeks.SelectMany(w => w.Pauses).Select(p => May(p.Now, PageMark.Of((PageData.OnPause, p.Days))))),
            May(words.Say("late-start"), PageMark.Of(("why", "late"))),
            May(words.Say("begins-on", ("date", words.Date(plan.Programme.Start))), PageMark.Of(("why", "early"))),
            May(words.Say("after-break", ("n", plan.Course.DaysBackOneWeek)), PageMark.Of(("why", "break"))),
            May(words.Say("after-long-break", ("n", plan.Course.DaysBackToFirst)), PageMark.Of(("why", "long-break"))),
            May(words.Say("no-script"), PageMark.Of(("without-scripts", "")))
        );
    }

    /// <summary>The weeks that a client may take instead.</summary>
    internal static Wording ChooseWeek(Plan plan) =>
        Order(
            plan.Weeks.Select(w =>
                    May(
                        plan.Words.Say("week", ("week", w.Number)),
                        PageMark.Of(("choose-week", FormattableString.Invariant($"{w.Number}")))
                    )
                )
                .Prepend(May(plan.Words.Say("another-week")))
        );

    /// <summary>How long a session is in each week.</summary>
    internal static Wording Lengths(PlannedSession session, Words words) =>
        WholeOrNot(session.Weeks.Select(w => Order(Must(w.Heading), Roughly(w.Total, words))));
}
