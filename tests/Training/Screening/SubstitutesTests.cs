using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What is named instead of an exercise that is not for somebody: ContraindicatedExercise.md says "an easier version,
/// or another exercise for the same motion and stage, that nothing rules out, … if the client has the things for it and it is not
/// in the session already".</summary>
public sealed class SubstitutesTests
{
    private const string Fine = "";
    private const string Out = "not-with: [faint-spells]";
    private const string Hold = "2 x hold 30 s, each side";

    /// <summary>Who faints, whom nothing else ails.</summary>
    private const string Faints = "faint-spells: yes, calf-strain: no, sore-knee: no";

    /// <summary>The lunge is asked for, and not for who faints.</summary>
    private static readonly LittlePractice Lunge = Club
        .Empty.With(
            "conditions.yaml",
            """
            - { id: calf-strain, name: a calf strain, question: Have you strained a calf?, where: calf, sided: yes }
            - { id: faint-spells, name: faint spells, question: Do you faint?, where: whole body }
            - { id: sore-knee, name: a sore knee, question: Is a knee sore?, where: knee, sided: yes }
            """
        )
        .Exercise("lunge", Hold, Out + "\neasier: low-lunge", "supine");

    [Fact]
    public void Nothing_is_named_where_there_is_nothing_else() =>
        Assert.Null(Named(Lunge.Exercise("low-lunge", Hold, Out, "supine")));

    [Fact]
    public void The_easier_version_comes_before_another_for_the_same_motion() =>
        Assert.Equal(
            "low-lunge",
            Named(Lunge.Exercise("ankle-rock", Hold, Fine, "supine").Exercise("low-lunge", Hold, Fine, "supine"))
        );

    /// <summary>An easier one is easier whatever it is for.</summary>
    [Fact]
    public void The_easier_version_may_be_for_another_motion() =>
        Assert.Equal("low-lunge", Named(Lunge.Exercise("low-lunge", Hold, Fine, "supine", "hip extension")));

    [Fact]
    public void Where_the_easier_one_is_ruled_out_the_next_easier_is_named() =>
        Assert.Equal(
            "still-lunge",
            Named(
                Lunge
                    .Exercise("ankle-rock", Hold, Fine, "supine")
                    .Exercise("low-lunge", Hold, Out + "\neasier: still-lunge", "supine")
                    .Exercise("still-lunge", Hold, Fine, "supine")
            )
        );

    /// <summary>A circle of easier ones is an error of its own; here it must only come to an end.</summary>
    [Fact]
    public void Easier_ones_in_a_circle_come_to_an_end() =>
        Assert.Equal(
            "ankle-rock",
            Named(
                Lunge
                    .Exercise("ankle-rock", Hold, Fine, "supine")
                    .Exercise("low-lunge", Hold, Out + "\neasier: still-lunge", "supine")
                    .Exercise("still-lunge", Hold, Out + "\neasier: low-lunge", "supine")
            )
        );

    [Theory]
    [InlineData("ankle dorsiflexion", "gain", "other")]
    [InlineData("ankle dorsiflexion", "strengthen", null)]
    [InlineData("hip extension", "gain", null)]
    public void Another_is_for_the_same_motion_and_stage(string trains, string stage, string? named) =>
        Assert.Equal(
            named,
            Named(
                Lunge
                    .Exercise("low-lunge", Hold, Out, "supine")
                    .Exercise("other", Hold, Fine, "supine", trains)
                    .Edit("exercises/other.md", "stage: gain", $"stage: {stage}")
            )
        );

    [Fact]
    public void The_first_by_name_of_several_is_named() =>
        Assert.Equal(
            "ankle-rock",
            Named(
                Lunge
                    .Exercise("low-lunge", Hold, Out, "supine")
                    .Exercise("wall-rock", Hold, Fine, "supine")
                    .Exercise("ankle-rock", Hold, Fine, "supine")
            )
        );

    [Fact]
    public void What_is_in_the_session_already_is_not_named()
    {
        var practice = Lunge.Exercise("low-lunge", Hold, Fine, "supine").Exercise("ankle-rock", Hold, Fine, "supine");
        Assert.Equal("ankle-rock", Named(practice, sessions: ["- use: lunge\n- use: low-lunge"]));
        Assert.Null(Named(practice, sessions: ["- use: lunge\n- use: low-lunge\n- use: ankle-rock"]));
        Assert.Equal("low-lunge", Named(practice, sessions: ["- use: lunge", "- use: low-lunge"]));
    }

