namespace Gradus.Tests.Reading;

/// <summary>The files of the golden practice.</summary>
internal static class GoldenFiles
{
    public static readonly (string Path, string Text)[] All =
    [
        (
            "practice.md",
            """
            ---
            name: Sluice Lane épée club
            coach: Hesper Quill
            contact: { email: hesper@example.org, phone: "+44 1632 960077" }
            language: en
            emergency:
              GB: { call: "999", unsure: "111" }
              IE: { call: "112", text: 999 works as well. }
            settings:
              breath: 8 s
              switch: 12 s
              repetition: 3 s
              carry: 2 m
              get-ready: 6 s
              transition: 11 s
              transition-change: 31 s
              transition-standing: 1 min 1 s
              lighter-share: 50 %
            ---
            These programmes are exercise advice. They do not replace advice from a doctor.

            """
        ),
        (
            "conditions.yaml",
            """
            - id: calf-strain
              name: a calf strain in the last 6 weeks
              question: Have you strained a calf in the last 6 weeks?
              where: ankle
              sided: yes
            - id: faint-spells
              name: fainting or dizzy spells
              question: Have you fainted or felt dizzy in the last 3 months?
              where: whole body
            - id: sore-wrist
              name: a sore wrist
              question: Is a wrist of yours sore?
              where: wrist
              sided: yes

            """
        ),
        (
            "sports/epee.yaml",
            """
            name: Épée
            stance: Which hand holds your weapon?
            roles:
              weapon arm: right
              free arm: left
              front leg: right
              rear leg: left
            demands:
              - position: recovery
                motion: lying ankle dorsiflexion
                side: rear leg
                mode: passive
                at-least: 12.5
                because: The heel stays down while you come back on guard.
              - position: salute
                motion: thoracic rotation
                at-least: 30
                because: The chest turns to the opponent.

            """
        ),
        (
            "cautions/calf-pull.md",
            """
            ---
            title: A broad pull in the calf
            kind: expect
            ---
            That is the stretch.

            """
        ),
        (
            "cautions/dull-ache.md",
            """
            ---
            title: A dull ache in the joint
            kind: ease-off
            attaches-to: { stage: gain, position: standing, trains: ankle dorsiflexion, loads: ankle, property: balance }
            ---
            Go back a little.

            """
        ),
        (
            "cautions/sharp-stab.md",
            """
            ---
            title: A sharp stab
            kind: stop
            ---
            End the exercise.

            """
        ),
        (
            "cautions/slow-breath.md",
            """
            ---
            title: Keep breathing
            kind: take-care
            ---
            Never hold your breath.

            """
        ),
        (
            "clients/ansel/client.yaml",
            """
            name: Ansel Wherry
            sport: epee
            stance: left
            born: 1988-02-29
            country: IE
            language: en
            zone: Europe/Dublin
            days: [Thu, Mon]
            hour: "07:05"
            minutes: 35
            equipment: [wall, step]
            agreed: { training: 2026-11-02, guardian: 2026-11-03 }
            answered: 2026-11-04
            answers:
              calf-strain: no
              faint-spells: yes
              sore-wrist: yes, left
            clearances:
              - condition: faint-spells
                by: her cardiologist
                on: 2026-11-05
                until: 2031-11-05
                limit: [effort at most 60 %, hold at most 2 min, no end-range trunk bending, not lying on the front]
              - condition: faint-spells
                by: the club doctor
                on: 2026-11-06
                until: 2031-11-06
                limit: hold at most 90 s

            """
        ),
        (
            "clients/ansel/answers.yaml",
            """
            answered: 2026-11-05
            answers:
              heart-disease: no
              metabolic-disease: no
              kidney-disease: no
              signs-or-symptoms: no
              breathless-at-night: no
              dizzy-spells: no
              calf-pain-or-swelling: no
              blood-clot: no
              hot-swollen-joint: no
              fever: no
              regularly-active: yes
              raised-blood-pressure: no
              bone-thinning: no
              joint-replacement: no
              recent-surgery: no
              recent-injury: no
              back-pain-with-leg-signs: no
              very-mobile-joints: no
              pregnancy-or-birth: no
              blood-thinners: no
              eye-pressure-or-retina: no
              hernia: no
              asthma: no
              insulin: no
              seizures: no
              falls: no
              numb-feet: no
              pain-now: [2 left wrist, 1 neck]

            """
        ),
        (
            "clients/ansel/programme.md",
            """
            ---
            title: A lower guard
            start: 2027-01-04
            weeks: 6
            lighter: [5, 3]
            sessions:
              - name: Rear ankle
                days: [Thu, Mon]
                do:
                  - use: calf-sway
                    side: Rear  leg
                    by-week:
                      4: 3 x hold 45 s, rest 30 s
                      2: 2 x hold 30 s
                    from-week: 2
                    until-week: 5
                    keep-when-short: yes
                    move-on: [pain at most 2, two sessions running]
                  - use: heel-sink
              - name: Every other day
                days: every 2 days
                do:
                  - use: heel-sink
              - name: Now and then
                days: 3 a week, a day between
                do:
                  - use: heel-sink
              - name: Warm
                days: before play
                do:
                  - use: heel-sink
            ---
            Ansel, keep the [sway](../../exercises/calf-sway.md) slow.

            """
        ),
        .. GoldenExercises.All,
    ];
}
