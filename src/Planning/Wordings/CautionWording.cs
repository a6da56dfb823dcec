using Gradus.Domain;
using static Gradus.Planning.Wording;

namespace Gradus.Planning;

/// <summary>Plan → what a page says of the cautions of its exercises.</summary>
internal static class CautionWording
{
    /// <summary>Each sign whole, worst first, then how much pain is all right, and who must leave something out.</summary>
    public static Wording Of(Plan plan, string path, IEnumerable<ExerciseId> exercises)
    {
        var (words, signs) = (plan.Words, plan.SignsOn(path, exercises));
        return Guarded(
            Order(
                May(words.Say("cautions-heading")),
                Order(signs.Kinds.Select(kind => Order(kind.Signs.Select(s => Whole(plan, s)).Prepend(Must(kind.Heading))))),
                signs.Pain is { } pain ? Order(pain.Lines().Select(l => Must(l))) : Order(),
                Order(
                    May(words.Say("not-with-heading")),
                    Must(signs.Asked),
                    Order(signs.Notes.Select(n => Order(n.Lines().Select(l => Must(l)))))
                )
            )
        );
    }

    /// <summary>The names of the signs of one exercise, beside its steps, leading to where they stand whole.</summary>
    public static Wording Names(Plan plan, string path, ExerciseId exercise) =>
        Order(plan.SignsOn(path, [exercise]).Kinds.Select(kind => Order(Must(kind.Heading), Must(kind.Names(plan.Words)))));

    private static Wording Whole(Plan plan, PageSign sign) =>
        Order(Must(sign.Caution.Title), Must(sign.Where), Must(sign.Caution.Body, plan.Words.Say("clip-elsewhere")));
}
