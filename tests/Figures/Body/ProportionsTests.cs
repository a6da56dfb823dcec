using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Figures;
using Gradus.Tests.House;

namespace Gradus.Tests.Figures.Body;

/// <summary>The body against the table that it is drawn by: Drillis and Contini 1966, as tabulated in Winter; it stands in
/// <c>reference-values.md</c>.</summary>
public sealed class ProportionsTests
{
    private static readonly string Table = File.ReadAllText(Repository.Path("src", "Domain", "reference-values.md"))
        .Split("\n## Body proportions")[1]
        .Split("\n## ")[0];

    public static TheoryData<string, double> Segments =>
        new()
        {
            { "upper arm", Proportions.UpperArm },
            { "forearm", Proportions.Forearm },
            { "hand", Proportions.Hand },
            { "thigh", Proportions.Thigh },
            { "shank", Proportions.Shank },
            { "foot length", Proportions.FootLength },
            { "ankle height", Proportions.AnkleHeight },
            { "hip height", Proportions.HipHeight },
            { "shoulder height", Proportions.ShoulderHeight },
            { "shoulder width", Proportions.ShoulderWidth },
            { "hip width", Proportions.HipWidth },
            { "head", Proportions.Head },
        };

    [Theory, MemberData(nameof(Segments))]
    public void A_segment_is_as_long_as_the_table_says(string name, double length)
    {
        var written = Regex.Match(Table, $@"^\| {name} ([0-9.]+) \|", RegexOptions.Multiline);
        Assert.Equal(double.Parse(written.Groups[1].Value, CultureInfo.InvariantCulture), length);
    }

    [Fact]
    public void Whoever_stands_upright_is_one_height_tall()
    {
        var body = Upright();
        Assert.Equal(1, body.Crown.Z, 1e-12);
        Assert.Equal(0, body.LegOf(BodySide.Working).Heel.Z, 1e-12);
        Assert.Equal(0, body.LegOf(BodySide.Other).Tip.Z, 1e-12);
        Assert.Equal(0.818, body.Shoulders.Z, 1e-12);
        Assert.Equal(0.530, Proportions.Thigh + Proportions.Shank + Proportions.AnkleHeight, 1e-12);
        Assert.Equal(0.288, Proportions.Trunk, 1e-12);
    }

    [Fact]
    public void Each_joint_of_the_body_is_as_far_from_the_next_as_the_table_says()
    {
        var body = Upright();
        foreach (var side in Enum.GetValues<BodySide>())
        {
            var (arm, leg) = (body.ArmOf(side), body.LegOf(side));
            Assert.Equal(0.186, (arm.Middle - arm.Root).Length, 1e-12);
            Assert.Equal(0.146, (arm.End - arm.Middle).Length, 1e-12);
            Assert.Equal(0.108, (arm.Tip - arm.End).Length, 1e-12);
            Assert.Equal(0.245, (leg.Middle - leg.Root).Length, 1e-12);
            Assert.Equal(0.246, (leg.End - leg.Middle).Length, 1e-12);
            Assert.Equal(0.152, (leg.Tip - leg.Heel).Length, 1e-12);
        }

        Assert.Equal(0.259, (body.ArmOf(BodySide.Other).Root - body.ArmOf(BodySide.Working).Root).Length, 1e-12);
        Assert.Equal(0.191, (body.LegOf(BodySide.Other).Root - body.LegOf(BodySide.Working).Root).Length, 1e-12);
    }

    private static Skeleton Upright() => new(new(0, 0, Proportions.HipHeight), Frame.Upright, new());
}
