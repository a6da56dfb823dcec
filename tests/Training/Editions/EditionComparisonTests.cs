using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>What is other between two editions, one thing at a time, in the words of the command. EditionProofTests holds
/// thousands of made programmes.</summary>
public sealed class EditionComparisonTests
{
    private static readonly EditionUse Lunge = Use("lunge", new EditionDose(1, 4, "each side", "2 x hold 30 s"));
    private static readonly EditionUse Press = Use("press", new EditionDose(1, 4, "each side", "3 x press 10 s at 50%"));
    private static readonly EditionSession Legs = Session("Legs", Lunge, Press);
    private static readonly EditionSession Arms = Session("Arms", Use("wrist", new EditionDose(1, 4, "left", "1 x hold 20 s")));
    private static readonly EditionContent Before = Of(Legs, Arms);

    [Fact]
    public void The_same_has_no_difference() => Assert.Equal("", Said(Of(Legs, Arms)));

    /// <summary>A session is known by its name, and one that has another by its place; one instead of another names
    /// that.</summary>
    [Fact]
    public void Sessions_come_go_and_change_their_names_and_days()
    {
        Assert.Equal("", Said(Of(Arms, Legs)));
        Assert.Equal("session out: 'Arms'", Said(Of(Legs)));
        Assert.Equal("session in: 'Trunk'", Said(Of(Legs, Arms, Session("Trunk"))));
        Assert.Equal("session: 'Arms' is now called 'Hands'", Said(Of(Legs, Arms with { Name = "Hands" })));
        Assert.Equal("days of 'Legs': Mon, then Tue", Said(Of(Legs with { Days = "Tue" }, Arms)));
        Assert.Equal("days of 'Arms': Mon, then instead of 'Legs', Mon", Said(Of(Legs, Arms with { InsteadOf = "Legs" })));
        Assert.Equal(
            "session: 'Legs' is now called 'Lower body'",
            Said(
                Of(Legs with { Name = "Lower body" }, Arms with { InsteadOf = "Lower body" }),
                Of(Legs, Arms with { InsteadOf = "Legs" })
            )
        );
        Assert.Equal("session in: 'Away'|session out: 'Arms'", Said(Of(Legs, Session("Away") with { InsteadOf = "Legs" })));
    }

    /// <summary>Of two uses of one exercise the first is held against the first.</summary>
    [Fact]
    public void Exercises_come_go_and_change_places()
    {
        Assert.Equal("exercise out: The press (press), of 'Legs'", Said(Of(Session("Legs", Lunge), Arms)));
        Assert.Equal("exercise in: The lunge (lunge), in 'Arms'", Said(Of(Legs, Session("Arms", Lunge, Arms.Uses[0]))));
        Assert.Equal("order of 'Legs': the same exercises in another order", Said(Of(Session("Legs", Press, Lunge), Arms)));
        var twice = Of(Session("Legs", Lunge, Press, Lunge), Arms);
        Assert.Equal("exercise in: The lunge (lunge), in 'Legs'", Said(twice));
        Assert.Equal("", Said(twice, twice));
        Assert.Equal(
            "dose of The lunge (lunge) in 'Legs', weeks 1-4: 2 x hold 30 s, then 2 x hold 40 s",
            Said(Of(Session("Legs", Lunge, Press, Dosed(Lunge, "2 x hold 40 s")), Arms), twice)
        );
    }

    /// <summary>Weeks that follow one another with the same change are told together.</summary>
    [Theory]
    [InlineData("2 x hold 40 s", 1, 4, "weeks 1-4: 2 x hold 30 s, then 2 x hold 40 s")]
    [InlineData("2 x hold 40 s", 2, 2, "week 2: 2 x hold 30 s, then 2 x hold 40 s")]
    [InlineData("2 x hold 40 s", 2, 3, "weeks 2-3: 2 x hold 30 s, then 2 x hold 40 s")]
    [InlineData("2 x hold 40 s", 4, 4, "week 4: 2 x hold 30 s, then 2 x hold 40 s")]
    public void A_dose_changes_in_some_weeks(string dose, int from, int to, string said)
    {
        var asks = Enumerable
            .Range(1, 4)
            .Select(w => new EditionDose(w, w, "each side", w >= from && w <= to ? dose : "2 x hold 30 s"))
            .ToSeries();
        Assert.Equal(
            $"dose of The lunge (lunge) in 'Legs', {said}",
            Said(Of(Session("Legs", Lunge with { Asks = asks }, Press), Arms))
        );
    }

