namespace Gradus.Domain;

/// <summary>What is done. The order is that of <c>dose-line.md</c>.</summary>
public enum Verb
{
    /// <summary>Stays, relaxed.</summary>
    Hold,

    /// <summary>Breathes slowly.</summary>
    Breathe,

    /// <summary>Pushes still with the muscles being stretched.</summary>
    Press,

    /// <summary>Pulls still deeper into the range.</summary>
    Pull,

    /// <summary>Lifts the limb off its support at the end of its range and keeps it.</summary>
    Raise,

    /// <summary>Repeats a movement.</summary>
    Move,

    /// <summary>Walks with a load.</summary>
    Carry,
}

/// <summary>What the seconds of a verb count as.</summary>
public enum WorkKind
{
    Stretch,
    Contraction,
    Movement,
}

public static class Verbs
{
    /// <summary>All verbs, in the order of the language.</summary>
    public static readonly Series<Verb> All = [Verb.Hold, Verb.Breathe, Verb.Press, Verb.Pull, Verb.Raise, Verb.Move, Verb.Carry];

    /// <summary>hold and breathe: the seconds count as stretch.</summary>
    public static bool IsStretch(this Verb verb) => verb.Kind() == WorkKind.Stretch;

    /// <summary>press, pull and raise: the seconds count as contraction.</summary>
    public static bool IsContraction(this Verb verb) => verb.Kind() == WorkKind.Contraction;

    public static WorkKind Kind(this Verb verb) =>
        verb switch
        {
            Verb.Hold or Verb.Breathe => WorkKind.Stretch,
            Verb.Press or Verb.Pull or Verb.Raise => WorkKind.Contraction,
            Verb.Move or Verb.Carry => WorkKind.Movement,
        };

    /// <summary>As a dose line writes it.</summary>
    public static string Word(this Verb verb) =>
        verb switch
        {
            Verb.Hold => "hold",
            Verb.Breathe => "breathe",
            Verb.Press => "press",
            Verb.Pull => "pull",
            Verb.Raise => "raise",
            Verb.Move => "move",
            Verb.Carry => "carry",
        };

    public static StepKind Step(this Verb verb) =>
        verb switch
        {
            Verb.Hold => StepKind.Hold,
            Verb.Breathe => StepKind.Breathe,
            Verb.Press => StepKind.Press,
            Verb.Pull => StepKind.Pull,
            Verb.Raise => StepKind.Raise,
            Verb.Move => StepKind.Move,
            Verb.Carry => StepKind.Carry,
        };

    public static bool Takes(this Verb verb, Amount amount) =>
        verb switch
        {
            Verb.Hold or Verb.Breathe => amount.Unit is AmountUnit.Seconds or AmountUnit.Breaths,
            Verb.Press or Verb.Pull or Verb.Raise => amount.Unit is AmountUnit.Seconds,
            Verb.Move => amount.Unit is AmountUnit.Seconds or AmountUnit.Reps,
            Verb.Carry => amount.Unit is AmountUnit.Metres,
        };

    public static bool Takes(this Verb verb, Effort? effort) =>
        effort?.Match(_ => verb.IsContraction(), _ => verb.IsContraction(), _ => !verb.IsStretch()) ?? true;
}
