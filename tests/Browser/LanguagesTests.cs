using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;
using Gradus.ThemeCheck;

namespace Gradus.Tests.Browser;

/// <summary>Plural forms, decimal marks, directions, dates and lists held against the Unicode CLDR that the engine of node
/// carries (Intl).</summary>
public sealed class LanguagesTests(ITestOutputHelper output)
{
    private static readonly string[] Languages =
    [
        "ar",
        "cs",
        "da",
        "de",
        "en",
        "es",
        "fi",
        "fr",
        "he",
        "hu",
        "it",
        "ja",
        "nb",
        "nl",
        "pl",
        "pt",
        "ru",
        "sv",
        "tr",
        "uk",
        "zh",
    ];
    private static readonly int[] Numbers = [.. Enumerable.Range(0, 1200), 1999, 2000, 10_000, 10_001, 100_000, 100_011, 999_999];
    private static readonly string[] Listed = ["a", "b", "c"];

    private sealed record Asked(string[] Languages, int[] Numbers, string[] Dated, string[] Days, string[] Listed);

    private sealed record Spoken(string Code, string[] Forms, string Mark, string Direction);

    private sealed record Said(Spoken[] Languages, string[][] Dates, string[] Lists);

    [Fact]
    public async Task Every_language_is_read_and_counted_as_the_cldr_says()
    {
        var said = await Ask();
        Assert.Equal(Languages, said.Languages.Select(l => l.Code));
        Assert.Equal(Languages, WordsIn("languages.yaml").Select(l => l[..l.IndexOf(':', StringComparison.Ordinal)]).ToArray());
        foreach (var spoken in said.Languages)
        {
            var words = WordsOf(spoken.Code);
            Assert.Equal((spoken.Code, spoken.Direction), (words.Language, words.Direction));
            Assert.Equal($"2{spoken.Mark}5", words.Say("metres", ("n", 2.5m)).Split(' ')[1]);
            Assert.Equal(spoken.Forms, Numbers.Select(n => words.Say("repetitions", ("n", n)).Split(' ')[0]));
        }

        output.WriteLine($"{Languages.Length} languages, {Numbers.Length} numbers each");
    }

    [Fact]
    public async Task Every_day_of_two_years_is_written_as_the_cldr_writes_it_and_so_is_a_list()
    {
        var said = await Ask();
        foreach (var (index, code) in new[] { "de", "en" }.Index())
        {
            var words = Practice(LittleFolder()).Words.In(code) ?? throw new InvalidOperationException($"No words in {code}.");

            // In English we write no comma behind the weekday.
            Assert.Equal(
                said.Dates[index].Select(day => code == "en" ? day.Replace(",", "", StringComparison.Ordinal) : day),
                Days().Select(words.Date)
            );
            Assert.Equal(said.Lists[index], words.And(Listed));
        }
    }

    private static IEnumerable<DateOnly> Days() => Enumerable.Range(0, 731).Select(new DateOnly(2027, 1, 1).AddDays);

    private static async Task<Said> Ask()
    {
        // British English, because that is what the English catalogue writes.
        var asked = new Asked(
            Languages,
            Numbers,
            ["de", "en-GB"],
            [.. Days().Select(d => d.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))],
            Listed
        );
        var start = new ProcessStartInfo("node", "say-languages.mjs")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Repository.Path("tests", "Browser"),
        };
        using var node = Process.Start(start) ?? throw new InvalidOperationException("node did not start");
        var stop = TestContext.Current.CancellationToken;
        var (said, trouble) = (node.StandardOutput.ReadToEndAsync(stop), node.StandardError.ReadToEndAsync(stop));
        await node.StandardInput.WriteAsync(JsonSerializer.Serialize(asked, JsonSerializerOptions.Web).AsMemory(), stop);
        node.StandardInput.Close();
        await node.WaitForExitAsync(stop);
        Assert.Equal("", await trouble);
        return JsonSerializer.Deserialize<Said>(await said, JsonSerializerOptions.Web)
            ?? throw new InvalidOperationException("node said nothing");
    }

    private static IEnumerable<string> WordsIn(string file) =>
        File.ReadLines(Repository.Path("src", "Reading", "Languages", file))
            .Where(line => line.Length > 0 && char.IsAsciiLetterLower(line[0]));

    /// <summary>A catalogue of that language in which a number of repetitions says the name of its form, and a number of metres
    /// itself.</summary>
    private static Words WordsOf(string code)
    {
        var text = FreshWords.IsBuiltIn(code)
            ? FreshWords
                .Text(code)
                .Replace("#repetitions:", "repetitions:", StringComparison.Ordinal)
                .Replace("#metres:", "metres:", StringComparison.Ordinal)
            : MadeUpWords.In(code);
        var lines = text.Split('\n')
            .Select(line =>
                line.StartsWith("repetitions: ", StringComparison.Ordinal)
                || line.StartsWith("metres: ", StringComparison.Ordinal)
                    ? Named(line)
                    : line
            );
        return Practice(LittleFolder(($"words/{code}.yaml", string.Join('\n', lines)))).Words.In(code)
            ?? throw new InvalidOperationException($"No words in {code}.");
    }

    /// <summary>Each form as its own name and the number.</summary>
    private static string Named(string line)
    {
        var forms = Language.AllForms.Where(form => line.Contains($" {form}: ", StringComparison.Ordinal));
        return $"{line[..line.IndexOf(':', StringComparison.Ordinal)]}: {{ "
            + $"{string.Join(", ", forms.Select(form => $"{form}: \"{form} {{n}}\""))} }}";
    }

    private static SourceFolder LittleFolder(params (string Path, string Text)[] more)
    {
        var content = SourceFolder.Open(Repository.Path("content"));
        return SourceFolder.Of(
            content
                .Paths.Select(path => KeyValuePair.Create(path, content.Read(path)))
                .Concat(more.Select(m => KeyValuePair.Create(m.Path, System.Text.Encoding.UTF8.GetBytes(m.Text))))
        );
    }

    private static Practice Practice(SourceFolder folder)
    {
        var findings = new Findings();
        var practice = PracticeReader.Read(folder, findings).Practice;
        Assert.Empty(findings);
        return practice ?? throw new InvalidOperationException("The practice cannot be read.");
    }
}
