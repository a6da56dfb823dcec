using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class EnvelopeTests(ITestOutputHelper output)
{
    private const string Rock = "2-3 x hold 30-60 s, rest 20 s, each side";
    private const string Press = "2 x 3-4 x press 5-10 s at 20-50%, pause 3 s";
    private const string Ramp = "(1-3 x (press 10 s at 20-30 to 60-100% in 5 steps then hold 30 s))";
    private const string Lift = "2 x move 6-8 reps at effort 6, tempo 3-1-1-0, leave 2";

    [Theory]
    [InlineData(Rock, "2 x hold 30 s, rest 20 s, each side")]
    [InlineData(Rock, "3 x hold 60 s, rest 20 s, on left")]
    [InlineData(Press, "2 x 4 x press 10 s at 50%, pause 3 s")]
    [InlineData(Press, "2 x 3 x press 5 s at 20 to 40% in 5 steps, pause 3 s")]
    [InlineData(Ramp, "(3 x (press 10 s at 25 to 80% in 5 steps then hold 30 s))")]
    [InlineData(Ramp, "(press 10 s at 25 to 80% in 5 steps then hold 30 s)")]
    [InlineData(Lift, "2 x move 8 reps at effort 6, tempo 3-1-1-0, leave 2")]
    [InlineData("2 x press 10 s", "2 x press 10 s at 80%")]
    [InlineData("2-3 x hold 30 s, rest 20 s", "2-3 x hold 30 s, rest 20 s")]
    [InlineData("1-3 x hold 30 s, rest 20 s", "1 x hold 30 s")]
    [InlineData("2 x hold 30 s, each side, plus 1 x on left", "2 x hold 30 s, on left")]
    [InlineData("2 x hold 5-10 breaths", "2 x hold 10 breaths")]
    public void A_dose_within_the_ends_has_no_departure(string envelope, string written) =>
        Assert.Empty(Envelope.Compare(DoseOf.Line(envelope), DoseOf.Line(written)));

    [Theory]
    [InlineData(Rock, "3 x hold 90 s, rest 20 s", "hold 90 s, the exercise allows 30 to 60 s")]
    [InlineData(Rock, "4 x hold 60 s, rest 20 s", "4 sets, the exercise allows 2 to 3 sets")]
    [InlineData(Rock, "2 x hold 30 s, rest 10 s", "rest 10 s, the exercise allows 20 s")]
    [InlineData(Rock, "2 x hold 30 s", "no rest, the exercise allows 20 s")]
    [InlineData(Rock, "2 x hold 5 breaths, rest 20 s", "hold 5 breaths, the exercise allows 30 to 60 s")]
    [InlineData(Rock, "2 x press 30 s, rest 20 s", "press, the exercise is hold")]
    [InlineData(Rock, "2 x (hold 30 s then press 5 s), rest 20 s", "hold then press, the exercise is hold")]
    [InlineData(Press, "2 x 5 x press 5 s at 20%, pause 3 s", "press 5 times, the exercise allows 3 to 4 times")]
    [InlineData(Press, "2 x 3 x press 5 s at 80%, pause 3 s", "press at 80 %, the exercise allows 20 to 50 %")]
    [InlineData(
        Press,
        "2 x 3 x press 5 s at 20 to 60% in 5 steps, pause 3 s",
        "press at 20 to 60 %, the exercise allows 20 to 50 %"
    )]
    [InlineData(Press, "2 x 3 x press 5 s, pause 3 s", "press with no effort named, the exercise allows 20 to 50 %")]
    [InlineData(Press, "2 x 3 x press 5 s at effort 4, pause 3 s", "press at effort 4, the exercise allows 20 to 50 %")]
    [InlineData(Press, "2 x 3 x press 5 s at 20%, pause 1 s", "pause 1 s, the exercise allows 3 s")]
    [InlineData(
        Ramp,
        "(4 x (press 10 s at 20 to 60% in 5 steps then hold 30 s))",
        "4 rounds of press then hold, the exercise allows 1 to 3 rounds"
    )]
    [InlineData(
        Ramp,
        "(2 x (press 10 s at 20 to 60% in 5 steps) then hold 30 s)",
        "2 rounds of press, the exercise has no such bracket"
    )]
    [InlineData(
        Ramp,
        "(press 10 s at 40 to 60% in 5 steps then hold 30 s)",
        "press from 40 %, the exercise allows from 20 to 30 %"
    )]
    [InlineData(
        Ramp,
        "(press 10 s at 60% then hold 30 s)",
        "press at 60 %, the exercise allows a ramp from 20 to 30 % to 60 to 100 % in 5 steps"
    )]
    [InlineData(Lift, "2 x move 9 reps at effort 6, tempo 3-1-1-0, leave 2", "move 9 reps, the exercise allows 6 to 8 reps")]
    [InlineData(Lift, "2 x move 8 reps at effort 8, tempo 3-1-1-0, leave 2", "move at effort 8, the exercise allows effort 6")]
    [InlineData(Lift, "2 x move 8 reps at effort 6, tempo 5-1-1-0, leave 2", "tempo 5-1-1-0, the exercise allows 3-1-1-0")]
    [InlineData(Lift, "2 x move 8 reps at effort 6, tempo 3-1-1-0, leave 1", "leave 1, the exercise allows leave 2")]
    [InlineData(
        "2 x hold 30 s, each side",
        "2 x hold 30 s, each side, plus 1 x on left",
        "1 set more, the exercise allows no set more"
    )]
    [InlineData(
        "2 x hold 30 s, each side, plus 1 x on left",
        "2 x hold 30 s, each side, plus 1 x on right",
        "1 set more on right, the exercise allows 1 set more on left"
    )]
    [InlineData("2 x carry 20-40 m", "2 x carry 50 m", "carry 50 m, the exercise allows 20 to 40 m")]
    [InlineData("2 x hold 90-180 s", "2 x hold 200 s", "hold 3 min 20 s, the exercise allows 90 s to 3 min")]
    public void A_departure_on_the_hard_side_names_what_was_written_and_what_is_allowed(
        string envelope,
        string written,
        string words
    ) =>
        Assert.Equal(
            new Departure(DepartureSide.Hard, words),
            Assert.Single(Envelope.Compare(DoseOf.Line(envelope), DoseOf.Line(written)))
        );

    [Theory]
    [InlineData(Rock, "2 x hold 20 s, rest 20 s", "hold 20 s, the exercise allows 30 to 60 s")]
    [InlineData(Rock, "1 x hold 30 s", "1 set, the exercise allows 2 to 3 sets")]
    [InlineData(Rock, "2 x hold 30 s, rest 30 s", "rest 30 s, the exercise allows 20 s")]
    [InlineData("2 x hold 30 s", "2 x hold 30 s, rest 10 s", "rest 10 s, the exercise allows no rest")]
    [InlineData(
        "2 x hold 30 s, each side, switch 10 s",
        "2 x hold 30 s, each side, switch 5 s",
        "switch 5 s, the exercise allows 10 s"
    )]
    [InlineData(
        "2 x hold 30 s, each side, plus 2 x on left",
        "2 x hold 30 s, each side, plus 1 x on left",
        "1 set more, the exercise allows 2 sets more"
    )]
    [InlineData(
        "(2 x (press 5 s then hold 30 s))",
        "(press 5 s then hold 30 s)",
        "1 round of press then hold, the exercise allows 2 rounds"
    )]
    [InlineData(
        "press 10 s at 20 to 60% in 5 steps",
        "press 10 s at 20 to 60% in 2 steps",
        "press in 2 steps, the exercise allows 5 steps"
    )]
    [InlineData(
        "press 10 s at 20 to 60% in 5 steps",
        "press 10 s at 20 to 50% in 5 steps",
        "press to 50 %, the exercise allows to 60 %"
    )]
    [InlineData(Lift, "2 x move 8 reps at effort 6, tempo 1-1-1-0, leave 2", "tempo 1-1-1-0, the exercise allows 3-1-1-0")]
    [InlineData(Lift, "2 x move 8 reps at effort 6, tempo 1-1-3-0, leave 2", "tempo 1-1-3-0, the exercise allows 3-1-1-0")]
    [InlineData(Lift, "2 x move 8 reps at effort 6, tempo 3-1-1-0, leave 3", "leave 3, the exercise allows leave 2")]
    public void A_departure_on_the_easy_side_says_so(string envelope, string written, string words) =>
        Assert.Equal(
            new Departure(DepartureSide.Easy, words),
            Assert.Single(Envelope.Compare(DoseOf.Line(envelope), DoseOf.Line(written)))
        );

    [Fact]
    public void Every_number_outside_is_named_in_the_order_of_the_line() =>
        Assert.Equal(
            [
                "4 sets, the exercise allows 2 to 3 sets",
                "hold 20 s, the exercise allows 30 to 60 s",
                "rest 5 s, the exercise allows 20 s",
            ],
            Envelope.Compare(DoseOf.Line(Rock), DoseOf.Line("4 x hold 20 s, rest 5 s")).Select(d => d.Words)
        );

    [Fact]
    public void What_grows_within_an_envelope_stays_inside_it_and_a_set_more_does_not()
    {
        var lines = GeneratedLines.Take(1000, seed: 4).ToArray();
        foreach (var dose in lines.Select(line => DoseOf.Line(line.Text)))
        {
            foreach (var share in Enumerable.Range(0, 4))
                Assert.Empty(Envelope.Compare(dose, dose.At(c => c.Low + ((c.High - c.Low) * share / 3))));
            var more = dose.High() with { Sets = new(dose.Sets.High + 1) };
            Assert.Contains(Envelope.Compare(dose, more), d =>
                d.Side == DepartureSide.Hard && d.Words.Contains("set", StringComparison.Ordinal)
            );
        }

        GeneratedLines.ShowSpread(lines, output);
    }
}
