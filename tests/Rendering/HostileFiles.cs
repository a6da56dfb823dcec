namespace Gradus.Tests.Rendering;

/// <summary>The files of the hostile practice. What stands in double brackets is the name of a place that somebody writes
/// in.</summary>
internal static class HostileFiles
{
    public static readonly (string Path, string Text)[] All =
    [
        (
            "practice.md",
            """
            ---
            name: "⟦practice name⟧"
            coach: "⟦coach⟧"
            contact: { email: "⟦email⟧", phone: "+44 (1632) 960-077" }
            language: en
            emergency: { GB: { call: "999", text: "⟦emergency⟧" } }
            settings: { large-step: 500 % }
            ---
            ⟦scope⟧

            ## ⟦scope heading⟧

            - ⟦scope item⟧
            - *⟦scope emphasis⟧*

            """
        ),
        (
            "conditions.yaml",
            """
            - id: calf-strain
              name: "⟦condition⟧"
              question: "⟦question⟧"
              where: ankle
              sided: yes
            - id: faint-spells
              name: "⟦other condition⟧"
              question: "⟦other question⟧"
              where: whole body

            """
        ),
        (
            "motions.yaml",
            """
            - { id: reach, name: "⟦ankle motion⟧", how: "⟦motion how⟧", error: 2, reference: 30 }

            """
        ),
        (
            "sports/epee.yaml",
            """
            name: "⟦sport⟧"
            stance: "⟦stance question⟧"
            roles: { "⟦weapon arm⟧": right, "⟦free arm⟧": left, "⟦front leg⟧": right, "⟦rear leg⟧": left }
            demands:
              - { position: "⟦demand position⟧", motion: "⟦ankle motion⟧", side: "⟦rear leg⟧", at-least: 20, because: "⟦demand reason⟧" }

            """
        ),
        .. Caution("pull", "expect"),
        .. Caution("stab", "stop"),
        .. Caution("ache", "ease-off"),
        .. Caution("breath", "take-care"),
        (
            "exercises/sway.md",
            """
            ---
            title: "⟦sway title⟧"
            trains: "⟦ankle motion⟧"
            stage: gain
            position: standing
            equipment: ["⟦equipment⟧", "⟦other equipment⟧"]
            loads: [ankle]
            dose: 2-3 x hold 30-60 s, rest 20 s, each side
            signs: [pull, stab, ache, breath]
            not-with: [calf-strain, recent-surgery, recent-injury, very-mobile-joints, raised-blood-pressure, pregnancy-or-birth, eye-pressure-or-retina, hernia]
            clear-first: [faint-spells]
            ---
            ⟦sway why⟧

            ## Set up
            ⟦sway set up⟧

            1. ⟦sway first⟧
            2. ⟦sway second⟧
               - ⟦sway inner⟧

            ## Do
            ⟦sway do⟧ {hold}. **⟦sway strong⟧**

            [⟦sway link⟧](press.md) [⟦web link⟧](https://example.org/?a='"onmouseover="touched=9"<script>)

            ![⟦picture⟧](calf.png)

            ## ⟦sway heading⟧

            ⟦sway more⟧

            ### ⟦sway deeper⟧

                ⟦sway code⟧

            > ⟦sway quote⟧

            """
        ),
        (
            "exercises/press.md",
            """
            ---
            title: "⟦press title⟧"
            trains: ankle dorsiflexion
            stage: gain
            position: standing
            dose: 2 x move 5 reps at effort 5, each side, load 8 kg
            signs: [pull, stab]
            not-with: [calf-strain, recent-surgery, recent-injury, very-mobile-joints, raised-blood-pressure, pregnancy-or-birth, eye-pressure-or-retina, hernia]
            ---
            ## Do
            ⟦press do⟧

            """
        ),
        (
            "clients/ansel/client.yaml",
            """
            name: "⟦client⟧"
            sport: epee
            stance: left
            born: 1988
            country: GB
            language: en
            zone: Europe/Dublin
            days: [Mon]
            minutes: 60
            equipment: ["⟦equipment⟧", "⟦other equipment⟧"]
            agreed: { training: 2026-11-02 }
            answered: 2026-11-02
            answers: { calf-strain: no, faint-spells: yes }
            clearances:
              - { condition: faint-spells, by: "⟦clinician⟧", on: 2026-11-05, until: 2031-11-05, limit: effort at most 60 % }

            """
        ),
        ("clients/ansel/answers.yaml", Tests.Domain.FloorAnswers.Text(new(2026, 11, 2), _ => false)),
        (
            "clients/ansel/programme.md",
            """
            ---
            title: "⟦programme title⟧"
            start: 2027-01-04
            weeks: 3
            sessions:
              - name: "⟦session⟧"
                days: [Mon]
                do:
                  - { use: sway, side: "⟦rear leg⟧", by-week: { 1: 2 x hold 30 s, 2: 2 x hold 45 s }, move-on: ["⟦move on⟧"], keep-when-short: yes }
                  - use: press
            move-on: { gain: ["⟦move on from a stage⟧"] }
            alternate: [{ name: "⟦other session⟧", instead-of: "⟦session⟧", kind: flare, do: [{ rounds: 2, rest: 20 s, of: [{ use: sway }, { use: press }] }] }]
            ---
            ⟦letter⟧

            # ⟦letter heading⟧

            On the piste.

            ⟦letter end⟧

            """
        ),
        ("clients/ansel/notes.md", "⟦notes⟧\n"),
        ("glossary.yaml", "piste: \"⟦explanation⟧\"\n"),
    ];

    private static (string, string)[] Caution(string id, string kind) =>
        [
            (
                $"cautions/{id}.md",
                $"""
                ---
                title: "⟦{id} title⟧"
                kind: {kind}
                ---
                ⟦{id} body⟧

                - ⟦{id} item⟧

                """
            ),
        ];
}
