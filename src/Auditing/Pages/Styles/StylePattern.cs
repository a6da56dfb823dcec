using System.Globalization;
using System.Text.RegularExpressions;

namespace Gradus.Auditing;

/// <summary>What a value may be, as a line of the list says it.</summary>
internal abstract partial record StylePattern
{
    /// <summary>A word, a text, a sign, or a number to the letter.</summary>
    public sealed record Literal(string Text) : StylePattern;

    public sealed record Call(string Name, IReadOnlyList<StylePattern> Inside) : StylePattern;

    /// <summary>A number with that unit; both ends count.</summary>
    public sealed record Between(double Least, double Most, string Unit) : StylePattern;

    public sealed record Kind(string Name, int Least, int Most) : StylePattern;

    [GeneratedRegex(@"\A(?<least>-?\d+(?:\.\d+)?)\.\.(?<most>-?\d+(?:\.\d+)?)(?<unit>[a-z%]*)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Range();

    [GeneratedRegex(@"\A<(?<name>[a-z-]+)>(?:\{(?<least>\d),(?<most>\d)\})?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Named();

    [GeneratedRegex(@"<([a-z-]+)>", RegexOptions.CultureInvariant)]
    private static partial Regex Inner();

    [GeneratedRegex(@"'[^']*'|""[^""]*""|\S+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    /// <summary>The alternatives of a line, each a sequence.</summary>
    public static IReadOnlyList<IReadOnlyList<StylePattern>> Alternatives(string line) =>
        [.. Cut(line).Select(IReadOnlyList<StylePattern> (words) => [.. words.SelectMany(Of)])];

    private static IEnumerable<List<string>> Cut(string line)
    {
        var words = new List<string>();
        foreach (var word in Word().Matches(line).Select(m => m.Value))
        {
            if (word != "|")
            {
                words.Add(word);
                continue;
            }

            yield return words;
            words = [];
        }

        yield return words;
    }

    private static IEnumerable<StylePattern> Of(string word)
    {
        if (Range().Match(word) is { Success: true } range)
            return [new Between(Number(range, "least"), Number(range, "most"), range.Groups["unit"].Value)];
        if (Named().Match(word) is { Success: true } named)
            return
            [
                new Kind(
                    named.Groups["name"].Value,
                    named.Groups["least"].Success ? (int)Number(named, "least") : 1,
                    named.Groups["most"].Success ? (int)Number(named, "most") : 1
                ),
            ];
        return StyleTerm.Of(Inner().Replace(word.Trim('\''), "--$1")).Select(Of);
    }

    private static StylePattern Of(StyleTerm term) =>
        term.Inside is { } inside ? new Call(term.Text, [.. inside.Select(Of)])
        : term.Text.StartsWith("--", StringComparison.Ordinal) ? new Kind(term.Text[2..], 1, 1)
        : new Literal(term.Text);

    private static double Number(Match match, string group) =>
        double.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);
}
