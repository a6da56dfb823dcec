using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what the page of an exercise says, and what a session says of it.</summary>
internal static class ExerciseWording
{
    /// <summary>What it says as a file of its own, and in one file with the sessions, which have its instructions, its cautions
    /// and its doses: there each of these may be left out, whole. All other parts are made once for both.</summary>
    public static (Wording Apart, Wording InOne) Of(Plan plan, PlannedExercise exercise)
    {
        var words = plan.Words;
        Series<Wording> first =
        [
            Must(exercise.Title),
            PageWording.News(plan, exercise.Path),
            Order(
                May(words.Say("why")),
                Must(exercise.Text.Why, words.Say("clip-elsewhere")),
                May(exercise.Trains),
                May(exercise.Stage),
                May(exercise.Position)
            ),
        ];
        var cautions = CautionWording.Of(plan, exercise.Path, [exercise.Id]);
        var equipment = Equipment(exercise.Equipment, words);
        var instructions = Instructions(exercise.Text, exercise.Id, words);
        var uses = exercise.Uses.Select(use => InExercise(plan, use)).ToArray();
        Series<Wording> last =
        [
            May(words.Say("effort-note")),
            Version(exercise.Easier, "easier-version", plan),
            Version(exercise.Harder, "harder-version", plan),
        ];
        var terms = PageWording.Terms(plan, exercise.Path);
        return (Where(part => part), Where(part => WholeOrNot(part)));

        Wording Where(Func<Wording, Wording> whole) =>
            AnyOrder([
                .. first,
                whole(cautions),
                equipment,
                whole(instructions),
                Order([May(words.Say("dose-heading")), Order(uses.Select(use => use(whole))), .. last]),
                terms,
            ]);
    }

    /// <summary>A use on the page of its exercise; what the session has too is there in the way that is asked for.</summary>
    private static Func<Func<Wording, Wording>, Wording> InExercise(Plan plan, PlannedUse use)
    {
        var (session, words) = (plan.Sessions[use.Session - 1], plan.Words);
        var (name, sides) = (Must(use.SessionName), May(use.Sides));
        var (beside, changes) = (Beside(use, words), Changes(use, words));
        var table = Order(TableWording.Weeks(session, words), TableWording.Rows(session, use));
        return whole => Order(name, AnyOrder(sides, whole(beside), Order(whole(table), changes)));
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
