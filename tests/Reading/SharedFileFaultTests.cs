namespace Gradus.Tests.Reading;

public sealed class SharedFileFaultTests
{
    private const string Table = """
        conditions.yaml
        - where: whole body
        + where: wholebody
        conditions.yaml:9:10 value-wrong «wholebody»
        'wholebody' is no region of the body that Gradus knows.
        Did you mean 'whole body'?

        conditions.yaml
        - where: whole body
        + where: whole body⏎  sided: yes
        conditions.yaml:9:10 value-wrong «whole body»
        'whole body' has no left and right.
        Take 'sided' out, or name a limb's region in 'where'.

        conditions.yaml
        - where: ankle⏎  sided: yes
        + where: ankle⏎  sided: true
        conditions.yaml:5:10 value-wrong «true»
        'true' is not a value of 'sided'.
        Write one of: yes, no.

        sports/epee.yaml
        - weapon arm: right
        + weapon arm: rihgt
        sports/epee.yaml:4:15 value-wrong «rihgt»
        'rihgt' is not a value of 'weapon arm'.
        Did you mean 'right'?

        sports/epee.yaml
        - weapon arm: right
        + left: right
        sports/epee.yaml:4:3 value-wrong «left»
        'left' cannot be the name of a role.
        Name one side as the sport does: weapon arm, rear leg.

        sports/epee.yaml
        - weapon arm: right
        + both sides: right
        sports/epee.yaml:4:3 value-wrong «both sides»
        'both sides' cannot be the name of a role.
        Name one side as the sport does: weapon arm, rear leg.

        sports/epee.yaml
        - weapon arm: right
        + Free  Arm: right
        sports/epee.yaml:5:3 key-unknown «free arm»
        'free arm' appears twice.
        Keep one of the two.

        sports/epee.yaml
        - at-least: 12.5
        + at-least: twelve
        sports/epee.yaml:13:15 value-wrong «twelve»
        'twelve' is no number for 'at-least'.
        Write digits only, with a point before decimals and no zero in front: 15 or 4.5.

        cautions/dull-ache.md
        - kind: ease-off
        + kind: stop-now
        cautions/dull-ache.md:3:7 value-wrong «stop-now»
        'stop-now' is not a kind.
        Write one of: stop, ease-off, take-care, expect.

        cautions/dull-ache.md
        - property: balance
        + property: balanced
        cautions/dull-ache.md:4:101 value-wrong «balanced»
        'balanced' is no property of an exercise.
        Did you mean 'balance'?
        """;

    public static TheoryData<string> Rows => FaultTable.Rows(Table);

    [Theory, MemberData(nameof(Rows))]
    public void A_mistake_is_said_with_its_place_and_its_remedy(string row) => Assert.Equal(row, FaultTable.Show(row));
}
