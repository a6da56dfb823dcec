namespace Gradus.Tests.Reading;

public sealed class SideFaultTests
{
    private const string Table = """
        3 x hold 30 s, each side, on left
                                  ^^^^^^^
        The side is said twice: 'each side' and 'on left'.
        Keep one of the two.

        3 x hold 30 s, each sides
                            ^^^^^
        After 'each' stands side, not sides.
        Write each side.

        3 x hold 30 s, each leg
                            ^^^
        After 'each' stands side, not 'leg'.
        Write each side.

        3 x hold 30 s, per leg
                           ^^^
        After 'per' stands side, not 'leg'.
        Write each side.

        3 x hold 30 s, both side
                            ^^^^
        After 'both' stands sides, not side.
        Write both sides.

        3 x hold 30 s, left
                       ^^^^
        Before 'left' the word on is missing.
        Write on left.

        3 x hold 30 s, left side
                       ^^^^
        Before 'left' the word on is missing.
        Write on left.

        3 x hold 30 s, one side
                       ^^^
        'one' is not a term.
        Write on, as in on left.

        3 x hold 30 s, sides
                       ^^^^^
        'sides' does not say which sides.
        Write each side, alternate sides or both sides.

        3 x hold 30 s, on
                         ^
        Here a side is missing.
        Write it, as in on left.

        3 x hold 30 s, on , rest 5 s
                          ^
        Here a side is missing.
        Write it, as in on left.

        3 x hold 30 s, alternating sides
                       ^^^^^^^^^^^
        'alternating' is not a term.
        Write alternate, as in alternate sides.

        3 x hold 30 s, plus 1 x on left
                       ^^^^^^^^^^^^^^^^
        plus gives one side more, and the sides are not worked one after the other.
        Write each side too, or leave out plus.

        3 x hold 30 s, each side, plus 1 on left
                                         ^^
        'on' stands where the x of plus should stand.
        Write how many sets more and for which side, as in plus 1 x on left.

        3 x hold 30 s, each side, plus 1 x left
                                           ^^^^
        'left' stands where the word on should stand.
        Write how many sets more and for which side, as in plus 1 x on left.

        3 x hold 30 s, each side, plus one x on left
                                       ^^^
        'one' is not written in figures.
        Write 1.

        hold 30 s, each side, plus 1 x on left, switch
                                                      ^
        The line ends where the time of switch should stand.
        Write one time, as in switch 10 s.

        hold 30 s, each side, plus 1 x
                                      ^
        The line ends where the word on should stand.
        Write how many sets more and for which side, as in plus 1 x on left.

        hold 30 s, each side, plus 1 x on
                                         ^
        Here a side is missing.
        Write it, as in on left.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_of_a_side_says_where_it_is_and_what_to_do(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
