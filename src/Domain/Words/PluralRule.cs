using System.Globalization;
using System.Text.RegularExpressions;

namespace Gradus.Domain;

/// <summary>Which whole numbers take a form, in the way in which the Unicode CLDR writes it (Unicode Technical Standard 35, part
/// 3, "Plural rules syntax"), with <c>n</c> alone: <c>n % 10 = 2..4 and n % 100 != 12..14 or n = 0</c>.</summary>
public sealed partial class PluralRule
{
    /// <summary>One of them fits where all of its relations do.</summary>
    private readonly Series<Series<Relation>> either;

    private PluralRule(Series<Series<Relation>> either) => this.either = either;

    [GeneratedRegex(
        @"^n(?: % (?<by>[1-9][0-9]{0,8}))? (?<sign>=|!=) "
            + @"(?<ranges>[0-9]{1,9}(?:\.\.[0-9]{1,9})?(?:,[0-9]{1,9}(?:\.\.[0-9]{1,9})?)*)\z",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex RelationShape();

    /// <summary>Null where the text is no such rule.</summary>
    public static PluralRule? Read(string text)
    {
        var either = text.Split(" or ").Select(all => all.Split(" and ").Select(RelationOf).ToArray()).ToArray();
        return either.Any(all => all.Contains(null))
            ? null
            : new(either.Select(all => all.OfType<Relation>().ToSeries()).ToSeries());
    }

    public bool Fits(int number) => either.Any(all => all.All(relation => relation.Fits(number)));

    private static Relation? RelationOf(string text)
    {
        if (RelationShape().Match(text) is not { Success: true } found)
            return null;
        var ranges = found.Groups["ranges"].Value.Split(',').Select(range => range.Split("..").Select(Number).ToArray());
        return new(
            found.Groups["by"] is { Success: true } by ? Number(by.Value) : null,
            found.Groups["sign"].Value == "=",
            ranges.Select(r => (r[0], r[^1])).ToSeries()
        );
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    /// <param name="By">What the number is divided by, for what is left over; null where it is taken whole.</param>
    /// <param name="Ranges">Both ends are in them.</param>
    private sealed record Relation(int? By, bool IsIn, Series<(int From, int To)> Ranges)
    {
        public bool Fits(int number)
        {
            var left = By is { } by ? number % by : number;
            return Ranges.Any(r => left >= r.From && left <= r.To) == IsIn;
        }
    }
}
