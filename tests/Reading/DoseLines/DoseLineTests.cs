using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

public sealed class DoseLineTests
{
    [Fact]
    public void A_line_says_sets_work_and_terms()
    {
        var dose = DoseOf.Line("2-3 x hold 30-60 s, rest 20 s, each side");
        Assert.Equal(new Count(2, 3), dose.Sets);
        Assert.Equal([new DosePart.Single(new(null, Verb.Hold, new Amount.Span(new(30, 60)), null))], dose.Parts);
        Assert.Equal(new DoseTerms(Rest: new(20), Side: new SideTerm.Each()), dose.Terms);
    }

    [Theory]
    [InlineData("hold 30 s", "1 x hold 30 s")]
    [InlineData("(hold 30 s)", "1 x hold 30 s")]
    [InlineData("(3 x hold 30 s)", "1 x 3 x hold 30 s")]
    [InlineData("3 x (hold 30 s)", "3 x hold 30 s")]
    [InlineData("2 x 4 x raise 8 s", "2 x 4 x raise 8 s")]
    [InlineData("2 x (4 x raise 8 s)", "2 x 4 x raise 8 s")]
    [InlineData("(2 x (raise 8 s))", "1 x (2 x (raise 8 s))")]
    [InlineData("3xpress30sat50%,rest20s,eachside", "3 x press 30 s at 50%, rest 20 s, each side")]
    [InlineData("3 × Hold 30–60 S, PER SIDE", "3 x hold 30-60 s, each side")]
    [InlineData("3×hold30s", "3 x hold 30 s")]
    [InlineData("hold 60 s", "1 x hold 60 s")]
    [InlineData("hold 1 min", "1 x hold 60 s")]
    [InlineData("hold 1 min 30 s", "1 x hold 90 s")]
    [InlineData("hold 0 min 30 s", "1 x hold 30 s")]
    [InlineData("hold 150 s", "1 x hold 2 min 30 s")]
    [InlineData("hold 30 s-2 min", "1 x hold 30 s-2 min")]
    [InlineData("hold 1-2 min", "1 x hold 1-2 min")]
    [InlineData("hold 60-90 s", "1 x hold 60-90 s")]
    [InlineData("hold 30 s-1 min", "1 x hold 30-60 s")]
    [InlineData("hold 1 min 30 s - 2 min 30 s", "1 x hold 90 s-2 min 30 s")]
    [InlineData("press 10 s at 20-30% to 60-80% in 5 steps", "1 x press 10 s at 20-30 to 60-80% in 5 steps")]
    [InlineData("press 10 s at 50 to 50% in 5 steps", "1 x press 10 s at 50 to 50% in 5 steps")]
    [InlineData("carry 20 m at effort 0", "1 x carry 20 m at effort 0")]
    [InlineData("carry20mateffort5", "1 x carry 20 m at effort 5")]
    [InlineData("2xmove8repsateffort5,tempo3-1-X-0,leave2", "2 x move 8 reps at effort 5, tempo 3-1-x-0, leave 2")]
    [InlineData(
        "2 x move 8 reps, leave 0, load  a  Rucksack ,on  Front  Leg",
        "2 x move 8 reps, on front leg, load a Rucksack, leave 0"
    )]
    [InlineData("hold 30 s,onleft", "1 x hold 30 s, on left")]
    [InlineData("hold 30 s, each side, plus1xonleft", "1 x hold 30 s, each side, plus 1 x on left")]
    [InlineData("hold 30 s, load 8–10 kg × 2", "1 x hold 30 s, load 8–10 kg × 2")]
    [InlineData("hold 30 s, on Épée Arm", "1 x hold 30 s, on épée arm")]
    [InlineData("2 x hold 30 s, rest 0 s", "2 x hold 30 s, rest 0 s")]
    [InlineData("2 x hold 30 s, rest 15 min", "2 x hold 30 s, rest 15 min")]
    [InlineData("1-2 x hold 30 s, rest 20 s", "1-2 x hold 30 s, rest 20 s")]
    [InlineData("1 x 1-2 x raise 8 s, pause 2 s", "1 x 1-2 x raise 8 s, pause 2 s")]
    [InlineData("hold 30 s, rest 20 s, each side, plus 1 x on left", "1 x hold 30 s, rest 20 s, each side, plus 1 x on left")]
    public void A_line_is_read_and_printed_in_its_canonical_form(string line, string printed) =>
        Assert.Equal(printed, DosePrinter.Print(DoseOf.Line(line)));

