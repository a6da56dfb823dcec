using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>The names of the data attributes of a page. What each holds is said in <c>page-contract.md</c>.</summary>
public static class PageData
{
    /// <summary>Under which key the browser keeps what was done.</summary>
    public const string Course = "data-course";

    /// <summary>The number of the edition.</summary>
    public const string Edition = "data-edition";

    /// <summary>The first day.</summary>
    public const string Start = "data-start";

    /// <summary>The days on which nothing is done: each pause its first and its last day, as an interval of ISO 8601.</summary>
    public const string Pauses = "data-pauses";

    /// <summary>After how many days without training to go back one week, and to the first.</summary>
    public const string Back = "data-back";

    /// <summary>What each week holds: sessions and times.</summary>
    public const string Needs = "data-needs";

    /// <summary>Which session counts as which.</summary>
    public const string Instead = "data-instead";

    /// <summary>The two bounds of pain.</summary>
    public const string Pain = "data-pain";

    /// <summary>Of a part of the page: the weeks that it belongs to.</summary>
    public const string Weeks = "data-weeks";

    /// <summary>Of a session on page one: its number.</summary>
    public const string Due = "data-due";

    /// <summary>Of a session on page one: its days.</summary>
    public const string Weekdays = "data-weekdays";

    /// <summary>Of a step: what the script plays; see <see cref="Planning.Step.Data"/>.</summary>
    public const string Step = "data-step";

    /// <summary>Of a session to choose.</summary>
    public const string Kind = "data-kind";

    /// <summary>Of an article in a session: its exercise, and what that loads.</summary>
    public const string About = "data-about";

    public const string Loads = "data-loads";

    /// <summary>Of an article in a session: the weeks in which it is done.</summary>
    public const string Planned = "data-planned";

    /// <summary>Of the place in such an article for this week's dose, and of the rows that it comes from: the letter.</summary>
    public const string Dose = "data-dose";

    public const string Doses = "data-doses";

    /// <summary>Of the line that stands in its place before: its letter.</summary>
    public const string Later = "data-later";

    /// <summary>Of a figure in a text: what it is in each week; see <see cref="WeekData"/>.</summary>
    public const string ByWeek = "data-by-week";

    /// <summary>Of an item in what to do: the kinds of step that it tells how to do, with a blank between. The guided session
    /// shows that item alone while such a step runs.</summary>
    public const string Asks = "data-asks";

    /// <summary>Of the dialog of the guided session: the number of the session.</summary>
    public const string Guide = "data-guide";

    /// <summary>Of a session to choose: its number, and its seconds in each week.</summary>
    public const string Version = "data-version";

    public const string Lengths = "data-lengths";

    /// <summary>Of a section where all pages are one: the path of the page that it is.</summary>
    public const string Page = "data-page";

    /// <summary>Of a line on page one: the week in which it is shown.</summary>
    public const string WeekNew = "data-week-new";

    /// <summary>Of the parts of page one that show what was done: as days, and as a list.</summary>
    public const string DaysDone = "data-days-done";

    public const string ListDone = "data-list-done";

    public const string LastWeek = "data-last-week";

    /// <summary>Of the part of page one to which a script moves the sessions that are not due next.</summary>
    public const string Others = "data-others";

    /// <summary>Of a link that begins a session.</summary>
    public const string Go = "data-go";

    /// <summary>Of the part of a page that shows the log.</summary>
    public const string LogPage = "data-log-page";

    /// <summary>Of a line that is shown in a pause: its days.</summary>
    public const string OnPause = "data-on-pause";

    /// <summary>The last day of the page.</summary>
    public const string GoodUntil = "data-good-until";

    /// <summary>What a page's main part says to the scripts; see <see cref="PlannedCourse.Attributes"/>.</summary>
    public static readonly Series<string> OfCourse = [Course, Start, Pauses, Back, Needs, Instead, Pain, Edition];

    /// <summary>What the plan says and pages are held to.</summary>
    public static readonly Series<string> Told =
    [
        .. OfCourse,
        Step,
        Kind,
        Weeks,
        Due,
        Weekdays,
        About,
        Loads,
        Planned,
        Dose,
        Doses,
        Asks,
        ByWeek,
        Guide,
        Version,
        Lengths,
        Page,
        GoodUntil,
    ];

