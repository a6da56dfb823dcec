using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What a page says before it tells anybody to move: each sign whole and once, worst first, how much pain is all right,
/// and who must leave something out.</summary>
/// <param name="Pain">Null where the page does not ask for it.</param>
/// <param name="Asked">The day on which the client was asked; empty where there are no notes.</param>
/// <param name="Notes">What is to be spared, what was answered with yes, and then every other condition once.</param>
public sealed record PageSigns(Series<SignKind> Kinds, PlannedNote? Pain, string Asked, Series<PlannedNote> Notes)
{
    /// <summary>What follows from a condition that the client does not have, and the title that all of these stand under: leaving
    /// out before asking.</summary>
    private static readonly (string Phrase, string Title)[] Others =
    [
        ("not-with", "not-with-all"),
        ("clear-first", "clear-first-all"),
    ];

    /// <summary>How a page with those exercises says it.</summary>
    internal static PageSigns Of(Plan plan, string path, IEnumerable<ExerciseId> exercises)
    {
        var (shown, names) = (exercises.ToHashSet(), NamesOn(plan, path));
        var notes = NotesOf(plan, shown, names).ToSeries();
        return new(
            plan.CautionsFor(shown)
                .GroupBy(c => c.Kind)
                .Select(kind => new SignKind(
                    kind.Key,
                    plan.Words.Say("kind-" + Kebab.Of(kind.Key.ToString())),
                    kind.Select(c => new PageSign(c, Where(c.Exercises))).ToSeries()
                ))
                .ToSeries(),
            path == PagePath.BeforeYouStart || plan.Sessions.Any(s => s.Path == path) ? plan.PainRule : null,
            notes.Count > 0 ? plan.Asked : "",
            notes
        );

        string Where(Series<ExerciseId> belongs)
        {
            if (plan.Exercises.FirstOrDefault(e => e.Path == path) is { } one && belongs.All(e => e == one.Id))
                return "";
            var named = plan.Words.Joined([.. belongs.SelectMany(names)], "comma");
            return plan.Sessions.Any(s => s.Path == path) ? named : plan.Words.Say("belongs-to", ("exercises", named));
        }
    }

    /// <summary>What a page calls an exercise: a session by its letters, one for each time that it is done.</summary>
    private static Func<ExerciseId, IEnumerable<string>> NamesOn(Plan plan, string path)
    {
        var uses = plan.Sessions.FirstOrDefault(s => s.Path == path)?.Uses ?? [];
        return exercise =>
            uses.Where(u => u.Exercise == exercise).Select(u => u.Letter).DefaultIfEmpty(plan.Exercise(exercise).Title);
    }

    private static IEnumerable<PlannedNote> NotesOf(
        Plan plan,
        HashSet<ExerciseId> shown,
        Func<ExerciseId, IEnumerable<string>> names
    )
    {
        var concerns = plan.Concerns.Select(c => c.For(shown)).OfType<PlannedConcern>().ToArray();
        var yes = concerns.Where(c => c.Told.Count > 0).Select(c => c.Note(plan, names));
        foreach (var note in plan.Restrictions.Concat(yes))
            yield return note;
        var others = concerns
            .Where(c => c.Told.Count == 0)
            .SelectMany(c => c.Effects.Select(e => (Concern: c, Effect: e)))
            .ToArray();
        foreach (var (phrase, title) in Others)
            if (others.Where(o => o.Effect.Phrase == phrase).Select(Named).ToSeries() is { Count: > 0 } named)
                yield return new(plan.Words.Say(title), named);

        // Where a page has one exercise, it need not say which.
        string Named((PlannedConcern Concern, PlannedEffect Effect) other) =>
            shown.Count == 1
                ? other.Concern.Name
                : plan.Words.Say(
                    "condition-of",
                    ("condition", other.Concern.Name),
                    ("exercises", plan.Words.Joined([.. other.Effect.Exercises.SelectMany(names)], "comma"))
                );
    }
}

/// <param name="Heading">What the kind is called.</param>
public sealed record SignKind(CautionKind Kind, string Heading, Series<PageSign> Signs)
{
    /// <summary>The names of its signs in one line, for the exercise that they belong to.</summary>
    public string Names(Words words) => words.Joined([.. Signs.Select(s => s.Caution.Title)], "semicolon");
}

/// <param name="Where">Which exercises of the page it belongs to; empty where it has one alone.</param>
public sealed record PageSign(PlannedCaution Caution, string Where)
{
    /// <summary>The lines that stand together and unaltered on the page.</summary>
    public IEnumerable<string> Lines() =>
        Where.Length > 0 ? Caution.Body.Lines().Prepend(Where).Prepend(Caution.Title) : Caution.Lines();
}
