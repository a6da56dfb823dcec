namespace Gradus.Tests.Reading;

/// <summary>The exercises of the golden practice. The sway has every key, and leads to an easier and a harder one.</summary>
internal static class GoldenExercises
{
    public static readonly (string Path, string Text)[] All =
    [
        (
            "exercises/calf-brace.md",
            """
            ---
            title: Calf brace
            trains: ankle dorsiflexion
            stage: strengthen
            position: standing
            dose: 2 x press 10 s at 50%, rest 20 s, each side
            signs: [sharp-stab, calf-pull]
            not-with: [calf-strain]
            ---
            ## Do
            Push for {press}.

            """
        ),
        (
            "exercises/calf-sway.md",
            """
            ---
            title: Calf sway
            trains: ankle dorsiflexion
            stage: gain
            position: standing
            equipment: [wall, step]
            loads: [ankle, other knee]
            dose: 2-3 x hold 30-60 s, rest 20 s, each side
            needs: { knee flexion: 90, lying ankle dorsiflexion: 4.5 }
            # As far as the client's own range goes.
            signs: [calf-pull, sharp-stab]
            not-with: [calf-strain]
            clear-first: [faint-spells]
            easier: heel-sink
            harder: calf-brace
            properties: [balance, head-low]
            ---
            The rear foot *stays* down.

            ## Set up
            Stand at a wall.

            ## Do
            1. Lean in for {hold}.
            2. See [the sink](heel-sink.md).

            ## Afterwards
            Walk about.

            """
        ),
        (
            "exercises/heel-sink.md",
            """
            ---
            title: Heel sink
            trains: ankle dorsiflexion
            stage: prepare
            position: sitting
            dose: hold 20 s, each side
            signs: [calf-pull, sharp-stab]
            not-with: [calf-strain]
            ---
            ## Do
            Let the heel sink.

            """
        ),
    ];
}
