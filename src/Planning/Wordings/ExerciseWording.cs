using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what the page of an exercise says, and what a session says of it.</summary>
internal static class ExerciseWording
{
    public static Wording Of(Plan plan, PlannedExercise exercise)
    {
        var words = plan.Words;
        return AnyOrder(
            Must(exercise.Title),
            Order(
                May(words.Say("why")),
                Must(exercise.Text.Why, words.Say("clip-elsewhere")),
                May(exercise.Trains),
                May(exercise.Stage),
                May(exercise.Position)
            ),
            CautionWording.Of(plan, exercise.Path, [exercise.Id]),
            Equipment(exercise.Equipment, words),
            Instructions(exercise.Text, exercise.Id, words),
            Order(
                May(words.Say("dose-heading")),
                Order(exercise.Uses.Select(u => Use(u, words))),
                May(words.Say("effort-note")),
                Version(exercise.Easier, "easier-version", plan),
                Version(exercise.Harder, "harder-version", plan)
            ),
            PageWording.Terms(plan, exercise.Path)
        );
    }

    /// <summary>An exercise in a session. What it asks of each week stands once, in the table of the weeks.</summary>
    public static Wording InSession(Plan plan, PlannedSession session, PlannedUse use)
    {
        var words = plan.Words;
        return Order(
            use.BeginsLater(session) ? Later(use, words) : Order(),
            Must(use.Letter),
            Must(use.Title),
            AnyOrder(
                Must(use.Sides),
                CautionWording.Names(plan, session.Path, use.Exercise),
                Beside(use, words),
                Instructions(use.Text, use.Exercise, words)
            )
        );
    }

    /// <summary>What stands in its place before its first week.</summary>
    private static Wording Later(PlannedUse use, Words words) =>
        May(
            words.Say("from-week", ("week", use.Weeks.First()), ("exercise", use.Title)),
            PageMark.Of((PageData.Later, use.Letter))
        );

    public static Wording Equipment(Series<string> things, Words words) =>
        Order(
            May(words.Say("equipment")),
            things.Count > 0 ? Order(things.Select(t => Must(t))) : May(words.Say("no-equipment"))
        );

    private static Wording Use(PlannedUse use, Words words) =>
        Order(Must(use.SessionName), AnyOrder(May(use.Sides), Beside(use, words), Doses(use, words)));

    private static Wording Instructions(ExerciseText text, ExerciseId exercise, Words words) =>
        Order(
            PairWording.Of(text, words),
            May(words.Say("set-up")),
            PairWording.Of(text, words),
            Must(text.SetUp, words.Say("clip-elsewhere"), exercise),
            May(words.Say("doing")),
            Must(text.Do, words.Say("clip-elsewhere"), exercise),
            Must(text.More, words.Say("clip-elsewhere"), exercise)
        );

    private static Wording Beside(PlannedUse use, Words words) =>
        Order(
            Order(use.Notes.Select(n => Must(n))),
            use.MoveOn.Count > 0 ? May(words.Say("move-on")) : Order(),
            Order(use.MoveOn.Select(m => Must(m)))
        );

    /// <summary>What each week asks: on the page of the exercise always, in a session where the theme shows it.</summary>
    private static Wording Doses(PlannedUse use, Words words) =>
        Order(
            use.Doses.Select(d =>
                    Order(
                        Guarded(words.Weeks(d.Weeks)),
                        Must(d.Words, "", use.Exercise),
                        Must(d.Change),
                        d.About ? Must(words.Say("about")) : Order(),
                        Must(words.ShortSpan(d.Seconds))
                    )
                )
                .Prepend(May(words.Say("dose-column")))
                .Prepend(May(words.Say("weeks-column")))
        );

    private static Wording Version(ExerciseId? id, string key, Plan plan) =>
        id is null ? Order() : May(plan.Words.Say(key, ("exercise", plan.Exercise(id).Title)));
}
