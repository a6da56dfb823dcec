namespace Gradus.Tests.Reading;

public sealed class ProgrammeFaultTests
{
    private const string Table = """
        clients/ansel/programme.md
        - start: 2027-01-04
        + start: 2027-02-29
        clients/ansel/programme.md:3:8 value-wrong «2027-02-29»
        There is no day 2027-02-29 in the calendar.
        Look at the month, and at how many days it has.

        clients/ansel/programme.md
        - slow.
        + slow at {reading: hip extention rear leg}.
        clients/ansel/programme.md:33:72 id-unknown «hip extention»
        There is no motion 'hip extention' in this practice.
        Did you mean 'hip extension'?

        clients/ansel/programme.md
        - slow.
        + slow at {hold}.
        clients/ansel/programme.md:33:62 brace-in-text «{hold}»
        '{hold}' stands for nothing here.
        Say it without braces: only an exercise's own text is filled in from the dose.

        clients/ansel/programme.md
        - start: 2027-01-04
        + start: 9999-12-01
        clients/ansel/programme.md:3:8 value-wrong «9999-12-01»
        9999-12-01 lies outside the years 1900 to 2199.
        Look at the year: nobody trains then.

        clients/ansel/programme.md
        - start: 2027-01-04
        + start: 2200-01-01
        clients/ansel/programme.md:3:8 value-wrong «2200-01-01»
        2200-01-01 lies outside the years 1900 to 2199.
        Look at the year: nobody trains then.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 6 weeks
        clients/ansel/programme.md:4:8 value-wrong «6 weeks»
        'weeks' is '6 weeks', but it can only be a whole number from 1 to 104.
        Write one of these numbers, in digits only.

        clients/ansel/programme.md
        - weeks: 6
        + weeks: 500
        clients/ansel/programme.md:4:8 value-wrong «500»
        'weeks' is '500', but it can only be a whole number from 1 to 104.
        Write one of these numbers, in digits only.

        clients/ansel/programme.md
        - lighter: [5, 3]
        + lighter: 5
        clients/ansel/programme.md:5:10 value-wrong «5»
        'lighter' is a list of weeks, but here is a text.
        Write it in square brackets: lighter: [4].

        clients/ansel/programme.md
        - lighter: [5, 3]
        + lighter: [7]
        clients/ansel/programme.md:5:11 value-wrong «7»
        'lighter' is '7', but it can only be a whole number from 1 to 6.
        Write one of these numbers, in digits only.

        clients/ansel/programme.md
        - days: [Thu, Mon]
        + days: [Thu, Mno, Xyz]
        clients/ansel/programme.md:8:17 value-wrong «Mno»
        'Mno' is not how a day is written here.
        Did you mean 'Mon'?
        clients/ansel/programme.md:8:22 value-wrong «Xyz»
        'Xyz' is not how a day is written here.
        Write one of: Mon, Tue, Wed, Thu, Fri, Sat, Sun.

        clients/ansel/programme.md
        - days: before play
        + days: on match days
        clients/ansel/programme.md:29:11 value-wrong «on match days»
        'on match days' does not say when.
        Write days as [Mon, Thu], or one of: daily; every 2 days; 3 a week; 3 a week, a day between; before play.

        clients/ansel/programme.md
        - from-week: 2
        + from-week: 6
        clients/ansel/programme.md:16:21 value-wrong «5»
        This ends with week 5, before it begins in week 6.
        Correct 'from-week' or 'until-week'.

        clients/ansel/programme.md
        - from-week: 2
        + from-week: 9
        clients/ansel/programme.md:15:20 value-wrong «9»
        'from-week' is '9', but it can only be a whole number from 1 to 6.
        Write one of these numbers, in digits only.

        clients/ansel/programme.md
        - 4: 3 x hold 45 s, rest 30 s
        + 4: 2-3 x hold 45 s, rest 30 s
        clients/ansel/programme.md:13:14 value-wrong «2-3 x hold 45 s, rest 30 s»
        The dose of a week has single numbers, but here is a range.
        Write the one number for that week; ranges belong to the exercise.

        clients/ansel/programme.md
        - 4: 3 x hold 45 s, rest 30 s
        + 4: 3 x hold 45 s, rest 30 s # harder
        clients/ansel/programme.md:13:39 value-wrong «# harder»
        A comment stands on the line of a dose.
        Put it on a line of its own, or the dose in quotation marks if the # belongs to it.

        clients/ansel/programme.md
        - 4: 3 x hold 45 s, rest 30 s
        + week 4: 3 x hold 45 s, rest 30 s
        clients/ansel/programme.md:13:11 value-wrong «week 4»
        'by-week' is 'week 4', but it can only be a whole number from 1 to 6.
        Write one of these numbers, in digits only.

        clients/ansel/programme.md
        - 4: 3 x hold 45 s, rest 30 s
        + 8: 3 x hold 45 s, rest 30 s
        clients/ansel/programme.md:13:11 value-wrong «8»
        'by-week' is '8', but it can only be a whole number from 1 to 6.
        Write one of these numbers, in digits only.

        clients/ansel/programme.md
        - keep-when-short: yes
        + keep-when-short: always
        clients/ansel/programme.md:17:26 value-wrong «always»
        'always' is not a value of 'keep-when-short'.
        Write one of: yes, no.

        clients/ansel/programme.md
        - sessions:⏎
        + sessions: none⏎session:⏎
        clients/ansel/programme.md:6:11 value-wrong «n»
        'sessions' is a list, but here is a text.
        Begin each item on its own line with a hyphen.
        clients/ansel/programme.md:7:1 key-unknown «session»
        'session' is no key of a programme.
        Did you mean 'sessions'?
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