    [Theory]
    [InlineData("100 x hold 1 s", "101 x hold 1 s")]
    [InlineData("1 x 100 x hold 1 s", "1 x 101 x hold 1 s")]
    [InlineData("(100 x (hold 1 s))", "(101 x (hold 1 s))")]
    [InlineData("hold 100 breaths", "hold 101 breaths")]
    [InlineData("move 100 reps", "move 101 reps")]
    [InlineData("carry 3600 m", "carry 3601 m")]
    [InlineData("hold 1 s", "hold 0 s")]
    [InlineData("hold 60 min", "hold 60 min 1 s")]
    [InlineData("hold 3600 s", "hold 3601 s")]
    [InlineData("hold 1 min 59 s", "hold 1 min 60 s")]
    [InlineData("2 x hold 1 s, rest 900 s", "2 x hold 1 s, rest 901 s")]
    [InlineData("hold 1 s, each side, switch 15 min", "hold 1 s, each side, switch 15 min 1 s")]
    [InlineData("1 x 2 x hold 1 s, pause 15 min", "1 x 2 x hold 1 s, pause 16 min")]
    [InlineData("press 1 s at 1%", "press 1 s at 0%")]
    [InlineData("press 1 s at 100%", "press 1 s at 101%")]
    [InlineData("press 1 s at effort 10", "press 1 s at effort 11")]
    [InlineData("press 20 s at 1 to 100% in 20 steps", "press 21 s at 1 to 100% in 21 steps")]
    [InlineData("press 2 s at 100 to 1% in 2 steps", "press 2 s at 100 to 1% in 1 steps")]
    [InlineData("press 10-20 s at 20 to 60% in 5 steps", "press 10-21 s at 20 to 60% in 5 steps")]
    [InlineData("press 10-20 s at 20 to 60% in 5 steps", "press 9-20 s at 20 to 60% in 5 steps")]
    [InlineData("hold 30-30 s", "hold 31-30 s")]
    [InlineData("hold 60 s-1 min", "hold 61 s-1 min")]
    [InlineData("hold 1 s, each side, plus 100 x on left", "hold 1 s, each side, plus 101 x on left")]
    [InlineData("hold 1 s, each side, plus 1 x on left", "hold 1 s, each side, plus 0 x on left")]
    [InlineData("move 1 reps, tempo 0-0-1-0", "move 1 reps, tempo 0-0-0-0")]
    [InlineData("move 1 reps, leave 100", "move 1 reps, leave 101")]
    public void The_last_number_within_its_bounds_is_read_and_the_next_is_refused(string within, string beyond)
    {
        Assert.IsType<DoseLineResult.Understood>(DoseLine.Read(within, DoseOf.Usual));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read(beyond, DoseOf.Usual));
    }

    [Theory]
    [InlineData("hold 30 s, rest 20 s")]
    [InlineData("2 x hold 30 s, pause 5 s")]
    [InlineData("hold 30 s, switch 5 s, both sides")]
    [InlineData("hold 30 s, tempo 3-1-1-0")]
    [InlineData("hold 30 s, leave 2")]
    public void A_term_with_nothing_to_act_on_is_a_fault_of_its_own_kind(string line)
    {
        var refused = Assert.IsType<DoseLineResult.Refused>(DoseLine.Read(line, DoseOf.Usual));
        Assert.Equal(DoseFaultKind.TermWithoutEffect, refused.Fault.Kind);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \t ")]
    public void An_empty_line_asks_for_a_dose(string line)
    {
        var refused = Assert.IsType<DoseLineResult.Refused>(DoseLine.Read(line, DoseOf.Usual));
        Assert.Equal(
            new DoseFault(
                DoseFaultKind.Unreadable,
                0,
                1,
                "Here a dose is missing.",
                "Write what is done and how much, as in 3 x hold 30 s."
            ),
            refused.Fault
        );
    }

    [Theory]
    [InlineData(0, "'aU+0000b' holds a character that cannot be shown.")]
    [InlineData(0xd800, "'aU+D800b' holds a character that cannot be shown.")]
    [InlineData(0xdc00, "'aU+DC00b' holds a character that cannot be shown.")]
    public void A_character_that_cannot_be_shown_is_refused_by_its_number(int character, string message)
    {
        var refused = Assert.IsType<DoseLineResult.Refused>(DoseLine.Read($"hold 30 s, load a{(char)character}b", DoseOf.Usual));
        Assert.Equal(message, refused.Fault.Message);
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read($"hold 30 s, on a{(char)character}b", DoseOf.Usual));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read($"{(char)character}", DoseOf.Usual));
    }
}
