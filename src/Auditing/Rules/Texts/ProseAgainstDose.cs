using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Auditing;

/// <summary>Two questions: does the text say what the exercise's own dose says; and where it does, do the weeks of every client
/// still say so. Of every exercise the English text alone, be it the original or a translation.</summary>
public sealed class ProseAgainstDose : IPracticeRule, IClientRule
{
    private const string English = "en";

    private const string WithoutNumber = "Say it without a number; the week table and the step list carry the figures.";

    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises.Select(e => InEnglish(practice, e)).OfType<Exercise>()
        where exercise.Dose.Dose is not null
        from written in WrittenIn(exercise)
        let dose = exercise.Dose.Dose
        let verdict = SpokenVerdict.Against(written.Figure, dose)
        where verdict.Agreement == SpokenAgreement.Disagrees
        select this.Found(
            Level.Warning,
            null,
            written.At,
            $"The text says \"{written.Words}\", and the dose {Said(verdict.Things, written.Figure, $"'{exercise.Dose.Line}'")}.",
            HelpWith(written.Figure, verdict.Things, dose)
        );

    /// <summary>One finding for an exercise and a client: the first figure that the weeks of a use have left. A text that is
    /// wrong for everybody is not said again.</summary>
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today) =>
        client.Language == English
            ? training
                .Uses.GroupBy(u => u.Exercise.Id)
                .Select(same => (Read: InEnglish(practice, practice.Of(same.Key)), Uses: same.ToArray()))
                .SelectMany(same => new[] { OtherSide(client, same.Read, same.Uses), Left(client, same.Read, same.Uses) })
                .OfType<Finding>()
            : [];

    /// <summary>The first side that a text says by hand where this client does the other alone.</summary>
    private Finding? OtherSide(Client client, Exercise? read, Use[] uses)
    {
        if (read is not { Dose.Dose: { } dose } exercise || uses.SelectMany(u => u.Sides).Distinct().ToArray() is not [var done])
            return null;
        var other = done == Side.Left ? SpokenSide.Right : SpokenSide.Left;
        return WrittenIn(exercise)
            .Where(w => w.Figure.Kind == SpokenKind.Side && w.Figure.Side == other)
            .Where(w => SpokenVerdict.Against(w.Figure, dose).Agreement == SpokenAgreement.Disagrees)
            .Select(w =>
                this.Found(
                    Level.Error,
                    client.Id,
                    w.At,
                    $"The text says \"{w.Words}\", and {client.Name} does '{exercise.Title}' on the {done.Word()} side.",
                    "Write {side} there, or leave the side to the step list."
                )
            )
            .FirstOrDefault();
    }

    private Finding? Left(Client client, Exercise? read, Use[] uses)
    {
        if (read is not { Dose.Dose: { } dose } exercise)
            return null;
        var left =
            from written in WrittenIn(exercise)
            where SpokenVerdict.Against(written.Figure, dose).Agreement == SpokenAgreement.Agrees
            from use in uses
            let verdict = SpokenVerdict.Against(written.Figure, [.. use.Weeks.Select(w => w.Dose.AsDose)])
            where
                verdict.Agreement == SpokenAgreement.Disagrees
                && (verdict.Things.Count > 0 || written.Figure.Kind == SpokenKind.Side)
            let weeks = written.Figure.Kind == SpokenKind.Side ? SideOf(use) : "say " + Numbers(verdict.Things, written.Figure)
            select this.Found(
                Level.Warning,
                client.Id,
                written.At,
                $"The text says \"{written.Words}\", and {client.Name}'s weeks {weeks}.",
                HelpWith(written.Figure, verdict.Things, dose)
            );
        return left.FirstOrDefault();
    }

    /// <summary>The exercise with its English text; null where it has none.</summary>
    private static Exercise? InEnglish(Practice practice, Exercise exercise) =>
        practice.Card.Language == English || practice.Find(exercise.Id, English) is not null
            ? practice.In(English).Find(exercise.Id)
            : null;

    private static IEnumerable<(SpokenValue Figure, string Words, Location At)> WrittenIn(Exercise exercise) =>
        from prose in exercise.Text.Instructions
        from passage in Passages(prose)
        from figure in SpokenValues.In(passage.Text)
        select (figure, passage.Text.Substring(figure.Start, figure.Length), passage.At);

    private static IEnumerable<(string Text, Location At)> Passages(Prose prose) =>
        prose.Blocks.SelectMany(block =>
            block switch
            {
                Block.Heading heading => [(Prose.PlainOf(heading.Text), heading.At)],
                Block.Paragraph paragraph => [(Prose.PlainOf(paragraph.Text), paragraph.At)],
                Block.Listing list => list.Items.SelectMany(Passages),
                _ => throw new NotSupportedException(block.GetType().Name),
            }
        );

    /// <summary>"says 30 to 60 seconds", "'2 x hold 5 breaths' has no such thing".</summary>
    private static string Said(Series<SpokenThing> things, SpokenValue figure, string line) =>
        things.Count > 0 ? $"says {Numbers(things, figure)}"
        : figure.Kind == SpokenKind.Side ? $"{line} says otherwise"
        : $"{line} has no such thing";

    private static string Numbers(Series<SpokenThing> things, SpokenValue figure) =>
        string.Join(" or ", things.Select(t => Number(t)).Distinct(StringComparer.Ordinal));

    private static string Number(SpokenThing thing)
    {
        var number = thing.Number;
        var said = number.IsSingle ? $"{number}" : $"{new Count(number.Low)} to {new Count(number.High)}";
        var many = number.High == 1 ? "" : "s";
        return thing.Kind switch
        {
            SpokenKind.Sets => $"{said} set{many}",
            SpokenKind.Repetitions => $"{said} repetition{many}",
            SpokenKind.Times => $"{said} round{many}",
            SpokenKind.Breaths => $"{said} breath{many}",
            SpokenKind.Percent => $"{said} per cent",
            SpokenKind.Felt => $"{said} out of 10",
            SpokenKind.Metres => $"{said} metre{many}",
            SpokenKind.Leave => $"{said} left",
            _ => $"{said} second{many}",
        };
    }

    private static string SideOf(Use use) =>
        use.Sides.ToArray() is [var one] ? $"are for the {one.Word()} side" : "are for both sides";

    private static string HelpWith(SpokenValue figure, Series<SpokenThing> things, Dose dose)
    {
        if (figure.Kind == SpokenKind.Side)
            return "Write {side} there, or leave the side to the step list.";
        var asked = things.Count > 0 ? things : SpokenThing.Of([dose]).Where(t => t.Verb is not null).ToSeries();
        return asked.Select(t => t.Placeholder).Distinct().ToArray() is [{ } name] && Placeholders.In(dose, name).Count() == 1
            ? $"Write {{{name}}} there, so that it follows the dose of every week."
            : WithoutNumber;
    }
}
