namespace Gradus.Tests.Reading;

public sealed class ClientFaultTests
{
    private const string Table = """
        clients/ansel/client.yaml
        - stance: left
        + stance: lefty
        clients/ansel/client.yaml:3:9 value-wrong «lefty»
        'lefty' is nothing that can stand for 'stance'.
        Did you mean 'left'?

        clients/ansel/client.yaml
        - born: 1988-02-29
        + born: 1989-02-29
        clients/ansel/client.yaml:4:7 value-wrong «1989-02-29»
        There is no day 1989-02-29 in the calendar.
        Look at the month, and at how many days it has.

        clients/ansel/client.yaml
        - born: 1988-02-29
        + born: 88
        clients/ansel/client.yaml:4:7 value-wrong «88»
        '88' is no year or date of birth.
        Write the year, as 1979, or the date, as 1979-03-21.

        clients/ansel/client.yaml
        - country: IE
        + country: Ireland
        clients/ansel/client.yaml:5:10 value-wrong «Ireland»
        'Ireland' is no country.
        Write the two capital letters of the country, as GB or IE.

        clients/ansel/client.yaml
        - language: en
        + language: ga
        clients/ansel/client.yaml:6:11 value-wrong «ga»
        Gradus has no words for a site in the language 'ga'.
        Write one of: en.

        clients/ansel/client.yaml
        - days: [Thu, Mon]
        + days: [Thu, Monday]
        clients/ansel/client.yaml:8:13 value-wrong «Monday»
        'Monday' is not how a day is written here.
        Did you mean 'Mon'?

        clients/ansel/client.yaml
        - days: [Thu, Mon]
        + days: Thu
        clients/ansel/client.yaml:8:7 value-wrong «T»
        'days' is a list, but here is a text.
        Write it in square brackets: days: [one, another].

        clients/ansel/client.yaml
        - hour: "07:05"
        + hour: 7.05
        clients/ansel/client.yaml:9:7 value-wrong «7.05»
        '7.05' is no time of day.
        Write hours and minutes in quotation marks, as "18:30".

        clients/ansel/client.yaml
        - hour: "07:05"
        + hour: "25:00"
        clients/ansel/client.yaml:9:7 value-wrong «"25:00"»
        '25:00' is no time of day.
        Write hours and minutes in quotation marks, as "18:30".

        clients/ansel/client.yaml
        - minutes: 35
        + minutes: 0
        clients/ansel/client.yaml:10:10 value-wrong «0»
        'minutes' is '0', but it can only be a whole number from 1 to 240.
        Write one of these numbers, in digits only.

        clients/ansel/client.yaml
        - minutes: 35
        + minutes: 12.5
        clients/ansel/client.yaml:10:10 value-wrong «12.5»
        'minutes' is '12.5', but it can only be a whole number from 1 to 240.
        Write one of these numbers, in digits only.

        clients/ansel/client.yaml
        - minutes: 35
        + minutes: half an hour
        clients/ansel/client.yaml:10:10 value-wrong «half an hour»
        'minutes' is 'half an hour', but it can only be a whole number from 1 to 240.
        Write one of these numbers, in digits only.

        clients/ansel/client.yaml
        - answered: 2026-11-04
        + answered: 2026-02-30
        clients/ansel/client.yaml:13:11 value-wrong «2026-02-30»
        There is no day 2026-02-30 in the calendar.
        Look at the month, and at how many days it has.

        clients/ansel/client.yaml
        - answered: 2026-11-04
        + answered: 4 November 2026
        clients/ansel/client.yaml:13:11 value-wrong «4 November 2026»
        '4 November 2026' is no date.
        Write year, month and day with hyphens, as 2026-12-07.

        clients/ansel/client.yaml
        - answered: 2026-11-04
        + answered: 04.11.2026
        clients/ansel/client.yaml:13:11 value-wrong «04.11.2026»
        '04.11.2026' is no date.
        Write year, month and day with hyphens, as 2026-12-07.

        clients/ansel/client.yaml
        - calf-strain: no
        + calf-strain: never
        clients/ansel/client.yaml:15:16 value-wrong «never»
        'never' is no answer.
        Write yes, no, not asked, or where it has sides: yes, left.

        clients/ansel/client.yaml
        - calf-strain: no
        + calf-strain: yes, lefft
        clients/ansel/client.yaml:15:16 value-wrong «yes, lefft»
        'yes, lefft' is no answer.
        Did you mean 'yes, left'?

        clients/ansel/client.yaml
        - calf-strain: no
        + calf-strain: maybe so
        clients/ansel/client.yaml:15:16 value-wrong «maybe so»
        'maybe so' is no answer.
        Write yes, no, not asked, or where it has sides: yes, left.

        clients/ansel/client.yaml
        - faint-spells: yes
        + faint-spells: yes, left
        clients/ansel/client.yaml:16:17 value-wrong «yes, left»
        'faint-spells' has no left and right, but the answer names a side.
        Write yes, or add 'sided: yes' to this condition in conditions.yaml.

        clients/ansel/client.yaml
        - calf-strain: no
        + calf-strain: [yes, left]
        clients/ansel/client.yaml:15:16 value-wrong «[»
        'calf-strain' is a text, but here is a list.
        Write it on one line; put it in quotation marks if it holds a colon, a bracket or a brace.

        clients/ansel/client.yaml
        - on: 2026-11-06⏎    until: 2031-11-06
        + on: 2031-11-07⏎    until: 2031-11-06
        clients/ansel/client.yaml:27:12 value-wrong «2031-11-06»
        This clearance ends before it begins.
        Correct 'on' or 'until'.

        clients/ansel/client.yaml
        - limit: hold at most 90 s
        + limit: nothing hard
        clients/ansel/client.yaml:28:12 value-wrong «nothing hard»
        'nothing hard' is no limit that Gradus can watch over.
        Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front.

        clients/ansel/client.yaml
        - limit: hold at most 90 s
        + limit: hold at most 9٠ s
        clients/ansel/client.yaml:28:12 value-wrong «hold at most 9٠ s»
        'hold at most 9٠ s' is no limit that Gradus can watch over.
        Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front.

        clients/ansel/client.yaml
        - limit: hold at most 90 s
        + limit: effort at most 60٠ %
        clients/ansel/client.yaml:28:12 value-wrong «effort at most 60٠ %»
        'effort at most 60٠ %' is no limit that Gradus can watch over.
        Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
