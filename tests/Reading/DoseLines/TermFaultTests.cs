namespace Gradus.Tests.Reading;

public sealed class TermFaultTests
{
    private const string Table = """
        3 x hold 30 s, break 20 s
                       ^^^^^
        'break' is not a term.
        Write rest, as in rest 20 s.

        3 x hold 30 s, rset 20 s
                       ^^^^
        'rset' is not a term.
        Write rest, as in rest 20 s.

        3 x hold 30 s,
                      ^
        The line ends where a term should stand.
        Write a term, as in rest 20 s, or leave out the comma.

        3 x hold 30 s, rest
                           ^
        The line ends where the time of rest should stand.
        Write one time, as in rest 20 s.

        3 x hold 30 s, rest 20
                            ^^
        20 has no unit.
        Write s or min after it, as in rest 20 s.

        3 x hold 30 s, rest 20-30 s
                            ^^^
        A rest is a single time, not a range.
        Write one time, as in rest 20 s.

        3 x hold 30 s, rest 20 min
                            ^^^^^^
        A rest is at most 15 min.
        Write a time from 0 s to 15 min.

        3 x hold 30 s, rest 20 s, rest 30 s
                                  ^^^^^^^^^
        rest stands twice: 'rest 20 s' and 'rest 30 s'.
        Keep one of the two.

        3 x move 8 reps, tempo 3-1-1
                               ^^^^^
        A tempo has four beats, and fewer are written.
        Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.

        3 x move 8 reps, tempo 3110
                               ^^^^
        A tempo has four beats, and fewer are written.
        Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.

        3 x move 8 reps, tempo 3-1-1-0-0
                               ^^^^^^^^^
        A tempo has four beats, and more are written.
        Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.

        3 x move 8 reps, tempo 0-0-0-0
                               ^^^^^^^
        A tempo of four zeros takes no time.
        Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.

        3 x move 8 reps, tempo slow
                               ^^^^
        'slow' is not a beat of the tempo.
        Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.

        3 x move 8 reps, load
                             ^
        Here what is held or worn is missing.
        Write it, as in load 8 kg.

        3 x move 8 reps, loaded 5 kg
                         ^^^^^^
        'loaded' is not a term.
        Write load, as in load 8 kg.

        3 x move 8 reps, with 5 kg
                         ^^^^
        'with' is not a term.
        Write load, as in load 8 kg.

        3 x move 8 reps, leave 1-2
                               ^^
        The number of repetitions to leave is a single number, not a range.
        Write one number, as in leave 2.

        3 x move 8 reps, leave 500
                               ^^^
        500 is more than the number of repetitions to leave may be.
        Write a number from 0 to 100.

        3 x move 8 reps, leave two
                               ^^^
        'two' is not written in figures.
        Write 2.

        hold 30 s, rest 20 s
                   ^^^^^^^^^
        rest has nothing to act on: there is only one set.
        Write more sets, or leave out rest.

        2 x hold 30 s, pause 5 s
                       ^^^^^^^^^
        pause has nothing to act on: no verb has a count above 1 besides the sets.
        Between sets write rest instead of pause.

        hold 30 s, pause 5 s
                   ^^^^^^^^^
        pause has nothing to act on: no verb has a count above 1 besides the sets.
        Write a count before the verb, as in 2 x 4 x raise 8 s, or leave out pause.

        1 x 4 x raise 8 s, rest 5 s
                           ^^^^^^^^
        rest has nothing to act on: there is only one set.
        Between repetitions write pause instead of rest.

        3 x hold 30 s, switch 10 s
                       ^^^^^^^^^^^
        switch has nothing to act on: the side does not change.
        Write each side or alternate sides too, or leave out switch.

        3 x hold 30 s, tempo 3-1-1-0
                       ^^^^^^^^^^^^^
        tempo has nothing to act on: nothing is counted in reps.
        Count a movement in reps, as in move 8 reps, or leave out tempo.

        3 x hold 30 s, leave 2
                       ^^^^^^^
        leave has nothing to act on: nothing is counted in reps.
        Count a movement in reps, as in move 8 reps, or leave out leave.

        hold 30 s, 3 x
                   ^
        '3' stands where a term should stand.
        Write a term, as in rest 20 s, or leave out the comma.

        hold 30 s, tempo
                        ^
        The line ends where a beat of the tempo should stand.
        Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.

        hold 30 s, per set
                       ^^^
        After 'per' stands side, not 'set'.
        Write each side.

        hold 30 s, tempo 3-1-1-
                               ^
        The line ends where a beat of the tempo should stand.
        Write lower-pause-raise-pause, as in tempo 3-1-1-0; x is fast.

        hold 30 s, tempo 3-1-1-99999999
                               ^^^^^^^^
        99999999 s is more than a beat may be.
        Write a number from 0 to 14400.

        hold 30 s, rest twenty s
                        ^^^^^^
        'twenty' is not a word of a dose line.
        Write one time, as in rest 20 s.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_of_a_term_says_where_it_is_and_what_to_do(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
