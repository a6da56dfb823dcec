using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>Syllables and reading grades held against npm syllable and npm flesch-kincaid, whose words and sentences the engine
/// of node finds by itself.</summary>
public sealed partial class ReadingGradeTests(ITestOutputHelper output)
{
    private const int EnoughWords = 100;

    private sealed record Asked(string[] Words, string[][] Texts);

    private sealed record Graded(int Words, int Sentences, int Syllables, double Grade);

    private sealed record Said(int[] Syllables, Graded[] Grades);

    [GeneratedRegex(@"\p{L}+(?:['’]\p{L}+)?")]
    private static partial Regex Word();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [Fact]
    public async Task Of_the_common_words_of_our_own_texts_at_least_95_of_100_have_the_same_syllables()
    {
        var words = WordsOfOurs();
        var said = await Ask(new(words, []));
        var other = words
            .Zip(said.Syllables)
            .Where(w => Syllables.Of(w.First) != w.Second)
            .Select(w => $"{w.First} {Syllables.Of(w.First)}/{w.Second}")
            .ToArray();
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{words.Length} words, {1 - ((double)other.Length / words.Length):P2} the same; other: "
                    + $"{string.Join(", ", other)}"
            )
        );
        Assert.True(words.Length >= 2000, $"Only {words.Length} words.");
        Assert.InRange(other.Length, 1, words.Length * 5 / 100);
    }

    [Fact]
    public async Task The_grade_of_every_text_of_a_hundred_words_is_the_same_within_a_half()
    {
        var texts = new[] { "content", "src/CommandLine/Starter/practice" }.SelectMany(TextsOf).ToArray();
        var said = await Ask(
            new(
                [.. texts.SelectMany(t => t).SelectMany(LinesOf).SelectMany(line => Word().Matches(line)).Select(m => m.Value)],
                [.. texts.Select(t => t.SelectMany(LinesOf).ToArray())]
            )
        );
        var all = texts.Select(t => Readability.Of(t)).Zip(said.Grades).ToArray();
        var judged = all.Where(t => t.First.Words >= EnoughWords)
            .Select(t => Math.Abs((double)(t.First.Grade ?? 0) - t.Second.Grade))
            .ToArray();
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{texts.Length} texts, {judged.Length} of at least {EnoughWords} words: grades differ by "
                    + $"{judged.Max():0.00} at most, {judged.Average():0.00} on average; words "
                    + $"{all.Sum(t => t.First.Words)}/{all.Sum(t => t.Second.Words)}, sentences "
                    + $"{all.Sum(t => t.First.Sentences.Count)}/{all.Sum(t => t.Second.Sentences)}, syllables "
                    + $"{all.Sum(t => t.First.Syllables)}/{all.Sum(t => t.Second.Syllables)}"
            )
        );
        Assert.True(judged.Length >= 5, $"Only {judged.Length} texts are long enough.");
        Assert.All(judged, difference => Assert.InRange(difference, 0, 0.5));
        var words = texts
            .SelectMany(t => t)
            .SelectMany(LinesOf)
            .SelectMany(line => Word().Matches(line))
            .Select(m => m.Value)
            .ToArray();
        var same = words.Zip(said.Syllables).Count(w => Syllables.Of(w.First) == w.Second);
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{words.Length} words as they come, {(double)same / words.Length:P2} with the same syllables"
            )
        );
        Assert.True(same >= words.Length * 95 / 100);
    }

    /// <summary>Every word that the Markdown files, the catalogues and the comments of the project use in running text: small
    /// letters, or a capital first.</summary>
    private static string[] WordsOfOurs() =>
        Repository
            .Files("src", ".md")
            .Concat(Repository.Files("src", ".yaml").Where(f => !f.EndsWith("/de.yaml", StringComparison.Ordinal)))
            .Concat(Repository.Files("content", ".md"))
            .Concat(Repository.Files("content", ".yaml"))
            .Concat(Repository.Files("themes", ".md"))
            .Append(Repository.Path("README.md"))
            .Append(Repository.Path("DEVELOPERS.md"))
            .Select(File.ReadAllText)
            .Concat(
                Repository
                    .Files("src", ".cs")
                    .SelectMany(File.ReadLines)
                    .Where(IsComment)
                    .Select(line => Tag().Replace(line, " "))
            )
            .SelectMany(text => Word().Matches(text))
            .Select(m => m.Value)
            .Where(w => w.Skip(1).All(c => !char.IsUpper(c)))
            .Select(w => w.ToLowerInvariant())
            .Distinct()
            .Order(StringComparer.Ordinal)
            .ToArray();

    private static bool IsComment(string line) => line.TrimStart().StartsWith("//", StringComparison.Ordinal);

    /// <summary>Every text that a coach wrote in that practice, in its parts.</summary>
    private static IEnumerable<Prose[]> TextsOf(string folder)
    {
        var written = SourceFolder.Open(Repository.Path(folder));
        var filled = SourceFolder.Of(written.Paths.Select(path => KeyValuePair.Create(path, Filled(path, written.Read(path)))));
        var practice = PracticeReader.Read(filled, []).Practice
            ?? throw new InvalidOperationException($"{folder} cannot be read.");
        return practice
            .Exercises.Select(e => (Prose[])[e.Text.Why, .. e.Text.Instructions])
            .Concat(practice.Cautions.Select(c => (Prose[])[c.Body]))
            .Append([practice.Card.Scope])
            .Concat(practice.Clients.Select(c => (Prose[])[c.Programme.Letter]));
    }

    /// <summary>The days that are filled in when a practice is begun.</summary>
    private static byte[] Filled(string path, byte[] file) =>
        path.EndsWith(".csv", StringComparison.Ordinal)
        || path.EndsWith(".yaml", StringComparison.Ordinal)
        || path.EndsWith(".md", StringComparison.Ordinal)
            ? Encoding.UTF8.GetBytes(
                Encoding
                    .UTF8.GetString(file)
                    .Replace("@today@", "2026-12-02", StringComparison.Ordinal)
                    .Replace("@monday@", "2026-12-07", StringComparison.Ordinal)
            )
            : file;

    private static IEnumerable<string> LinesOf(Prose prose) =>
        prose.Blocks.SelectMany(block =>
            block switch
            {
                Block.Paragraph paragraph => [Prose.PlainOf(paragraph.Text)],
                Block.Listing list => list.Items.SelectMany(LinesOf),
                _ => Enumerable.Empty<string>(),
            }
        );

    private static Task<Said> Ask(Asked asked) => Node.Ask<Asked, Said>("count-reading.mjs", asked);
}
