using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what the page of an exercise says, and what a session says of it.</summary>
internal static class ExerciseWording
{
    /// <param name="inOne">Whether it stands in one file with the sessions, which have its instructions, its cautions and its
    /// doses: there each of these may be left out, whole.</param>
    public static Wording Of(Plan plan, PlannedExercise exercise, bool inOne)
    {
        var words = plan.Words;
        return AnyOrder(
            Must(exercise.Title),
            PageWording.News(plan, exercise.Path),
            Order(
                May(words.Say("why")),
                Must(exercise.Text.Why, words.Say("clip-elsewhere")),
                May(exercise.Trains),
                May(exercise.Stage),
                May(exercise.Position)
            ),
            Whole(CautionWording.Of(plan, exercise.Path, [exercise.Id])),
            Equipment(exercise.Equipment, words),
            Whole(Instructions(exercise.Text, exercise.Id, words)),
            Order(
                May(words.Say("dose-heading")),
                Order(exercise.Uses.Select(Use)),
                May(words.Say("effort-note")),
                Version(exercise.Easier, "easier-version", plan),
                Version(exercise.Harder, "harder-version", plan)
            ),
            PageWording.Terms(plan, exercise.Path)
        );

        Wording Whole(Wording part) => inOne ? WholeOrNot(part) : part;

        Wording Use(PlannedUse use)
        {
            var session = plan.Sessions[use.Session - 1];
            var table = Order(TableWording.Weeks(session, words), TableWording.Rows(session, use));
            return Order(
                Must(use.SessionName),
                AnyOrder(May(use.Sides), Whole(Beside(use, words)), Order(Whole(table), Changes(use, words)))
            );
        }
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

    /// <summary>What is other in each week than before, and how long it takes to the second.</summary>
    private static Wording Changes(PlannedUse use, Words words) =>
        Order(
            use.Doses.Select(d =>
                Order(
                    Guarded(words.Weeks(d.Weeks)),
                    Must(d.Change),
                    d.About ? Must(words.Say("about")) : Order(),
                    Must(words.ShortSpan(d.Seconds))
                )
            )
        );

    private static Wording Version(ExerciseId? id, string key, Plan plan) =>
        id is null ? Order() : May(plan.Words.Say(key, ("exercise", plan.Exercise(id).Title)));
}