    [Fact]
    public void What_is_done_of_a_use_is_told_part_by_part()
    {
        Assert.Equal(
            "weeks of The lunge (lunge) in 'Legs': 1, 2, 3, 4, then 1, 2",
            Changed(Lunge with { Asks = [new(1, 2, "each side", "2 x hold 30 s")] })
        );
        Assert.Equal(
            "side of The lunge (lunge) in 'Legs', weeks 1-4: each side, then left",
            Changed(Lunge with { Asks = [new(1, 4, "left", "2 x hold 30 s")] })
        );
        Assert.Equal(
            "rounds of The lunge (lunge) in 'Legs': none, then 1: 3 times",
            Changed(Lunge with { Rounds = "1: 3 times" })
        );
        Assert.Equal("short version of 'Legs': The lunge (lunge) is in", Changed(Lunge with { IsKept = true }));
        Assert.Equal("move on: The lunge (lunge) in 'Legs' has other conditions", Changed(Lunge with { MoveOn = "x" }));

        static string Changed(EditionUse lunge) => Said(Of(Session("Legs", lunge, Press), Arms));
    }

    /// <summary>A programme that becomes longer says so, and not of every exercise again.</summary>
    [Fact]
    public void Of_a_longer_programme_the_weeks_of_both_are_compared()
    {
        var longer = Lunge with { Asks = [new(1, 6, "each side", "2 x hold 30 s")] };
        Assert.Equal("weeks: 4, then 6", Said(Of(Session("Legs", longer, Press), Arms) with { Weeks = 6 }));
    }

    /// <summary>What comes with an exercise that is new, or goes with one that is out, is not named beside it.</summary>
    [Fact]
    public void Signs_come_go_and_change()
    {
        var (pain, cramp) = (Sign("pain", "lunge", "press"), Sign("cramp", "press"));
        var before = Before with { Cautions = [pain, cramp] };
        Assert.Equal("", Said(before, before));
        Assert.Equal("sign out: The cramp (cramp)", Said(before with { Cautions = [pain] }, before));
        Assert.Equal("sign in: The cramp (cramp)", Said(before, before with { Cautions = [pain] }));
        Assert.Equal(
            "sign: The pain (pain) has other words",
            Said(before with { Cautions = [pain with { Words = "y" }, cramp] }, before)
        );
        Assert.Equal(
            "sign: The pain (pain) was 'stop' and is now 'take-care'",
            Said(before with { Cautions = [pain with { Kind = CautionKind.TakeCare }, cramp] }, before)
        );
        Assert.Equal(
            "sign: The cramp (cramp) now goes for The lunge (lunge)|sign: The cramp (cramp) no longer goes for The press (press)",
            Said(before with { Cautions = [pain, Sign("cramp", "lunge")] }, before)
        );
        var without = Of(Session("Legs", Lunge), Arms) with { Cautions = [Sign("pain", "lunge")] };
        Assert.Equal("exercise out: The press (press), of 'Legs'", Said(without, before));
        Assert.Equal("exercise in: The press (press), in 'Legs'", Said(before, without));
    }

    [Fact]
    public void What_is_said_beside_them_is_told_too()
    {
        Assert.Equal("title: 'Footwork', then 'More'", Said(Before with { Title = "More" }));
        Assert.Equal("first day: 2027-01-04, then 2027-01-11", Said(Before with { Start = new(2027, 1, 11) }));
        Assert.Equal("clearance in: a", Said(Before with { Clearances = ["a"] }));
        Assert.Equal("clearance out: a", Said(Before, Before with { Clearances = ["a"] }));
        Assert.Equal("restriction in: a", Said(Before with { Restrictions = ["a"] }));
        Assert.Equal("restriction out: a", Said(Before, Before with { Restrictions = ["a"] }));
        Assert.Equal("other: the letter", Said(Before with { Others = [new("letter", "x")] }));
        Assert.Equal("other: the letter", Said(Before, Before with { Others = [new("letter", "x")] }));
        var words = Before.Exercises.Select(e => e.Id.Text == "lunge" ? e with { Words = "y" } : e).ToSeries();
        Assert.Equal("words: The lunge (lunge) is described otherwise", Said(Before with { Exercises = words }));
    }

    private static string Said(EditionContent after, EditionContent? before = null) =>
        string.Join('|', EditionComparison.Of(before ?? Before, after).SelectMany(CompareText.Lines));

    private static EditionContent Of(params EditionSession[] sessions) =>
        new(
            "programme",
            "Footwork",
            new(2027, 1, 4),
            4,
            [.. sessions],
            sessions
                .SelectMany(s => s.Uses)
                .Select(u => u.Exercise)
                .Distinct()
                .Select(id => new EditionExercise(id, $"The {id}", "x"))
                .ToSeries(),
            [],
            [],
            [],
            []
        );

    private static EditionSession Session(string name, params EditionUse[] uses) => new(name, "Mon", "", [1, 1, 1, 1], [.. uses]);

    private static EditionUse Use(string exercise, EditionDose asked) => new(new(exercise), "", false, "", [asked]);

    private static EditionUse Dosed(EditionUse use, string dose) =>
        use with
        {
            Asks = use.Asks.Select(a => a with { Dose = dose }).ToSeries(),
        };

    private static EditionCaution Sign(string id, params string[] exercises) =>
        new(new(id), CautionKind.Stop, $"The {id}", "x", exercises.Select(e => new ExerciseId(e)).ToSeries());
}
