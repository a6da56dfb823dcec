using Gradus.Domain;

namespace Gradus.Tests.Domain;

/// <summary>A wrong dose cannot be made, with or without a line.</summary>
public sealed class DoseRecordTests
{
    private static readonly Amount Ten = new Amount.Span(new(10));

    private static readonly Dose Good = DoseOf.Line("2 x move 8 reps, rest 20 s");

    public static TheoryData<string, Func<object>> Wrong =>
        new()
        {
            { "101 sets", () => Good with { Sets = new(101) } },
            { "no sets", () => new Dose(new(0), Good.Parts, Good.Terms) },
            { "no parts", () => Good with { Parts = [] } },
            { "an empty group", () => new DosePart.Group(new(2), []) },
            { "a group of 101 rounds", () => new DosePart.Group(new(101), [new(null, Verb.Hold, Ten, null)]) },
            { "an action 101 times", () => new DoseAction(new(101), Verb.Hold, Ten, null) },
            { "pressed reps", () => new DoseAction(null, Verb.Press, new Amount.Reps(new(8)), null) },
            { "a carry over time", () => new DoseAction(null, Verb.Carry, Ten, null) },
            { "a hold with effort", () => new DoseAction(null, Verb.Hold, Ten, new Effort.Felt(new(3))) },
            { "a move in per cent", () => new DoseAction(null, Verb.Move, Ten, new Effort.Steady(new(50))) },
            { "a ramp that does not divide", () => new DoseAction(null, Verb.Press, Ten, new Effort.Ramp(new(20), new(60), 3)) },
            { "a ramp of one step", () => new Effort.Ramp(new(20), new(60), 1) },
            { "more than everything", () => new Effort.Steady(new(50, 101)) },
            { "effort 11", () => new Effort.Felt(new(11)) },
            { "more than an hour", () => new Amount.Span(new(3601)) },
            { "a rest of 16 min", () => Good with { Terms = new(Rest: new(960)) } },
            { "a pause of 16 min", () => Good.Terms with { Pause = new Seconds(960) } },
            { "a switch of 16 min", () => Good.Terms with { Switch = new Seconds(960) } },
            { "101 left", () => new DoseTerms(Leave: 101) },
            { "a load with a comma", () => new DoseTerms(Load: "8 kg, left") },
            { "a side of blanks", () => new SideTerm.On(SideName.Of(" ")) },
            { "no set more", () => new Plus(0, SideName.Of("left")) },
            { "a tempo of nothing", () => new Tempo(0, 0, 0, 0) },
            { "a negative beat", () => new Tempo(-1, 5, 0, 0) },
            { "a breath of nothing", () => DoseSettings.Default with { Breath = Seconds.Zero } },
            { "a repetition of nothing", () => DoseSettings.Default with { Repetition = Seconds.Zero } },
            { "no way in a second", () => DoseSettings.Default with { Carry = new(0) } },
            { "a negative way", () => new Metres(-1) },
        };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_value_out_of_bounds_is_refused_where_it_is_made(string what, Func<object> make)
    {
        var refused = Record.Exception(make);
        Assert.True(refused is ArgumentException, $"{what} was made");
    }

    [Fact]
    public void Doses_with_the_same_numbers_are_equal()
    {
        Assert.Equal(
            DoseOf.Line("2 x (3 x (press 5 s then hold 20 s)), on left"),
            DoseOf.Line("2×(3×(press 5s then hold 20s)),ON LEFT")
        );
        Assert.NotEqual(DoseOf.Line("2 x hold 30 s"), DoseOf.Line("2 x 1 x hold 30 s"));
    }
}
