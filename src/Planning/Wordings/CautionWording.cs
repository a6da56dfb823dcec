using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what a page says of the cautions of its exercises.</summary>
internal static class CautionWording
{
    /// <summary>Each sign whole, worst first, then how much pain is all right, and who must leave something out.</summary>
    public static Wording Of(Plan plan, string path, IEnumerable<ExerciseId> exercises)
    {
        var (words, shown) = (plan.Words, exercises.ToArray());
        var notes = plan.NotesFor(shown);
        return Guarded(
            Order(
                May(words.Say("cautions-heading")),
                Order(
                    plan.CautionsFor(shown)
                        .GroupBy(c => c.Kind)
                        .Select(kind => Order(kind.Select(c => Whole(plan, c)).Prepend(Must(Kind(kind.Key, words)))))
                ),
                plan.PainRuleOn(path) is { } pain ? Order(pain.Lines().Select(l => Must(l))) : Order(),
                Order(
                    May(words.Say("not-with-heading")),
                    notes.Count > 0 ? Must(plan.Asked) : May(plan.Asked),
                    Order(notes.Select(n => Order(n.Lines().Select(l => Must(l)))))
                )
            )
        );
    }

    /// <summary>The signs of one exercise over again, beside its steps.</summary>
    public static Wording Again(Plan plan, ExerciseId exercise) =>
        Guarded(
            Order(
                plan.CautionsFor([exercise])
                    .GroupBy(c => c.Kind)
                    .Select(kind =>
                        WholeOrNot(
                            kind.Select(c => new Optional(Order(Must(c.Title), Body(plan, c), May(c.BelongsTo(plan)))))
                                .Prepend(Must(Kind(kind.Key, plan.Words)))
                        )
                    )
            )
        );

    private static Wording Whole(Plan plan, PlannedCaution caution) =>
        Order(Must(caution.Title), Body(plan, caution), Must(caution.BelongsTo(plan)));

    private static Wording Body(Plan plan, PlannedCaution caution) => Must(caution.Body, plan.Words.Say("clip-elsewhere"));

    private static string Kind(CautionKind kind, Words words) => words.Say("kind-" + Kebab.Of(kind.ToString()));
}
