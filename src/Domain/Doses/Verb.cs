namespace Gradus.Domain;

/// <summary>What is done. The order is that of <c>dose.md</c>.</summary>
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

public static class Verbs
{
    /// <summary>All verbs, in the order of the language.</summary>
    public static readonly Series<Verb> All = [Verb.Hold, Verb.Breathe, Verb.Press, Verb.Pull, Verb.Raise, Verb.Move, Verb.Carry];

    /// <summary>hold and breathe: the seconds count as stretch.</summary>
    public static bool IsStretch(this Verb verb) => verb is Verb.Hold or Verb.Breathe;

    /// <summary>press, pull and raise: the seconds count as contraction.</summary>
    public static bool IsContraction(this Verb verb) => verb is Verb.Press or Verb.Pull or Verb.Raise;

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
            _ => throw new ArgumentOutOfRangeException(nameof(verb)),
        };

    public static bool Takes(this Verb verb, Amount amount) =>
        amount switch
        {
            Amount.Span => verb is not Verb.Carry,
            Amount.Breaths => verb.IsStretch(),
            Amount.Reps => verb is Verb.Move,
            Amount.Metres => verb is Verb.Carry,
            _ => false,
        };

    public static bool Takes(this Verb verb, Effort? effort) =>
        effort switch
        {
            null => true,
            Effort.Felt => !verb.IsStretch(),
            _ => verb.IsContraction(),
        };
}
