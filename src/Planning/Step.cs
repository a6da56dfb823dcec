using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>One timed piece of a session, as one item of its list.</summary>
/// <param name="Letter">Of its exercise in the session; of a transition of the one it leads to.</param>
/// <param name="Words">What the item says: letter, verb and side.</param>
/// <param name="Detail">Set, effort and load, or empty.</param>
public sealed record Step(SessionStep Timed, string Letter, string Words, string Detail)
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

    /// <summary>As a page writes it for the script that leads through the session: the kind and the letter of the exercise, then
    /// what there is of side, percent, felt effort, breaths, set, repetitions and load, each behind a letter of its own: "press E
    /// l p50 s1". The load comes last, because it may have blanks.</summary>
    public string Data()
    {
        var data = new StringBuilder(Kebab.Of(Kind.ToString())).Append(' ').Append(Letter);
        if (Side is { } side)
            data.Append(side == Domain.Side.Left ? " l" : " r");
        Add('p', Percent);
        Add('f', Felt);
        Add('b', Breaths);
        Add('s', Set);
        Add('n', Repetitions);
        if (Load is { } load)
            data.Append(" w").Append(load);
        return data.ToString();

        void Add(char name, decimal? value)
        {
            if (value is { } number)
                data.Append(CultureInfo.InvariantCulture, $" {name}{number:0.#}");
        }
    }
}
