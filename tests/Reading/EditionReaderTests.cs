using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;
using Gradus.Trainings;

namespace Gradus.Tests.Reading;

/// <summary>Records of editions: whatever is wrong with one is a warning beside it, and it is passed over.</summary>
public sealed class EditionReaderTests
{
    private static readonly LittlePractice Practice = LittlePractice.Golden;

    private static readonly ClientId Id = Practice.Read().Clients[0].Id;

    private static string Record(int number, string title = "")
    {
        var practice = Practice.Read();
        var client = practice.Clients[0];
        var made = EditionContents.Of(Training.Of(practice, client), Texts.Of(practice, client));
        var content = title.Length > 0 ? made with { Title = title } : made;
        return EditionText.Print(
            new(number, new(2027, 1, 4), new('a', 64), EditionText.HashOf(content), content, Location.Whole("x"))
        );
    }

    private static string At(int number) => Edition.PathOf(Id, number);

    [Fact]
    public void Editions_stand_in_the_order_of_their_numbers()
    {
        var client = Practice.With(At(10), Record(10)).With(At(9), Record(9)).Read().Clients[0];
        Assert.Equal([9, 10], client.Editions.Select(e => e.Number));
        Assert.Equal(10, client.LastEdition);
        Assert.Equal(new DateOnly(2027, 1, 4), client.Editions[0].Date);
    }

    /// <summary>What the records of the demonstration and of the little practice ask can be counted again.</summary>
    [Fact]
    public void What_was_asked_reads_back_as_a_dose()
    {
        var own = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;
        var asks = own
            .Clients.Append(Practice.With(At(1), Record(1)).Read().Clients[0])
            .SelectMany(c => c.Editions.SelectMany(e => e.Content.Sessions.SelectMany(s => s.Uses.SelectMany(u => u.Asks))))
            .ToArray();
        Assert.All(asks, asked =>
        {
            var dose = asked.Asked.Value?.AsDose ?? throw new InvalidOperationException($"'{asked.Dose}' is not understood.");
            var plus = dose.Terms.Plus is { } more ? $", plus {more.Sets} x on {more.Side}" : "";
            Assert.Equal(asked.Side, $"{dose.Terms.Side?.Written}{plus}");
            Assert.Equal(asked.Dose, $"{dose with { Terms = dose.Terms with { Side = null, Plus = null } }}");
        });
        Assert.Contains(asks, a => a.Side == "right");
        Assert.Contains(asks, a => a.Side == "each side");
        Assert.Contains(asks, a => a.Side.Length == 0);
    }

    [Fact]
    public void A_title_with_quotation_marks_and_strokes_reads_back()
    {
        const string Title = "A \"long\" \\ reach: [ yes ] # no, 'this'";
        Assert.Equal(Title, Practice.With(At(1), Record(1, Title)).Read().Clients[0].Editions[0].Content.Title);
    }

    public static TheoryData<string, string> Damages =>
        new()
        {
            { "cut off", Record(1)[..500] },
            { "empty", "" },
            { "no last line", Record(1).TrimEnd('\n') },
            { "another number", Record(2) },
            { "another dose", Record(1).Replace("dose: \"", "dose: \"1", StringComparison.Ordinal) },
            { "another hash", Record(1).Replace("plan: ", "plan: 0", StringComparison.Ordinal) },
            { "another key", Record(1).Replace("weeks: ", "colour: red\nweeks: ", StringComparison.Ordinal) },
            { "no id", Record(1).Replace("- exercise: ", "- exercise: A ", StringComparison.Ordinal) },
            { "another time", Record(1).Replace("times: [", "times: [x, ", StringComparison.Ordinal) },
            { "a list", "- edition: 1\n" },
        };

    [Theory, MemberData(nameof(Damages))]
    public void A_damaged_record_is_a_warning(string damage, string text)
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(Practice.With(At(1), text).Folder, findings).Practice!;
        Assert.True(findings.Count > 0, $"Nothing is found of a record with {damage}.");
        Assert.All(findings, f => Assert.Equal((Level.Warning, At(1)), (f.Level, f.At.File)));
        Assert.False(findings.Block(Id, Reach.Of(practice)));
        Assert.Empty(practice.Clients[0].Editions);
        Assert.Equal(1, practice.Clients[0].LastEdition);
        Assert.Equal(2, Planned.For(practice, practice.Clients[0]).Edition);
    }

    [Theory]
    [InlineData("01.yaml")]
    [InlineData("0.yaml")]
    [InlineData("1.yml")]
    [InlineData("notes.txt")]
    [InlineData("old/1.yaml")]
    public void What_is_no_record_is_a_warning_and_not_read(string name)
    {
        var path = $"clients/{Id}/{Edition.Folder}/{name}";
        var finding = Assert.Single(Practice.With(path, Record(1)).Findings());
        Assert.Equal((Faults.FileNameWrong, Level.Warning, path), (finding.Rule, finding.Level, finding.At.File));
    }
}
