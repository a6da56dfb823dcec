using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Figures;
using Gradus.Tests.House;

namespace Gradus.Tests.Figures.Poses;

/// <summary><c>pose.md</c> held against what is read: its tables have every word and no other, and its examples are
/// run.</summary>
public sealed class PosePageTests
{
    private static readonly string Page = File.ReadAllText(Repository.Path("src", "Figures", "Poses", "pose.md"));

    public static TheoryData<string> Good => new(FencedBlock.On(Page).Where(b => b.Name == "pose").Select(b => b.Text));

    public static TheoryData<string> Wrong => new(FencedBlock.On(Page).Where(b => b.Name == "wrong").Select(b => b.Text));

    [Theory]
    [InlineData("Base")]
    [InlineData("Word")]
    [InlineData("Motion")]
    [InlineData("Part")]
    [InlineData("On")]
    [InlineData("Thing")]
    [InlineData("Pushes")]
    [InlineData("Item")]
    [InlineData("Place")]
    public void A_table_has_every_word_that_is_read_and_no_other(string table)
    {
        IEnumerable<string> known = table switch
        {
            "Base" => PoseBase.All.Select(b => b.Name),
            "Word" => PoseWords.Which,
            "Motion" => PoseWords.Motions.Keys,
            "Part" => PoseWords.Parts.Keys,
            "On" => PoseWords.Surfaces.Keys,
            "Thing" => PoseWords.Things.Keys,
            "Pushes" => PoseWords.Directions.Keys,
            "Place" => FeelPlaces.Names,
            _ => PoseWords.Views.Keys,
        };
        var written = Rows(table).SelectMany(cells => Regex.Matches(cells[0], "`([^`]*)`").Select(m => m.Groups[1].Value));
        Assert.Equal(known.Order(StringComparer.Ordinal), written.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Each_motion_goes_as_far_as_the_page_says() => Assert.All(Rows("Motion"), cells =>
        {
            var (angle, sign) = PoseWords.Motions[cells[0].Trim('`')];
            var range = JointRange.Of(angle);
            Assert.Equal(Math.Abs(sign > 0 ? range.Most : range.Least), double.Parse(cells[1], CultureInfo.InvariantCulture));
        });

    [Fact]
    public void What_goes_to_a_side_says_so() =>
        Assert.Equal(
            PoseWords.ToASide.Order(StringComparer.Ordinal),
            Rows("Motion")
                .Where(cells => cells[2].Contains("side that is said behind it", StringComparison.Ordinal))
                .Select(cells => cells[0].Trim('`'))
                .Order(StringComparer.Ordinal)
        );

    [Theory, MemberData(nameof(Good))]
    public void An_example_is_drawn(string example)
    {
        var lines = example.Split('\n');
        var end = lines.Length > 1 ? lines[1]["then ".Length..] : "";
        var read = Movement.Read(new(Items(lines[0]), end.Length > 0 ? Items(end) : []), null);
        Assert.Empty(read.Faults);
        Assert.NotNull(read.Movement);
    }

    [Theory, MemberData(nameof(Wrong))]
    public void A_fault_is_said_at_its_item(string example)
    {
        var lines = example.Split('\n');
        var items = Items(lines[0]);
        var read = Movement.Read(new(items, []), null);
        Assert.Null(read.Movement);
        var fault = read.Faults[0];
        Assert.Equal((lines[1], lines[2]), (fault.Message, fault.Help));
        Assert.Equal(Math.Max(1, items[fault.Item].Length), fault.Length);
    }

    private static Series<string> Items(string line) => PoseReader.Items(line).Select(i => i.Text).ToSeries();

    /// <summary>The cells of the table whose first column is called so.</summary>
    private static IEnumerable<string[]> Rows(string table) =>
        Page.Split('\n')
            .SkipWhile(l => !Regex.IsMatch(l, $@"^\| {table} \|"))
            .Skip(2)
            .TakeWhile(l => l.StartsWith('|'))
            .Select(l => l.Trim('|').Split('|', StringSplitOptions.TrimEntries));
}