    [Theory]
    [InlineData("", null)]
    [InlineData("equipment: [band]\n", null)]
    [InlineData("equipment: [band, bench]\n", "low-lunge")]
    public void It_is_done_with_what_the_client_has(string has, string? named) =>
        Assert.Equal(named, Named(Lunge.Exercise("low-lunge", Hold, "equipment: [band, bench]", "supine"), client: has));

    /// <summary>It is tried in the weeks and on the side of the use: the right knee may be sore where the left is at
    /// work.</summary>
    [Theory]
    [InlineData("left", "yes, right", "low-lunge")]
    [InlineData("right", "yes, right", null)]
    [InlineData("left", "no", "low-lunge")]
    public void What_stands_against_it_on_that_side_counts(string side, string knee, string? named) =>
        Assert.Equal(
            named,
            Named(
                Lunge.Exercise("low-lunge", Hold, "loads: [knee]", "supine"),
                $"faint-spells: yes, calf-strain: no, sore-knee: \"{knee}\"",
                [$"- use: lunge\n  side: {side}"]
            )
        );

    [Fact]
    public void What_is_done_on_a_side_that_the_client_has_not_is_not_named() =>
        Assert.Null(Named(Lunge.Exercise("low-lunge", "2 x hold 30 s, on parry arm", Fine, "supine")));

    /// <summary>What a clinician asked to be spared is spared in what takes its place too.</summary>
    [Theory]
    [InlineData("joint: left knee", null)]
    [InlineData("joint: left shoulder", "low-lunge")]
    [InlineData("movement: hip extension", null)]
    public void What_is_to_be_spared_is_spared(string spared, string? named) =>
        Assert.Equal(
            named,
            Named(
                Lunge.Exercise("low-lunge", Hold, "loads: [knee]", "supine", "hip extension"),
                client: $"restrictions: [{{ by: her doctor, on: 2027-01-01, until: 2027-12-31, {spared} }}]\n"
            )
        );

    /// <summary>How hard people under 18 work is the practice's own to say; 'youth-effort' of practice-format.md.</summary>
    [Theory]
    [InlineData("born: 1990", "low-lunge")]
    [InlineData("born: 2011", null)]
    public void Who_is_under_18_is_not_named_what_is_too_hard(string born, string? named)
    {
        var practice = Lunge.Exercise("low-lunge", "2 x press 10 s at 90%, each side", Fine, "supine");
        Assert.Equal(named, Named(practice, born: born));
    }

    /// <summary>Where it came back sharp, twice, nobody knows what else would hurt: see <see cref="CameBackTests"/>.</summary>
    [Fact]
    public void After_pain_that_nobody_has_looked_at_nothing_is_named()
    {
        var practice = Lunge.Exercise("low-lunge", Hold, Fine, "supine");
        string[] twice = ["-20; lunge sharp left wrist", "-10; lunge sharp left wrist"];
        Assert.Null(Named(practice, log: twice));
        Assert.Equal("low-lunge", Named(practice, log: twice[..1]));
    }

    private static string? Named(
        LittlePractice practice,
        string answers = Faints,
        string[]? sessions = null,
        string client = "",
        string born = "born: 1990",
        string[]? log = null
    )
    {
        const string Path = "clients/ada/client.yaml";
        var read = practice
            .Member("ada", sessions ?? ["- use: lunge"], answers: $"{{ {answers} }}")
            .Edit(Path, "born: 1990", born)
            .Edit(Path, "clearances: []", client + "clearances: []")
            .Edit(Path, "agreed: { training: 2026-11-02 }", "agreed: { training: 2026-11-02, guardian: 2026-11-02 }")
            .Read();
        var ada = read.Clients.Single();
        ada = ada with { Log = ToldLog.Log(log ?? []), Answered = log is null ? ada.Answered : new(2027, 1, 3) };
        var use = Training.Of(read, ada).Uses.First(u => u.Exercise.Id.Text == "lunge");
        Assert.NotEmpty(use.Against);
        return Substitutes.For(read, ada, use)?.Id.Text;
    }
}
