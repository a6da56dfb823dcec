using System.Globalization;
using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what the guided session of a page says, asks and takes for an answer. It is there whole or not at
/// all.</summary>
internal static class GuideWording
{
    private const int Most = 10;

    /// <summary>Signs that lead straight to the emergency number, each with the end of its key.</summary>
    private static readonly string[] Flags = ["chest", "breath", "faint", "weakness", "speech", "sight", "headache", "saddle"];

    /// <summary>Why somebody does not train today, as the log has it and as the key ends.</summary>
    private static readonly string[] Reasons = ["ill", "pain", "health", "time", "other"];

    public static Wording Of(Plan plan, PlannedSession session)
    {
        var words = plan.Words;
        return AnyOrder(
            WholeOrNot(Before(plan, session), Ready(words), Play(words), Hurts(plan), Alarm(plan), End(plan), Close(words)),
            // Where all pages are one, the first session's guide leads through the others too.
            Versions(plan, session, "")
        );
    }

    private static Wording Before(Plan plan, PlannedSession session)
    {
        var words = plan.Words;
        return Order(
            Panel("resume", words.Say("guide-resume"), _ =>
                [Act("resume", words.Say("guide-resume-go")), Act("afresh", words.Say("guide-resume-afresh"))]
            ),
            Panel("today", words.Say("guide-today"), panel =>
                [
                    RedFlags(plan, panel),
                    Must(words.Say("guide-today-hurts"), panel),
                    Must(words.Say("guide-today-worse"), panel),
                    Must(words.Say("guide-today-ill", ("date", words.PlainDate(plan.Health.Answered))), panel),
                    Act("none", words.Say("guide-today-none")),
                    Act("some", words.Say("guide-today-some")),
                    Act("skip", words.Say("guide-skip")),
                ]
            ),
            Panel("skip", words.Say("guide-skip-why"), _ =>
                [.. Reasons.Select(why => Must(words.Say("guide-skip-" + why), PageMark.Of(("act", "skip-for"), ("skip", why))))]
            ),
            Panel("questions", words.Say("guide-questions"), panel => Questions(plan, panel)),
            Panel("not-today", words.Say("guide-not-today"), panel => NotToday(plan, panel)),
            Panel("other", words.Say("guide-other"), panel =>
                [Because("ease", words.Say("guide-why-ease")), Versions(plan, session, panel)]
            )
        );
    }

    private static Series<Wording> Questions(Plan plan, string panel)
    {
        var words = plan.Words;
        return
        [
            Must(plan.Emergency.ChestFirst, panel),
            May(words.Say("guide-questions-note"), panel),
            Must(words.Say("guide-cleared"), panel),
            YesOrNo("cleared"),
            Answer("cleared", "mistake", words.Say("guide-cleared-mistake")),
            Must(words.Say("guide-pain-now"), panel),
            YesOrNo("pain"),
            Must(words.Say("guide-where-pain"), panel),
            Where(words, panel, isAgain: false),
            Level(words, panel, isAgain: false),
            Must(words.Say("guide-worse"), panel),
            YesOrNo("worse"),
            Answer("worse", "first", words.Say("guide-worse-first")),
            Must(words.Say("guide-where-worse"), panel),
            Where(words, panel),
            Level(words, panel),
            Must(words.Say("guide-ill", ("date", words.PlainDate(plan.Health.Answered))), panel),
            YesOrNo("ill"),
            Must(words.Say("guide-still"), panel),
            Answer("still", "no", words.Say("reply-no")),
            Answer("still", "no", words.Say("guide-still-told", ("coach", plan.Publisher.Coach))),
            Answer("still", "untold", words.Say("guide-still-untold", ("coach", plan.Publisher.Coach))),
            Answer("still", "yes", words.Say("reply-yes")),
            Must(words.Say("guide-answered"), panel),
        ];

        Wording YesOrNo(string question) =>
            Order(Answer(question, "no", words.Say("reply-no")), Answer(question, "yes", words.Say("reply-yes")));
    }

