namespace Gradus.Tests.Reading;

public sealed class RestrictionReaderTests
{
    private static readonly LittlePractice Practice = Club
        .Empty.Exercise("sway", "hold 30 s, each side")
        .Member("ansel", ["- use: sway"]);

    [Fact]
    public void Who_asked_for_what_and_until_when_is_bound()
    {
        var practice = With("joint: left knee\n    limit: [hold at most 20 s]");
        Assert.Empty(practice.Findings());
        var restriction = Assert.Single(practice.Client("ansel").Restrictions);
        Assert.Equal(
            ("her physiotherapist", new DateOnly(2026, 12, 1), new DateOnly(2027, 3, 31), "left knee"),
            (restriction.By, restriction.On, restriction.Until, restriction.Place)
        );
        Assert.Equal("hold at most 20 s", Assert.Single(restriction.Limits).Words);
    }

    [Theory]
    [InlineData("joint: knee", "knee")]
    [InlineData("joint: neck", "neck")]
    [InlineData("movement: wrist extension", "wrist extension")]
    [InlineData("joint: right wrist\n    movement: wrist extension", "right wrist, wrist extension")]
    [InlineData("limit: [hold at most 20 s]", "whatever is done")]
    public void A_place_is_a_joint_a_movement_or_both(string written, string place)
    {
        Assert.Empty(With(written).Findings());
        Assert.Equal(place, Assert.Single(With(written).Client("ansel").Restrictions).Place);
    }

    [Theory]
    [InlineData("joint: left neck", "12 'neck' has no left and right.")]
    [InlineData("joint: left knea", "17 'knea' is no region of the body that Gradus knows.")]
    [InlineData("joint: middle knee", "12 'middle knee' is no region of the body that Gradus knows.")]
    [InlineData("movement: knee turning", "15 There is no motion 'knee turning' in this practice.")]
    public void What_is_no_place_is_said_at_it(string written, string said)
    {
        var finding = Assert.Single(With(written).Findings());
        Assert.Equal(said, $"{finding.At.Column} {finding.Message}");
    }

    private static LittlePractice With(string written) =>
        Practice.Edit(
            "clients/ansel/client.yaml",
            "clearances: []",
            "restrictions:\n  - by: her physiotherapist\n    on: 2026-12-01\n    until: 2027-03-31\n    "
                + $"{written}\nclearances: []"
        );
}
