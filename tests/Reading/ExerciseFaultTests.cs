namespace Gradus.Tests.Reading;

public sealed class ExerciseFaultTests
{
    private const string Table = """
        exercises/calf-sway.md
        - stage: gain
        + stage: gian
        exercises/calf-sway.md:4:8 value-wrong «gian»
        'gian' is not a stage.
        Did you mean 'gain'?

        exercises/calf-sway.md
        - stage: gain
        + stage: [gain]
        exercises/calf-sway.md:4:8 value-wrong «[»
        'stage' is a text, but here is a list.
        Write it on one line; put it in quotation marks if it holds a colon, a bracket or a brace.

        exercises/calf-sway.md
        - stage: gain
        + stage:
        exercises/calf-sway.md:4:7 value-wrong at the end
        'stage' has no value.
        Write it after the colon; a key that is not needed can be taken out.

        exercises/calf-sway.md
        - stage: gain
        + stage: stretching
        exercises/calf-sway.md:4:8 value-wrong «stretching»
        'stretching' is not a stage.
        Write one of: prepare, gain, strengthen, control, load.

        exercises/calf-sway.md
        - position: standing
        + position: on one leg
        exercises/calf-sway.md:5:11 value-wrong «on one leg»
        'on one leg' is not a position.
        Write one of: supine, prone, side-lying, hands-and-knees, kneeling, half-kneeling, floor-sitting, sitting, standing, split-stance, squat, hanging.

        exercises/calf-sway.md
        - position: standing
        + position: standing⏎cue: in front
        exercises/calf-sway.md:6:6 value-wrong «in front»
        'in front' is not a value of 'cue'.
        Write one of: foot in front, foot behind, knee down.

        exercises/calf-sway.md
        - position: standing
        + position: supine⏎cue: foot in front
        exercises/calf-sway.md:6:6 value-wrong «foot in front»
        'cue' says where the foot or knee of the working leg is, and here no leg stands in front of the other.
        Take 'cue' out; it may stand with the position half-kneeling, split-stance or standing, where a leg is trained.

        exercises/calf-sway.md
        - equipment: [wall, step]
        + equipment: wall
        exercises/calf-sway.md:6:12 value-wrong «w»
        'equipment' is a list, but here is a text.
        Write it in square brackets: equipment: [one, another].

        exercises/calf-sway.md
        - equipment: [wall, step]
        + equipment: { wall: 1 }
        exercises/calf-sway.md:6:12 value-wrong «{»
        'equipment' is a list, but here is a group of keys.
        Write it in square brackets: equipment: [one, another].

        exercises/calf-sway.md
        - loads: [ankle, other knee]
        + loads: [ankel, other kene]
        exercises/calf-sway.md:7:9 value-wrong «ankel»
        'ankel' is no region of the body that Gradus knows.
        Did you mean 'ankle'?
        exercises/calf-sway.md:7:22 value-wrong «kene»
        'kene' is no region of the body that Gradus knows.
        Did you mean 'knee'?

        exercises/calf-sway.md
        - properties: [balance, head-low]
        + properties: [balanse, upside-down]
        exercises/calf-sway.md:16:14 value-wrong «balanse»
        'balanse' is no property of an exercise.
        Did you mean 'balance'?
        exercises/calf-sway.md:16:23 value-wrong «upside-down»
        'upside-down' is no property of an exercise.
        Write one of: head-low, weight-on-hands, trunk-end-range, balance, jumping, mid-range, worn-load, sits-on-heels.

        exercises/calf-sway.md
        - needs: { knee flexion: 90, lying ankle dorsiflexion: 4.5 }
        + needs: knee flexion 90
        exercises/calf-sway.md:9:8 value-wrong «k»
        Here should stand the keys of needs, but there is a text.
        Write each key on its own line, with a colon and its value.

        exercises/calf-sway.md
        - knee flexion: 90,
        + knee flexion: 010,
        exercises/calf-sway.md:9:24 value-wrong «010»
        '010' is no number for 'knee flexion'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        exercises/calf-sway.md
        - knee flexion: 90,
        + knee flexion: 1_000,
        exercises/calf-sway.md:9:24 value-wrong «1_000»
        '1_000' is no number for 'knee flexion'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        exercises/calf-sway.md
        - { knee flexion: 90, lying ankle dorsiflexion: 4.5 }
        + { knee flexion: "2,5" }
        exercises/calf-sway.md:9:24 value-wrong «"2,5"»
        '2,5' is no number for 'knee flexion'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        exercises/calf-sway.md
        - { knee flexion: 90, lying ankle dorsiflexion: 4.5 }
        + { knee flexion: 2,5 }
        exercises/calf-sway.md:9:26 value-wrong «5»
        The comma before '5' begins a new key here.
        Write decimals with a point, as 2.5.

        exercises/calf-sway.md
        - knee flexion: 90,
        + knee flexion: 0x10,
        exercises/calf-sway.md:9:24 value-wrong «0x10»
        '0x10' is no number for 'knee flexion'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        exercises/calf-sway.md
        - knee flexion: 90,
        + knee flexion: -5,
        exercises/calf-sway.md:9:24 value-wrong «-5»
        '-5' is no number for 'knee flexion'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        exercises/calf-sway.md
        - knee flexion: 90,
        + knee flexion: 9٠,
        exercises/calf-sway.md:9:24 value-wrong «9٠»
        '9٠' is no number for 'knee flexion'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        exercises/calf-sway.md
        - knee flexion: 90,
        + knee flexion: 90 deg,
        exercises/calf-sway.md:9:24 value-wrong «90 deg»
        '90 deg' is no number for 'knee flexion'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        exercises/calf-sway.md
        - title: Calf sway
        + title: Calf sway #2
        exercises/calf-sway.md:2:18 value-wrong «#2»
        'title' ends before the #, because a # after a space begins a comment.
        Put the text in quotation marks if the # belongs to it, or a space behind the # if it is a comment.

        exercises/calf-sway.md
        - title: Calf sway
        + title: "  "
        exercises/calf-sway.md:2:8 value-wrong «"»
        'title' has no value.
        Write it after the colon; a key that is not needed can be taken out.

        exercises/calf-sway.md
        - title: Calf sway
        + title: { name: Calf sway }
        exercises/calf-sway.md:2:8 value-wrong «{»
        'title' is a text, but here is a group of keys.
        Write it on one line; put it in quotation marks if it holds a colon, a bracket or a brace.

        exercises/calf-brace.md
        - rest 20 s, each side
        + rest 20 s, each side # hard
        exercises/calf-brace.md:6:51 value-wrong «# hard»
        A comment stands on the line of a dose.
        Put it on a line of its own, or the dose in quotation marks if the # belongs to it.

        exercises/calf-brace.md
        - dose: 2 x press 10 s at 50%, rest 20 s, each side
        + dose: { 2 x press 10 s at 50% }
        exercises/calf-brace.md:6:7 value-wrong «{»
        Here should stand a dose line without braces.
        Write it as in 3 x hold 30 s, rest 20 s.

        exercises/calf-brace.md
        - dose: 2 x press 10 s at 50%, rest 20 s, each side
        + dose: 2 x press 10 s at 50%,⏎  rest 20 s, each side
        exercises/calf-brace.md:6:7 value-wrong «2 x press 10 s at 50%,»
        This dose takes more than one line.
        Write it on one line, behind its key.

        exercises/calf-brace.md
        - dose: 2 x press 10 s at 50%, rest 20 s, each side
        + dose: [2 x press 10 s]
        exercises/calf-brace.md:6:7 value-wrong «[»
        'dose' is a text, but here is a list.
        Write it on one line; put it in quotation marks if it holds a colon, a bracket or a brace.

        exercises/calf-brace.md
        - dose: 2 x press 10 s at 50%, rest 20 s, each side
        + dose: "2 x press 10 s" # hm
        exercises/calf-brace.md:6:24 value-wrong «# hm»
        A comment stands on the line of a dose.
        Put it on a line of its own, or the dose in quotation marks if the # belongs to it.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