    private static Series<Wording> NotToday(Plan plan, string panel)
    {
        var words = plan.Words;
        return
        [
            Must(plan.Emergency.ChestFirst, panel),
            Because("alarm", words.Say("guide-why-alarm")),
            Because("ill", words.Say("guide-why-ill")),
            Because("pain", words.Say("guide-why-pain")),
            Because("rest", words.Say("guide-why-rest")),
            Because("no-easier", words.Say("guide-why-no-easier")),
            Must(words.Say("guide-not-today-doctor"), panel),
            Must(plan.Emergency.Sentence, panel),
            Must(words.Say("guide-ask-first", ("coach", plan.Publisher.Coach)), panel),
            May(plan.Publisher.Contact.Email, panel),
            Must(plan.Publisher.Contact.Phone, panel),
        ];
    }

    private static Wording Ready(Words words) =>
        Panel("ready", words.Say("guide-ready"), panel =>
            [
                Act("start", words.Say("guide-start")),
                May(words.Say("guide-wait"), panel),
                May(words.Say("guide-sound"), panel),
                Act("test-sound", words.Say("guide-sound-test")),
                May(words.Say("guide-volume"), panel),
                May(words.Say("guide-speech"), panel),
                May(words.Say("guide-vibration"), panel),
                May(words.Say("guide-no-wake-lock"), panel),
                May(words.Say("guide-keys"), panel),
            ]
        );

    private static Wording Play(Words words) => Panel("play", words.Say("guide"), panel => [
                May(words.Say("keep-breathing"), panel),
                Act("pause", words.Say("guide-pause")),
                Act("go", words.Say("guide-go-on")),
                Act("in-place", words.Say("guide-in-place")),
                Act("forward", words.Say("guide-forward")),
                Act("longer", words.Say("guide-longer")),
                Act("hurts", words.Say("guide-hurts")),
                Act("back", words.Say("guide-back")),
                Act("softer", words.Say("guide-softer")),
                May(words.Say("guide-wait"), panel),
                Act("end-here", words.Say("guide-end-session")),
                Close(words),
                // How it is done may be long: below what is pressed, which has to stay in sight.
                Close(words),
                May(words.Say("guide-how"), panel),
            ]);

    private static Wording Hurts(Plan plan)
    {
        var words = plan.Words;
        return Panel("hurts", words.Say("guide-stopped"), panel =>
            [
                RedFlags(plan, panel),
                Must(words.Say("guide-where-hurts"), panel),
                Where(words, panel),
                Level(words, panel),
                May(words.Say("guide-where-note"), panel),
                Must(words.Say("guide-feel"), panel),
                Answer("feel", "dull", words.Say("guide-feel-dull")),
                Answer("feel", "sharp", words.Say("guide-feel-sharp")),
                Answer("feel", "numb", words.Say("guide-feel-numb")),
                Answer("feel", "giving-way", words.Say("guide-feel-giving-way")),
                Answer("feel", "snap", words.Say("guide-feel-snap")),
                Answer("feel", "swollen", words.Say("guide-feel-swollen")),
                Answer("feel", "no-weight", words.Say("guide-feel-no-weight")),
                Act("end-exercise", words.Say("guide-end-exercise")),
                Act("end-session", words.Say("guide-end-session")),
                Act("ease-off", words.Say("guide-ease-off", ("n", plan.Course.EaseOffAbove))),
            ]
        );
    }

    private static Wording Alarm(Plan plan)
    {
        var words = plan.Words;
        return Panel("alarm", words.Say("guide-alarm", ("call", plan.Emergency.Call)), panel =>
            [
                Must(plan.Emergency.Call, panel),
                Must(words.Say("guide-alarm-do"), panel),
                Must(words.Say("guide-alarm-after", ("coach", plan.Publisher.Coach)), panel),
            ]
        );
    }

