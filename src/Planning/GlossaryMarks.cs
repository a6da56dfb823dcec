using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>Plan → the plan with the words of the glossary marked, each where a page's coach-written text first has it.</summary>
internal static class GlossaryMarks
{
    public static Plan Of(Plan plan, Series<GlossaryEntry> entries)
    {
        if (entries.Count == 0)
            return plan;
        var glossary = new Glossary(entries);

        // A caution stands on many pages, and is read by itself.
        var marked = plan with
        {
            Cautions = plan.Cautions.Select(c => c with { Body = glossary.Mark(c.Body, new HashSet<int>()) }).ToSeries(),
        };
        return marked with
        {
            Publisher = marked.Publisher with { Scope = glossary.Mark(marked.Publisher.Scope, MetIn(marked.Cautions)) },
            Programme = marked.Programme with { Letter = glossary.Mark(marked.Programme.Letter, new HashSet<int>()) },
            Sessions = marked
                .Sessions.Select(s => s with { Uses = Marked(s, glossary, MetIn(marked.CautionsFor(s.Exercises))) })
                .ToSeries(),
            Exercises = marked
                .Exercises.Select(e => e with { Text = Marked(e, glossary, MetIn(marked.CautionsFor([e.Id]))) })
                .ToSeries(),
        };
    }

    private static Series<PlannedUse> Marked(PlannedSession session, Glossary glossary, HashSet<int> met) =>
        session.Uses.Select(u => u with { Text = Instructions(u.Text, glossary, met) }).ToSeries();

    /// <summary>Why the exercise is there stands before its cautions.</summary>
    private static ExerciseText Marked(PlannedExercise exercise, Glossary glossary, HashSet<int> met)
    {
        var before = new HashSet<int>();
        var why = glossary.Mark(exercise.Text.Why, before);
        return Instructions(exercise.Text with { Why = why }, glossary, [.. met, .. before]);
    }

    private static ExerciseText Instructions(ExerciseText text, Glossary glossary, HashSet<int> met)
    {
        var setUp = glossary.Mark(text.SetUp, met);
        var doing = glossary.Mark(text.Do, met);
        return text with { SetUp = setUp, Do = doing, More = glossary.Mark(text.More, met) };
    }

    private static HashSet<int> MetIn(Series<PlannedCaution> cautions) =>
        cautions.SelectMany(c => c.Body.Inlines()).OfType<Inline.Term>().Select(t => t.Number).ToHashSet();
}