    /// <summary>A question of the intake sheet, which holds its answers.</summary>
    public const string Asked = "data-asked";

    /// <summary>Of a figure with a side: the letters of left and right, for a script that turns it.</summary>
    public const string Letters = "data-letters";

    /// <summary>Of a panel of the guided session: which it is.</summary>
    public const string Panel = "data-panel";

    /// <summary>Of a place that a script fills: which it is; in the guided session see <see cref="GuidePlace"/>.</summary>
    public const string Fill = "data-fill";

    /// <summary>Of a part of the page of which one week at a time is shown.</summary>
    public const string OneWeek = "data-one-week";

    /// <summary>Of an article in a session after which somebody measures: the unit.</summary>
    public const string Measure = "data-measure";

    /// <summary>Of another version of a session, in the card of that session on page one.</summary>
    public const string WhilePlanned = "data-while-planned";

    /// <summary>Those of <see cref="OfScripts"/> that may stand around what everybody must get: by them no script hides, moves or
    /// fills it.</summary>
    public static readonly Series<string> LeavingAsItIs = [Letters, Measure, OneWeek];

    /// <summary>What scripts and templates say to each other: where a script finds the part that it fills or the button that it
    /// listens to, and the words that it says. No rule knows them; without them the page is complete as it is.</summary>
    public static readonly Series<string> OfScripts =
    [
        "data-act",
        "data-again",
        "data-alarm",
        "data-alarm-noted",
        "data-all-weeks",
        Asked,
        "data-at",
        "data-because",
        "data-born-wrong",
        "data-breathe-in",
        "data-breathe-out",
        "data-choose",
        "data-choose-week",
        "data-cleared",
        "data-day-wrong",
        DaysDone,
        "data-do",
        "data-do-get-ready",
        "data-do-switch",
        "data-do-transition",
        "data-done",
        "data-effort",
        "data-end",
        "data-exercise",
        "data-file",
        Fill,
        "data-first",
        "data-form",
        "data-gently",
        Go,
        "data-half",
        "data-hurts",
        "data-if",
        "data-keep-breathing",
        Later,
        LastWeek,
        "data-lead",
        "data-lead-again",
        "data-lead-in",
        "data-lead-none",
        "data-lead-past",
        "data-lead-unread",
        "data-learn",
        "data-left",
        "data-left-open",
        Letters,
        "data-level",
        ListDone,
        "data-load",
        "data-log",
        "data-log-count",
        "data-log-message",
        LogPage,
        "data-log-said",
        "data-log-text",
        "data-log-tools",
        "data-longer",
        Measure,
        "data-measured",
        "data-missing",
        "data-name",
        "data-next-end",
        "data-no-log",
        "data-no-sound",
        "data-none-open",
        "data-not-counted",
        "data-not-counted-lost",
        "data-not-kept",
        "data-note",
        "data-noted",
        "data-nothing-today",
        OneWeek,
        "data-opened",
        OnPause,
        Others,
        "data-pain-where",
        "data-pain-wrong",
        Panel,
        "data-pause",
        "data-phase",
        "data-picture",
        "data-place",
        "data-print",
        "data-repetitions",
        "data-right",
        "data-saved",
        "data-say",
        "data-set",
        "data-sets",
        "data-side",
        "data-side-left",
        "data-side-right",
        "data-sided",
        "data-skip",
        "data-skipped",
        "data-slept",
        "data-softer-plain",
        "data-sound-on",
        "data-sound-starts",
        "data-spoken",
        "data-still",
        "data-stopped-early",
        "data-stopped-for",
        "data-take",
        "data-try",
        "data-undo",
        "data-unless",
        "data-unread",
        "data-versions",
        "data-waits",
        "data-way",
        WeekNew,
        "data-week-now",
        "data-where",
        WhilePlanned,
        "data-why",
        "data-wiped",
        "data-worse-where",
        "data-without-scripts",
    ];
}
