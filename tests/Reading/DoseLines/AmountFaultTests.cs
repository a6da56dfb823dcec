namespace Gradus.Tests.Reading;

public sealed class AmountFaultTests
{
    private const string Table = """
        3 x hold 30
                 ^^
        30 has no unit.
        Write s, min or breaths after it, as in hold 30 s.

        3 x hold 30 seconds
                    ^^^^^^^
        'seconds' is not a unit.
        Write s, as in hold 30 s.

        3 x hold 30secs
                   ^^^^
        'secs' is not a unit.
        Write s, as in hold 30 s.

        3 x hold 2 minutes
                   ^^^^^^^
        'minutes' is not a unit.
        Write min, as in hold 2 min.

        hold
            ^
        The line ends where the amount of hold should stand.
        Write a number and its unit, as in hold 30 s.

        hold s
             ^
        's' stands where the amount of hold should stand.
        Write a number and its unit, as in hold 30 s.

        hold 1:30
              ^
        ':' is no sign of a dose line.
        Write minutes and seconds with their units, as in hold 1 min 30 s.

        hold 30"
               ^
        '"' is no sign of a dose line.
        Write s for seconds, as in hold 30 s.

        hold 30 s - 45
                    ^^
        45 has no unit.
        Write s or min after it, as in 30 s-2 min.

        hold 1 min 30
                   ^^
        30 has no unit.
        Write s after it, as in 1 min 30 s.

        3 x hold 30 s; rest 20 s
                     ^
        ';' is no sign of a dose line.
        Write a comma before a term, or then between two actions in brackets.

        hold −30 s
             ^
        '−' is no sign of a dose line.
        Write - between two numbers, as in hold 30-60 s.

        hold 30—60 s
               ^
        '—' is no sign of a dose line.
        Write - between two numbers, as in hold 30-60 s.

        hold 30 sec at rest
                ^^^
        'sec' is not a unit.
        Write s, as in hold 30 s.

        hold 1 h
               ^
        'h' is not a unit.
        Write s, min or breaths after it, as in hold 30 s.

        hold 5-10 breath
                  ^^^^^^
        'breath' is not a unit.
        Write breaths, as in hold 5 breaths.

        hold 30
             ^^
        30 has no unit.
        Write s, min or breaths after it, as in hold 30 s.

        hold 10 mi
                ^^
        'mi' is not a unit.
        Write min, as in hold 2 min.

        hold ½ min
             ^
        '½' stands where the amount of hold should stand.
        Write a number and its unit, as in hold 30 s.

        hold ３０ s
             ^
        '３' stands where the amount of hold should stand.
        Write a number and its unit, as in hold 30 s.
        """;

    public static TheoryData<string, string> Rows => LineFaultTable.Rows(Table);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_fault_of_an_amount_says_where_it_is_and_what_to_do(string line, string expected) =>
        Assert.Equal(expected, LineFaultTable.Show(line));
}
