namespace Gradus.Tests.Reading;

public sealed class BracketFaultTests
{
    private const string Table = """
        press 10 s then hold 20 s
                   ^^^^
        'then' joins actions inside brackets only.
        Put brackets round the actions, as in (press 10 s then hold 20 s).

        (press 10 s, hold 20 s)
                   ^
        The bracket is not closed before the comma.
        Write then between two actions, and ) after the last.

        (press 10 s hold 20 s)
                    ^^^^
        Before 'hold' the word then is missing.
        Write then between two actions, as in (press 10 s then hold 20 s).

        (press 10 s then hold 20 s
                                  ^
        The bracket is not closed.
        Write ) after the last action.

        (press 10 s then hold 20 s) at 50%
                                    ^^
        'at' stands where no action ends.
        Write the effort once, right after the amount of its action, as in press 10 s at 50%.

        press 10 s)
                  ^
        This bracket closes nothing.
        Leave it out, or open it before the first action.

        (press 10 s then (hold 20 s))
                         ^
        The inner bracket has no count.
        Write a count before it, as in (2 x (press 10 s then pull 5 s) then hold 30 s).

        2 x 3 x (press 10 s then hold 20 s)
            ^^^
        Only the sets are counted outside the brackets.
        Put the second count inside, as in 2 x (3 x (press 10 s then hold 20 s)).

        (2 x (3 x (press 10 s)))
                  ^
        Brackets stand at most two deep.
        Write the actions out one after another, with then between them.

        [press 10 s then hold 20 s]
        ^
        '[' is no sign of a dose line.
        Write round brackets, as in (press 10 s then hold 20 s).

        (hold 30
              ^^
        30 has no unit.
        Write s, min or breaths after it, as in hold 30 s.

        2 x (
             ^
        The line ends where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        2 x ()
             ^
        ')' stands where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        hold 10 s then
                  ^^^^
        'then' joins actions inside brackets only.
        Put brackets round the actions, as in (press 10 s then hold 20 s).

        (hold 30-20 breaths)
              ^^^^^
        30-20 breaths runs from high to low.
        Write the smaller number first: 20-30 breaths.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_of_brackets_says_where_it_is_and_what_to_do(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
