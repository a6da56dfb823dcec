namespace Gradus.Tests.Reading;

public sealed class EffortFaultTests
{
    private const string Table = """
        hold 30 s at 50%
                  ^^^^^^
        hold is a relaxed stay and has no effort.
        For a still push write press, as in press 10 s at 50%; otherwise leave out the effort.

        breathe 5 breaths at effort 3
                          ^^^^^^^^^^^
        breathe is slow breathing and has no effort.
        Leave out the effort; for a still push write press, as in press 10 s at 50%.

        move 8 reps at 70%
                    ^^^^^^
        move is a repeated movement and has no percentage; only press, pull and raise have.
        Write a felt effort from 0 to 10, as in move 8 reps at effort 5.

        press 10 s at 50
                      ^^
        50 has no % after it.
        Write at 50%.

        press 10 s at 50 percent
                         ^^^^^^^
        'percent' is not a word of a dose line.
        Write % for per cent, as in press 10 s at 50%.

        press 10 s at 5
                      ^
        5 has no % after it.
        Write at 5% for a percentage, or at effort 5 for a felt effort.

        press 10 s at 120%
                      ^^^
        120% is more than a percentage may be.
        Write a number from 1 to 100.

        press 10 s at effort 11
                             ^^
        11 is more than a felt effort may be.
        Write a number from 0 to 10.

        press 10 s at effort 50%
                             ^^^
        A felt effort is a number from 0 to 10, not a percentage.
        Write at 50%, without the word effort.

        press 10 s at max
                      ^^^
        'max' is not an effort.
        Write a percentage or a felt effort, as in press 10 s at 50% or press 10 s at effort 5.

        press 10 s at
                     ^
        The line ends where an effort should stand.
        Write a percentage or a felt effort, as in press 10 s at 50% or press 10 s at effort 5.

        press 10 s at 20-100% in 5 steps
                              ^^
        'in' belongs to a ramp, and a ramp has two percentages with to between them.
        Write a ramp as press 10 s at 20 to 100% in 5 steps.

        press 10 s at 20 to 100 in 5 steps
                            ^^^
        The last percentage of a ramp has no % after it.
        Write a ramp as press 10 s at 20 to 100% in 5 steps.

        press 10 s at 20 to 100% 5 steps
                                 ^
        '5' stands where the number of steps of the ramp should stand.
        Write a ramp as press 10 s at 20 to 100% in 5 steps.

        press 10 s at 20 to 100% in 5
                                     ^
        The line ends where the word steps should stand.
        Write a ramp as press 10 s at 20 to 100% in 5 steps.

        press 10 s at 20 to 100% in 5 stages
                                      ^^^^^^
        'stages' is not a word of a dose line.
        Write steps, as in at 20 to 100% in 5 steps.

        press 10 s at 20 to 100% in 4 steps
                   ^^^^^^^^^^^^^^^^^^^^^^^^
        10 s cannot be cut into 4 equal steps of whole seconds.
        Write a time that 4 divides, such as 8 s or 12 s.

        press 10-12 s at 20 to 100% in 5 steps
                      ^^^^^^^^^^^^^^^^^^^^^^^^
        12 s cannot be cut into 5 equal steps of whole seconds.
        Write a time that 5 divides, such as 10 s or 15 s.

        press 10 s at 20 to 100% in 1 steps
                                    ^
        1 is less than the number of steps may be.
        Write a number from 2 to 20.

        hold 30 s at effort
                           ^
        The line ends where a felt effort should stand.
        Write one number or two, as in press 10 s at effort 5 or press 10 s at effort 5-7.

        press 10 s at 50-20%
                      ^^^^^
        50-20% runs from high to low.
        Write the smaller number first: 20-50%.

        press 1 min at 20 to 50% in 7 steps
                    ^^^^^^^^^^^^^^^^^^^^^^^
        60 s cannot be cut into 7 equal steps of whole seconds.
        Write a time that 7 divides, such as 56 s or 63 s.

        press 10 s at 50% for
                          ^^^
        'for' is not a word of a dose line.
        Leave it out, or write a comma and a term, as in rest 20 s.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_of_an_effort_says_where_it_is_and_what_to_do(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
