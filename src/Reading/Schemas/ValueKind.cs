using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a reader takes for the value of a key.</summary>
internal abstract record ValueKind
{
    private ValueKind() { }

    /// <summary>Any text; a number is one too.</summary>
    public sealed record Plain : ValueKind;

    public sealed record OneOf(Series<string> Words) : ValueKind;

    /// <param name="Regex">Without named groups, of the whole text, as ECMA-262 has it.</param>
    /// <param name="IsOfDigits">Whether bare digits can be it, which YAML takes for a number.</param>
    public sealed record Pattern(string Regex, bool IsOfDigits) : ValueKind;

    /// <summary>Both ends inclusive.</summary>
    public sealed record Whole(int Least, int Most) : ValueKind;

    /// <summary>No less than nothing, with decimals.</summary>
    public sealed record Number : ValueKind;

    public static ValueKind Of(Regex shape)
    {
        var text = Regex.Replace(shape.ToString(), @"\(\?<[a-z]+>", "(").Replace(@"\z", "$", StringComparison.Ordinal);
        return new Pattern(text, new[] { "12", "999", "1966" }.Any(shape.IsMatch));
    }

    public static ValueKind Of(IEnumerable<string> words) => new OneOf(words.ToSeries());
}
