namespace Gradus.Tests.Reading;

public sealed class VerbFaultTests
{
    private const string Table = """
        press 10 reps
              ^^^^^^^
        press is a still push, measured in time, not in reps.
        For a repeated movement write move: move 10 reps.

        press 5 breaths
              ^^^^^^^^^
        press is a still push, measured in time, not in breaths.
        For a relaxed stay write hold: hold 5 breaths.

        hold 10 reps
             ^^^^^^^
        hold is a relaxed stay, measured in time or breaths, not in reps.
        For a repeated movement write move: move 10 reps.

        hold 5 m
             ^^^
        hold is a relaxed stay, measured in time or breaths, not in metres.
        For minutes write hold 5 min; for a walk with a load write carry.

        carry 30 s
              ^^^^
        carry is a walk with a load, measured in metres, not in time.
        For a movement over time write move: move 30 s.

        carry 10 reps
              ^^^^^^^
        carry is a walk with a load, measured in metres, not in reps.
        For a repeated movement write move: move 10 reps.

        move 10 breaths
             ^^^^^^^^^^
        move is a repeated movement, measured in reps or time, not in breaths.
        For slow breathing write breathe: breathe 10 breaths.

        move 5 m
             ^^^
        move is a repeated movement, measured in reps or time, not in metres.
        For a walk with a load write carry: carry 5 m.

        breathe 10 reps
                ^^^^^^^
        breathe is slow breathing, measured in time or breaths, not in reps.
        For a repeated movement write move; to count breaths write breathe 10 breaths.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_verb_with_an_amount_that_is_not_its_own_says_the_verb_that_was_meant(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
