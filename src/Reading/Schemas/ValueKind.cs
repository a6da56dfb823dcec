using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>What a reader takes for the value of a key.</summary>
internal abstract record ValueKind
{
    public static readonly ValueKind Any = new Plain(),
        DayCount = new Pattern("^[1-9][0-9]{0,3} days$", IsOfDigits: false);

    /// <summary>Which months have how many days is for the reader.</summary>
    public static readonly ValueKind Day = new Pattern(
        "^(19|20|21)[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$",
        IsOfDigits: false
    );

    /// <summary>How long it may be is for the reader.</summary>
    public static readonly ValueKind Time = new Pattern(
        "^(?=.)((0|[1-9][0-9]{0,3}) min)?( ?(0|[1-9][0-9]{0,3}) s)?$",
        IsOfDigits: false
    );

    private ValueKind() { }

    /// <param name="most">In per cent: 100, 1000 …</param>
    public static ValueKind Share(int most)
    {
        var digits = most.ToString(CultureInfo.InvariantCulture);
        return new Pattern($"^([1-9][0-9]{{0,{digits.Length - 2}}}|{digits}) *%$", IsOfDigits: false);
    }

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
