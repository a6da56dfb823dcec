namespace Gradus.Tests.Reading;

public sealed class KeyFaultTests
{
    private const string Table = """
        practice.md
        - coach: Hesper Quill
        + coahc: Hesper Quill
        practice.md:3:1 key-unknown «coahc»
        'coahc' is no key of the practice.
        Did you mean 'coach'?

        practice.md
        - language: en⏎
        +
        practice.md:2:1 key-missing «n»
        'language' is missing: the practice needs it.
        Add a line 'language:' with its value.

        practice.md
        - language: en
        + language: en⏎language: en
        practice.md:6:1 key-unknown «language»
        'language' appears twice.
        Keep one of the two.

        practice.md
        - language: en
        + colour: green⏎language: en
        practice.md:5:1 key-unknown «colour»
        'colour' is no key of the practice.
        Take it out. The keys here are: name, coach, contact, language, emergency, settings.

        practice.md
        -   breath: 8 s
        +   braeth: 8 s
        practice.md:10:3 key-unknown «braeth»
        'braeth' is no key of settings.
        Did you mean 'breath'?

        practice.md
        - hesper@example.org, phone: "+44 1632 960077"
        + hesper@example.org
        practice.md:4:12 key-missing «e»
        'phone' is missing: contact needs it.
        Add a line 'phone:' with its value.

        conditions.yaml
        -   question: Is a wrist of yours sore?⏎
        +
        conditions.yaml:10:3 key-missing «i»
        'question' is missing: a condition needs it.
        Add a line 'question:' with its value.

        conditions.yaml
        -   name: a sore wrist
        +   nmae: a sore wrist
        conditions.yaml:11:3 key-unknown «nmae»
        'nmae' is no key of a condition.
        Did you mean 'name'?

        sports/epee.yaml
        - stance: Which
        + stanse: Which
        sports/epee.yaml:2:1 key-unknown «stanse»
        'stanse' is no key of a sport.
        Did you mean 'stance'?

        sports/epee.yaml
        -     at-least: 30⏎
        +
        sports/epee.yaml:15:5 key-missing «p»
        'at-least' is missing: a demand needs it.
        Add a line 'at-least:' with its value.

        cautions/dull-ache.md
        - stage: gain,
        + stag: gain,
        cautions/dull-ache.md:4:16 key-unknown «stag»
        'stag' is no key of attaches-to.
        Did you mean 'stage'?

        cautions/sharp-stab.md
        - kind: stop⏎
        +
        cautions/sharp-stab.md:2:1 key-missing «t»
        'kind' is missing: a caution needs it.
        Add a line 'kind:' with its value.

        exercises/calf-brace.md
        - stage: strengthen⏎
        +
        exercises/calf-brace.md:2:1 key-missing «t»
        'stage' is missing: an exercise needs it.
        Add a line 'stage:' with its value.

        exercises/calf-brace.md
        - trains: ankle dorsiflexion
        + Trains: ankle dorsiflexion
        exercises/calf-brace.md:3:1 key-unknown «Trains»
        'Trains' is no key of an exercise.
        Did you mean 'trains'?

        exercises/calf-brace.md
        - not-with: [calf-strain]
        + notwith: [calf-strain]
        exercises/calf-brace.md:8:1 key-unknown «notwith»
        'notwith' is no key of an exercise.
        Did you mean 'not-with'?

        exercises/calf-brace.md
        - title: Calf brace⏎
        +
        exercises/calf-brace.md:2:1 key-missing «t»
        'title' is missing: an exercise needs it.
        Add a line 'title:' with its value.

        exercises/calf-brace.md
        - trains: ankle dorsiflexion
        + side: left⏎trains: ankle dorsiflexion
        exercises/calf-brace.md:3:1 key-unknown «side»
        'side' is no key of an exercise.
        Take it out. The keys here are: title, trains, stage, position, cue, measure, equipment, loads, dose, needs, signs, not-with, clear-first, easier, harder, properties, start, end, pose, feel.

        clients/ansel/client.yaml
        - zone: Europe/Dublin⏎
        +
        clients/ansel/client.yaml:1:1 key-missing «n»
        'zone' is missing: a client needs it.
        Add a line 'zone:' with its value.

        clients/ansel/client.yaml
        - , guardian: 2026-11-03
        + , gaurdian: 2026-11-03
        clients/ansel/client.yaml:12:33 key-unknown «gaurdian»
        'gaurdian' is no key of agreed.
        Did you mean 'guardian'?

        clients/ansel/client.yaml
        -     by: the club doctor⏎
        +
        clients/ansel/client.yaml:24:5 key-missing «c»
        'by' is missing: a clearance needs it.
        Add a line 'by:' with its value.

        clients/ansel/programme.md
        - weeks: 6⏎
        +
        clients/ansel/programme.md:2:1 key-missing «t»
        'weeks' is missing: a programme needs it.
        Add a line 'weeks:' with its value.

        clients/ansel/programme.md
        - keep-when-short: yes
        + keep-when-shrot: yes
        clients/ansel/programme.md:17:9 key-unknown «keep-when-shrot»
        'keep-when-shrot' is no key of a use of an exercise.
        Did you mean 'keep-when-short'?

        clients/ansel/programme.md
        -     days: every 2 days⏎
        +
        clients/ansel/programme.md:20:5 key-missing «n»
        'days' is missing: a session needs it.
        Add a line 'days:' with its value.

        clients/ansel/programme.md
        -     do:⏎      - use: heel-sink⏎---
        + ---
        clients/ansel/programme.md:28:5 key-missing «n»
        'do' is missing: a session needs it.
        Add a line 'do:' with its value.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
