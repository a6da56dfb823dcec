namespace Gradus.Tests.Reading;

public sealed class HealthFaultTests
{
    private const string Table = """
        clients/ansel/client.yaml
        - on: 2026-11-06⏎    until: 2031-11-06
        + on: 2026-11-06⏎    until: 9999-12-31
        clients/ansel/client.yaml:27:12 value-wrong «9999-12-31»
        9999-12-31 lies outside the years 1900 to 2199.
        Look at the year: nobody trains then.

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
        Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front, not lying on the back.

        clients/ansel/client.yaml
        - limit: hold at most 90 s
        + limit: hold at most 9٠ s
        clients/ansel/client.yaml:28:12 value-wrong «hold at most 9٠ s»
        'hold at most 9٠ s' is no limit that Gradus can watch over.
        Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front, not lying on the back.

        clients/ansel/client.yaml
        - limit: hold at most 90 s
        + limit: effort at most 60٠ %
        clients/ansel/client.yaml:28:12 value-wrong «effort at most 60٠ %»
        'effort at most 60٠ %' is no limit that Gradus can watch over.
        Write one of: effort at most 60 %, hold at most 10 s, no end-range trunk bending, not lying on the front, not lying on the back.
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
