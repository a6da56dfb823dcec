using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class RangeNumberMissing : IClientRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var own = practice.In(client.Language);
        var figures = training
            .Exercises.Select(e => own.Find(e.Id))
            .OfType<Exercise>()
            .OrderBy(e => e.Id.Text, StringComparer.Ordinal)
            .SelectMany(e => e.Text.Instructions.Prepend(e.Text.Why))
            .Prepend(client.Programme.Letter)
            .SelectMany(text => text.Inlines())
            .OfType<Inline.RangeFigure>()
            .ToArray();
        if (figures.Length == 0)
            return [];
        var ranges = ClientRanges.ForPages(practice, client, training);
        return from figure in figures
            let said = SaidRange.Of(figure, training.Stances, ranges)
            where said.Value is null
            let told = Told(figure, said.Side)
            select this.Found(Level.Error, client.Id, figure.At, told.Message, told.Help, figure.Written.Length);

        (string Message, string Help) Told(Inline.RangeFigure figure, Side? side)
        {
            var name = MeasureTexts.NameOf(figure.Motion, side);
            if (figure.Motion.IsPaired && side is null)
            {
                var names = training.Stances.NamesFor(SideName.Of(figure.Side ?? ""));
                return (
                    $"'{figure.Side}' is no one side of {client.Name}.",
                    names.Count > 1
                        ? $"Write which one: {string.Join(", ", names)}."
                        : Nearest.Ask(figure.Side ?? "", training.Stances.Names, "Write left, right, or what the sport calls it.")
                );
            }

            return figure.Kind == RangeFigureKind.Reading
                ? (
                    $"{client.Name}'s {name} was never measured.",
                    Others(
                        ranges.Series.Where(s => s.Latest is not null).Select(s => MeasureTexts.NameOf(s.Key.Motion, s.Key.Side))
                    ) + "Write it in readings.csv, or say it without braces."
                )
                : (
                    $"No sport of {client.Name}'s asks for anything of the {name}.",
                    Others(ranges.Demands.Select(d => MeasureTexts.NameOf(d.Measure.Motion, d.Side)))
                        + "Write it under 'demands' of the sport, or say it without braces."
                );

            string Others(IEnumerable<string> there) =>
                Nearest.To(name, there.Distinct().Order(StringComparer.Ordinal)) is { } nearest
                    ? $"Did you mean the {nearest}? "
                    : "";
        }
    }
}
