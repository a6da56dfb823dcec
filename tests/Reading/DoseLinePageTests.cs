using System.Globalization;
using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <summary>Every line that <c>dose-line.md</c> shows is read: what the page says of it comes true.</summary>
public sealed class DoseLinePageTests
{
    private const string Arrow = "=>";

    private static readonly string Page = File.ReadAllText(Repository.Path("src", "Reading", "DoseLines", "dose-line.md"));

    private static readonly string[] Kinds = ["dose", "refused", "seconds", "weeks", "json", "grammar"];

    public static TheoryData<string, string> Examples =>
        new(
            from block in FencedBlock.On(Page)
            where block.Name is "dose" or "refused" or "seconds"
            from line in block.Lines
            select (block.Name, line)
        );

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_line_means_what_the_page_says(string kind, string example) => Assert.Null(Fault(kind, example));

    [Theory]
    [InlineData("dose", "3xhold30s")]
    [InlineData("dose", "3xhold30s => 2 x hold 30 s")]
    [InlineData("dose", "3 x hold 30")]
    [InlineData("refused", "3 x hold 30 s => It is refused.")]
    [InlineData("refused", "3 x hold 030 s => '030' begins with a one.")]
    [InlineData("seconds", "3 x hold 30 s => 91")]
    [InlineData("seconds", "2 x carry 20 m => 40")]
    public void An_example_that_says_something_else_fails(string kind, string example) => Assert.NotNull(Fault(kind, example));

    [Fact]
    public void A_dose_grows_as_the_page_says()
    {
        var blocks = FencedBlock.On(Page).Where(b => b.Name.StartsWith("weeks ", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(blocks);
        foreach (var block in blocks)
        {
            var words = block.Name.Split(' ');
            var asked = new AskedWeeks(
                int.Parse(words[1], CultureInfo.InvariantCulture),
                [.. words.Skip(3).Select(w => int.Parse(w, CultureInfo.InvariantCulture))]
            );
            var grown = DoseWeeks
                .Of(DoseOf(block.Lines[0]), DoseSettings.Default, asked)
                .Weeks.Select(w => string.Create(CultureInfo.InvariantCulture, $"{w.Week}  {w.Dose}"));
            Assert.Equal(block.Lines.Skip(1), grown);
        }
    }

    [Fact]
    public void A_line_is_written_for_programs_as_the_page_says()
    {
        var blocks = FencedBlock.On(Page).Where(b => b.Name.StartsWith("json ", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(blocks);
        Assert.All(blocks, b =>
            Assert.Equal(b.Text, DoseJson.Write(DoseOf(b.Name["json ".Length..]), DoseSettings.Default, null))
        );
    }

    [Fact]
    public void Every_block_is_of_a_kind_that_is_looked_at()
    {
        var blocks = FencedBlock.On(Page).Select(b => b.Name.Split(' ')[0]).ToArray();
        Assert.Equal(Kinds.Order(StringComparer.Ordinal), blocks.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_verb_has_its_row()
    {
        var rows = Page.Split('\n').Where(l => l.StartsWith("| `", StringComparison.Ordinal)).Select(l => l.Split('`')[1]);
        Assert.Subset(rows.ToHashSet(StringComparer.Ordinal), Verbs.All.Select(v => v.Word()).ToHashSet(StringComparer.Ordinal));
    }

    /// <summary>What is wrong with an example, in words; null where it comes true.</summary>
    private static string? Fault(string kind, string example)
    {
        var parts = example.Split(Arrow, StringSplitOptions.TrimEntries);
        var (line, said) = (parts[0], parts.Length > 1 ? parts[1] : parts[0]);
        var actual = (kind, DoseLine.Read(line, DoseSettings.Default)) switch
        {
            ("refused", DoseLineResult.Refused(var fault)) => fault.Message,
            ("dose", DoseLineResult.Understood(var dose)) => DosePrinter.Print(dose),
            ("seconds", DoseLineResult.Understood(var dose)) => Seconds(dose),
            (_, DoseLineResult.Refused(var fault)) => $"It is refused: {fault.Message}",
            _ => "It is read.",
        };
        return actual == said ? null : $"'{line}': the page says '{said}', but: {actual}";
    }

    private static string Seconds(Dose dose)
    {
        var measures = DoseMeasures.Of(dose.Low().Settled(), DoseSettings.Default);
        return string.Create(CultureInfo.InvariantCulture, $"{(measures.About ? "about " : "")}{measures.Seconds.Value}");
    }

    private static Dose DoseOf(string line) =>
        Assert.IsType<DoseLineResult.Understood>(DoseLine.Read(line, DoseSettings.Default)).Dose;
}
