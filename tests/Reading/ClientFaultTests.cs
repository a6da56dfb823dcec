namespace Gradus.Tests.Reading;

public sealed class ClientFaultTests
{
    private const string Table = """
        clients/ansel/client.yaml
        - stance: left
        + sports: { epee: left }
        clients/ansel/client.yaml:2:1 key-unknown «sport»
        'sport' stands beside 'sports', which says it for each sport.
        Take it out, or take 'sports' out.

        clients/ansel/client.yaml
        - sport: epee
        + sports: { epee: left }
        clients/ansel/client.yaml:3:1 key-unknown «stance»
        'stance' stands beside 'sports', which says it for each sport.
        Take it out, or take 'sports' out.

        clients/ansel/client.yaml
        - sport: epee⏎stance: left
        + sports: { epee: left, epee: right }
        clients/ansel/client.yaml:2:23 key-unknown «epee»
        'epee' appears twice.
        Keep one of the two.

        clients/ansel/client.yaml
        - sport: epee⏎stance: left
        + sports: {}
        clients/ansel/client.yaml:2:9 value-wrong «{»
        No sport stands here.
        Write each sport with its stance, as { epee: left }, or 'sport' and 'stance' instead.

        clients/ansel/client.yaml
        - sport: epee⏎stance: left
        + sports: { epee: left, tennis: right }
        clients/ansel/client.yaml:2:23 id-unknown «tennis»
        There is no sport 'tennis' in this practice.
        Write sports/tennis.yaml, or take its name out here.

        clients/ansel/client.yaml
        - stance: left
        + stance: lefty
        clients/ansel/client.yaml:3:9 value-wrong «lefty»
        'lefty' is not a stance.
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
        - born: 1988-02-29
        + born: 1899-12-31
        clients/ansel/client.yaml:4:7 value-wrong «1899-12-31»
        1899-12-31 lies outside the years 1900 to 2199.
        Look at the year: nobody trains then.

        clients/ansel/client.yaml
        - born: 1988-02-29
        + born: 2200
        clients/ansel/client.yaml:4:7 value-wrong «2200»
        '2200' is no year or date of birth.
        Write the year, as 1979, or the date, as 1979-03-21.

        clients/ansel/client.yaml
        - zone: Europe/Dublin
        + zone: Europe/Dubln
        clients/ansel/client.yaml:7:7 value-wrong «Europe/Dubln»
        'Europe/Dubln' is no time zone.
        Did you mean 'Europe/Dublin'?

        clients/ansel/client.yaml
        - zone: Europe/Dublin
        + zone: europe/dublin
        clients/ansel/client.yaml:7:7 value-wrong «europe/dublin»
        'europe/dublin' is no time zone.
        Did you mean 'Europe/Dublin'?

        clients/ansel/client.yaml
        - zone: Europe/Dublin
        + zone: New York
        clients/ansel/client.yaml:7:7 value-wrong «New York»
        'New York' is no time zone.
        Did you mean 'America/New_York'?

        clients/ansel/client.yaml
        - zone: Europe/Dublin
        + zone: where the heart is
        clients/ansel/client.yaml:7:7 value-wrong «where the heart is»
        'where the heart is' is no time zone.
        Write the part of the world and the place that the zone is called after, as Europe/London.

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
        There are no words for a site in the language 'ga'.
        Write one of: de, en. Or bring its words: 'gradus new words ga' writes words/ga.yaml to fill in.

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
        - answered: 2026-11-04
        + answered: 0026-11-04
        clients/ansel/client.yaml:13:11 value-wrong «0026-11-04»
        0026-11-04 lies outside the years 1900 to 2199.
        Look at the year: nobody trains then.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
