namespace Gradus.Tests.Reading;

public sealed class IdFaultTests
{
    private const string Table = """
        conditions.yaml
        - id: calf-strain
        + id: Calf-Strain
        conditions.yaml:1:7 value-wrong «Calf-Strain»
        'Calf-Strain' cannot be an id.
        Use small letters, digits and hyphens, a letter first; no device name, as con or nul.

        conditions.yaml
        - id: sore-wrist
        + id: nul
        clients/ansel/client.yaml:17:3 condition-unknown «sore-wrist»
        There is no condition 'sore-wrist' in this practice.
        Add it to conditions.yaml, or take its name out here.
        conditions.yaml:10:7 value-wrong «nul»
        'nul' cannot be an id.
        Use small letters, digits and hyphens, a letter first; no device name, as con or nul.

        conditions.yaml
        - id: sore-wrist
        + id: faint-spells
        clients/ansel/client.yaml:17:3 condition-unknown «sore-wrist»
        There is no condition 'sore-wrist' in this practice.
        Add it to conditions.yaml, or take its name out here.
        conditions.yaml:10:7 value-wrong «faint-spells»
        There are two conditions 'faint-spells'.
        Give one of them another id, or take it out.

        sports/epee.yaml
        - motion: thoracic rotation
        + motion: thoracic rotaton
        sports/epee.yaml:16:13 id-unknown «thoracic rotaton»
        There is no motion 'thoracic rotaton' in this practice.
        Did you mean 'thoracic rotation'?

        sports/epee.yaml
        - side: rear leg
        + side: back leg
        sports/epee.yaml:11:11 id-unknown «back leg»
        'back leg' is no role of this sport.
        Write a name that stands under 'roles', or left or right.

        exercises/calf-brace.md
        - trains: ankle dorsiflexion
        + trains: calf stretch
        exercises/calf-brace.md:3:9 id-unknown «calf stretch»
        There is no motion 'calf stretch' in this practice.
        Write the name of a motion, as ankle dorsiflexion.

        exercises/calf-brace.md
        - signs: [sharp-stab, calf-pull]
        + signs: [sharp-stabb, calf-pull]
        exercises/calf-brace.md:7:9 id-unknown «sharp-stabb»
        There is no caution 'sharp-stabb' in this practice.
        Did you mean 'sharp-stab'?

        exercises/calf-brace.md
        - signs: [sharp-stab, calf-pull]
        + signs: [numbness, sharp-stab, calf-pull]
        exercises/calf-brace.md:7:9 id-unknown «numbness»
        There is no caution 'numbness' in this practice.
        Write cautions/numbness.md, or take its name out here.

        exercises/calf-brace.md
        - not-with: [calf-strain]
        + not-with: [calf-strian]
        exercises/calf-brace.md:8:12 condition-unknown «calf-strian»
        There is no condition 'calf-strian' in this practice.
        Did you mean 'calf-strain'?

        exercises/calf-sway.md
        - clear-first: [faint-spells]
        + clear-first: [bad-teeth]
        exercises/calf-sway.md:13:15 condition-unknown «bad-teeth»
        There is no condition 'bad-teeth' in this practice.
        Add it to conditions.yaml, or take its name out here.

        exercises/calf-sway.md
        - easier: heel-sink
        + easier: heal-sink
        exercises/calf-sway.md:14:9 id-unknown «heal-sink»
        There is no exercise 'heal-sink' in this practice.
        Did you mean 'heel-sink'?

        exercises/calf-sway.md
        - harder: calf-brace
        + harder: calf-raise
        exercises/calf-sway.md:15:9 id-unknown «calf-raise»
        There is no exercise 'calf-raise' in this practice.
        Did you mean 'calf-brace'?

        exercises/calf-sway.md
        - knee flexion: 90
        + nee flexion: 90
        exercises/calf-sway.md:9:10 id-unknown «nee flexion»
        There is no motion 'nee flexion' in this practice.
        Did you mean 'knee flexion'?

        cautions/dull-ache.md
        - trains: ankle dorsiflexion
        + trains: dorsiflexion
        cautions/dull-ache.md:4:57 id-unknown «dorsiflexion»
        There is no motion 'dorsiflexion' in this practice.
        Did you mean 'ankle dorsiflexion'?

        cautions/dull-ache.md
        - loads: ankle
        + loads: shin
        cautions/dull-ache.md:4:84 value-wrong «shin»
        'shin' is no region of the body that Gradus knows.
        Write one of: head, neck, upper-back, lower-back, chest, ribs, belly, whole body, shoulder, elbow, wrist, hand, groin, hip, thigh, knee, calf, ankle, foot.

        clients/ansel/client.yaml
        - sport: epee
        + sport: epe
        clients/ansel/client.yaml:2:8 id-unknown «epe»
        There is no sport 'epe' in this practice.
        Did you mean 'epee'?

        clients/ansel/client.yaml
        - sore-wrist: yes, left
        + sore-wirst: yes, left
        clients/ansel/client.yaml:17:3 condition-unknown «sore-wirst»
        There is no condition 'sore-wirst' in this practice.
        Did you mean 'sore-wrist'?

        clients/ansel/client.yaml
        -   - condition: faint-spells⏎    by: the club doctor
        +   - condition: faint-spell⏎    by: the club doctor
        clients/ansel/client.yaml:24:16 condition-unknown «faint-spell»
        There is no condition 'faint-spell' in this practice.
        Did you mean 'faint-spells'?

        clients/ansel/programme.md
        - use: calf-sway
        + use: calf-swya
        clients/ansel/programme.md:10:14 id-unknown «calf-swya»
        There is no exercise 'calf-swya' in this practice.
        Did you mean 'calf-sway'?
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
