using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>One timed piece of a session, as one item of its list.</summary>
/// <param name="Words">What the item says: verb, exercise and side.</param>
/// <param name="Detail">Set, effort and load, or empty.</param>
public sealed record Step(SessionStep Timed, string Words, string Detail)
{
    public StepKind Kind => Timed.Kind;

    /// <summary>The exercise it belongs to; of a transition the one it leads to.</summary>
    public ExerciseId Exercise => Timed.Exercise;

    /// <summary>The side at work; of a switch or a transition the one it leads to; null for both or none.</summary>
    public Side? Side => Timed.Side;

    public Seconds Seconds => Timed.Seconds;

    /// <summary>Of the hardest that the client could do; null where none is written. Of a ramp it may be a fraction.</summary>
    public decimal? Percent => Work?.EffortPercent;

    /// <summary>From 0 to 10; null where none is written.</summary>
    public int? Felt => Work?.FeltEffort;

    /// <summary>Slow breaths that the step lasts; null where it is not counted in them.</summary>
    public int? Breaths => Work?.Action.In(AmountUnit.Breaths);

    /// <summary>Which set of its exercise and side it belongs to, from 1; null where it is no work.</summary>
    public int? Set => Work?.Place.Set;

    /// <summary>Repetitions in it; null where it is not counted in them.</summary>
    public int? Repetitions => Work?.Action.In(AmountUnit.Reps);

    /// <summary>What is held or worn; null where there is nothing.</summary>
    public string? Load => Timed.Work?.Dose.Load;

    private TimelineStep.Work? Work => Timed.Work?.Piece;

    /// <summary>As a page writes it for the script that leads through the session, name and value; what there is none of is an
    /// empty text.</summary>
    public Series<(string Name, string Value)> Attributes() =>
        PageData
            .OfStep.Zip<string, string>([
                Kebab.Of(Kind.ToString()),
                Exercise.Text,
                Side?.Word() ?? "",
                Percent?.ToString("0.#", CultureInfo.InvariantCulture) ?? "",
                Felt?.ToString(CultureInfo.InvariantCulture) ?? "",
                Breaths?.ToString(CultureInfo.InvariantCulture) ?? "",
                Set?.ToString(CultureInfo.InvariantCulture) ?? "",
                Repetitions?.ToString(CultureInfo.InvariantCulture) ?? "",
                Load ?? "",
            ])
            .ToSeries();
}
