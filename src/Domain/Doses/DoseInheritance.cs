namespace Gradus.Domain;

/// <summary>What a line of a programme takes from the dose of its exercise, and what a programme's side changes. Either may make
/// a dose longer than a line may be: ask DoseBounds.</summary>
public static class DoseInheritance
{
    /// <summary>The dose of a week's line: its own work, its own terms, and from the exercise the terms it does not name. At most
    /// one side term stands, so a line that names one takes none. Terms with nothing to act on in the new dose fall
    /// away.</summary>
    public static Dose Complete(Dose line, Dose exercise)
    {
        var (own, other) = (line.Terms, exercise.Terms);
        return TermEffect.DropIdle(
            line with
            {
                Terms = new(
                    own.Rest ?? other.Rest,
                    own.Pause ?? other.Pause,
                    own.Switch ?? other.Switch,
                    own.Side ?? other.Side,
                    own.Plus ?? other.Plus,
                    own.Tempo ?? other.Tempo,
                    own.Load ?? other.Load,
                    own.Leave ?? other.Leave
                ),
            }
        );
    }

    /// <summary>The dose on another side: plus and switch fall away, and whatever then has nothing to act on.</summary>
    public static Dose WithSide(Dose dose, SideTerm side) =>
        TermEffect.DropIdle(dose with { Terms = dose.Terms with { Side = side, Plus = null, Switch = null } });
}
