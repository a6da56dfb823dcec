namespace Gradus.Domain;

/// <summary>What must be known of a language to write in it.</summary>
/// <param name="Code">BCP 47, two letters.</param>
/// <param name="DecimalMark">What stands before the tenths.</param>
/// <param name="Plurals">The kinds of whole numbers that the language tells apart, each with its rule; whatever falls under none
/// is <see cref="Other"/>.</param>
public sealed record Language(string Code, bool IsRightToLeft, string DecimalMark, Series<PluralForm> Plurals)
{
    /// <summary>The kind that every language has.</summary>
    public const string Other = "other";

    /// <summary>Every kind, by its name in the Unicode CLDR: zero, one, two, few, many, other.</summary>
    public static readonly Series<string> AllForms = ["zero", "one", "two", "few", "many", Other];

    /// <summary>Those that a phrase with a number needs.</summary>
    public IEnumerable<string> Forms => Plurals.Select(p => p.Name).Append(Other);

    public string Direction => IsRightToLeft ? "rtl" : "ltr";

    /// <param name="number">Not negative.</param>
    public string FormOf(int number) => Plurals.FirstOrDefault(p => p.Rule.Fits(number))?.Name ?? Other;
}

/// <param name="Name">As the Unicode CLDR calls it.</param>
public sealed record PluralForm(string Name, PluralRule Rule);