    private static Wording End(Plan plan)
    {
        var words = plan.Words;
        return Panel("end", words.Say("guide-over"), panel =>
            [
                Must(words.Say("guide-see-today"), panel),
                Must(words.Say("guide-not-today-doctor"), panel),
                Must(words.Say("guide-ask-first", ("coach", plan.Publisher.Coach)), panel),
                Must(plan.Publisher.Contact.Phone, panel),
                Must(words.Say("guide-how-was-it"), panel),
                Must(words.Say("log-effort"), panel),
                Efforts(words),
                Level(words, panel),
                Where(words, panel),
                May(words.Say("guide-why-stopped"), panel),
                Chosen("", words.Say("intake-choose")),
                Chosen("tired", words.Say("guide-stopped-tired")),
                Chosen("time", words.Say("guide-stopped-time")),
                May(words.Say("guide-note"), panel),
                plan.Measures ? Measured(plan, panel) : Order(),
                May(words.Say("guide-by-exercise"), panel),
                May(words.Say("guide-exercise"), panel),
                May(words.Say("guide-sets"), panel),
                May(words.Say("guide-repetitions"), panel),
                May(words.Say("guide-load"), panel),
                Must(words.Say("guide-keep"), panel),
                WeeksWording.LogTools(words, panel),
            ]
        );
    }

    private static Wording Efforts(Words words) =>
        Order(
            EffortWords
                .All(words)
                .Select(e => Chosen(e.Number.ToString(CultureInfo.InvariantCulture), e.Said))
                .Prepend(Chosen("", words.Say("intake-choose")))
        );

    private static Wording Measured(Plan plan, string panel)
    {
        var words = plan.Words;
        return Order(
            Must(words.Say("guide-measured"), panel),
            Must(MeasureWords.Note(plan), panel),
            Order(MeasureWords.Tries(words).Select(said => Must(said, panel))),
            Must(words.Say("guide-measure-again"), panel)
        );
    }

    private static Wording Close(Words words) => Act("close", words.Say("guide-close"));

    private static Wording RedFlags(Plan plan, string panel)
    {
        var words = plan.Words;
        return Order(
            Flags
                .Select(flag => Must(words.Say("guide-flag-" + flag), PageMark.Of(("act", "alarm"), ("alarm", flag))))
                .Prepend(Must(words.Say("emergency-press", ("call", plan.Emergency.Call)), panel))
                .Prepend(Must(words.Say("guide-flags"), panel))
        );
    }

    /// <param name="isAgain">Whether the list stood before: a script puts it into each that is empty.</param>
    private static Wording Where(Words words, string panel, bool isAgain = true) =>
        Order(
            Must(words.Say("intake-where"), panel),
            Chosen("", words.Say("intake-choose")),
            Listed(Region.All.Select(r => Chosen(Kebab.OfWords(r.Name), words.Say("region-" + Kebab.OfWords(r.Name)))), isAgain),
            Must(words.Say("intake-which-side"), panel),
            Chosen("", words.Say("intake-choose")),
            Chosen("left", words.Say("left")),
            Chosen("right", words.Say("right")),
            Chosen("both", words.Say("both-sides"))
        );

    private static Wording Level(Words words, string panel, bool isAgain = true) =>
        Order(
            Must(words.Say("guide-pain-level"), panel),
            Chosen("", words.Say("intake-choose")),
            Listed(Enumerable.Range(0, Most + 1).Select(n => Must(n.ToString(CultureInfo.InvariantCulture), panel)), isAgain)
        );

    private static Wording Listed(IEnumerable<Wording> choices, bool isAgain) =>
        isAgain ? WholeOrNot([.. choices]) : Order(choices);

    private static Wording Versions(Plan plan, PlannedSession session, string panel) =>
        Order(plan.VersionsOf(session).Select(s => May(s.Name, panel)));

    private static Wording Panel(string name, string title, Func<string, Series<Wording>> parts)
    {
        var panel = PageMark.Of(("panel", name));
        return Order(parts(panel).Prepend(Must(title, panel)));
    }

    private static Wording Act(string act, string text) => Must(text, PageMark.Of(("act", act)));

    private static Wording Because(string why, string text) => Must(text, PageMark.Of(("because", why)));

    private static Wording Answer(string question, string value, string text) => Must(text, PageMark.Of((question, value)));

    private static Wording Chosen(string value, string text) => Must(text, PageMark.Of(("value", value)));
}
