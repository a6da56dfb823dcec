namespace Gradus.Tests.Reading;

public sealed class NumberFaultTests
{
    private const string Table = """
        hold 1.5 min
             ^^^
        '1.5' is not a whole number.
        Write whole numbers only; for a part of a minute write seconds, as in hold 1 min 30 s.

        hold 030 s
             ^^^
        '030' begins with a zero.
        Write 30.

        hold 60-30 s
             ^^^^^^^
        '60-30 s' runs from high to low.
        Write the smaller number first: 30-60 s.

        hold 30-1 min
             ^^^^^^^^
        '30-1 min' runs from high to low.
        Write both units: 30 s-1 min.

        hold 1-2 min 30 s
             ^^^^^^^
        After 1-2 min the range is complete.
        Write each end as a whole time, as in 1 min 30 s-2 min.

        hold 30-45-60 s
                  ^
        A range has two numbers, and after them stands another dash.
        Write the smallest and the largest number, as in 30-60.

        hold 1 min 75 s
                   ^^
        75 s is more than the seconds after minutes may be.
        Write 2 min 15 s.

        hold 0 s
             ^^^
        '0 s' is no time at all.
        Write a time from 1 s to 60 min.

        hold 90 min
             ^^^^^^
        '90 min' is longer than 60 min.
        Write a time from 1 s to 60 min, and more sets where it takes longer.

        101 x hold 5 s
        ^^^
        101 is more than a count may be.
        Write a number from 1 to 100.

        0 x hold 5 s
        ^
        0 is less than a count may be.
        Write a number from 1 to 100.

        hold 99999999999999999999 s
             ^^^^^^^^^^^^^^^^^^^^^^
        '99999999999999999999 s' is longer than 60 min.
        Write a time from 1 s to 60 min, and more sets where it takes longer.

        100 x hold 5 min, each side
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^
        The whole dose takes more than 4 h, which is the most that is possible.
        Write fewer sets or shorter times.

        2-100 x hold 5 min, each side
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
        The whole dose takes more than 4 h at its high end, which is the most that is possible.
        Write fewer sets or shorter times.

        carry 30-20 m
              ^^^^^
        30-20 m runs from high to low.
        Write the smaller number first: 20-30 m.

        5-3 x hold 30 s
        ^^^
        5-3 runs from high to low.
        Write the smaller number first: 3-5.

        hold 2 min-30 s
             ^^^^^^^^^^
        '2 min-30 s' runs from high to low.
        Write the shorter time first, as in 30 s-2 min.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_of_a_number_says_where_it_is_and_what_to_do(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
