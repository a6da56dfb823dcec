namespace Gradus.Tests.Reading;

public sealed class WorkFaultTests
{
    private const string Table = """
        3 x hold 2 mins
                   ^^^^
        'mins' is not a word of a dose line.
        Write min, as in hold 2 min.

        3 x stretch 30 s
            ^^^^^^^
        'stretch' is not a verb.
        Write hold, as in hold 30 s.

        3 x holding 30 s
            ^^^^^^^
        'holding' is not a verb.
        Write hold, as in hold 30 s.

        3 x holds 30 s
            ^^^^^
        'holds' is not a word of a dose line.
        Write hold, as in hold 30 s.

        3 x hodl 30 s
            ^^^^
        'hodl' is not a verb.
        Write hold, as in hold 30 s.

        3xhodl30s
          ^^^^
        'hodl' is not a verb.
        Write hold, as in hold 30 s.

        3 sets of hold 30 s
          ^^^^
        'sets' is not a word of a dose line.
        Write x, as in 3 x hold 30 s.

        3 hold 30 s
        ^
        After the count '3' an x is missing.
        Write x between a count and a verb, as in 3 x hold 30 s.

        three x hold 30 s
        ^^^^^
        'three' is not written in figures.
        Write 3.

        3 x 30 s
            ^^^^
        This amount has no verb before it.
        Write first what is done, as in hold 30 s.

        3 x 10 reps
            ^^^^^^^
        This amount has no verb before it.
        Write first what is done, as in move 10 reps.

        3x10
          ^^
        '10' is neither a dose nor the amount of one.
        Write what is done and how much, as in 3 x move 10 reps.

        3 x 10
            ^^
        '10' is neither a dose nor the amount of one.
        Write what is done and how much, as in 3 x move 10 reps.

        30 s hold
        ^^^^
        This amount has no verb before it.
        Write first what is done, as in hold 30 s.

        hold for 30 s
             ^^^
        'for' is not a word of a dose line.
        Write a number and its unit, as in hold 30 s.

        hold 30 s x 3
                  ^
        The count of sets does not stand after the work.
        Write it first, as in 3 x hold 30 s.

        hold 30 s 3 x
                  ^
        '3' stands where the line should end.
        Leave it out; the sets stand first, as in 3 x hold 30 s.

        3 * hold 30 s
          ^
        '*' is no sign of a dose line.
        Write x, as in 3 x hold 30 s.

        press 10 s 50%
                   ^^
        '50' stands where the line should end.
        Write at before a percentage, as in press 10 s at 50%.

        2 x 3 x 4 x raise 8 s
                ^
        At most two counts stand before a verb: the sets and the repetitions.
        Leave out the third count.

        3 x hold 30 s rest 20 s
                      ^^^^
        'rest' begins a term, and no comma stands before it.
        Write a comma before it, as in hold 30 s, rest 20 s.

        hold 30 s each side
                  ^^^^
        'each' begins a term, and no comma stands before it.
        Write a comma before it, as in hold 30 s, each side.

        8 kg
          ^^
        'kg' is not a word of a dose line.
        Write x between a count and a verb, as in 3 x hold 30 s.

        rest 20 s
        ^^^^
        'rest' stands where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        3 x rest 20 s
            ^^^^
        'rest' stands where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        hold 30 s and press 10 s
                  ^^^
        'and' is not a word of a dose line.
        Write then, as in (press 10 s then hold 20 s).

        3x
          ^
        The line ends where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        3 x
           ^
        The line ends where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        x hold 30 s
        ^
        'x' stands where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        , rest 20 s
        ^
        ',' stands where a verb should stand.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.

        hold 10 s and
                  ^^^
        'and' is not a word of a dose line.
        Write then, as in (press 10 s then hold 20 s).

        hold 5 breaths 3
                       ^
        '3' stands where the line should end.
        Leave it out; the sets stand first, as in 3 x hold 30 s.

        drücken 10 s
        ^^^^^^^
        'drücken' is not a verb.
        Write hold, breathe, press, pull, raise, move or carry, as in hold 30 s.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_of_sets_verbs_and_brackets_says_where_it_is_and_what_to_do(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
