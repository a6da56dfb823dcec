using Gradus.Domain;

namespace Gradus.Reading;

internal static class Country
{
    /// <summary>Whether a text has the shape of an ISO 3166 two-letter code.</summary>
    public static bool IsCode(string text) => text.Length == 2 && text.All(char.IsAsciiLetterUpper);

    /// <summary>The same, for a schema.</summary>
    public static readonly ValueKind Kind = new ValueKind.Pattern("^[A-Z]{2}$", IsOfDigits: false);

    /// <summary>A client's country, which decides whom to call in an emergency. Where the practice has one alone it may be left
    /// out.</summary>
    /// <param name="known">The countries of the practice; null where they are not known, which is said elsewhere.</param>
    public static Mention<string>? In(Fields fields, Series<string>? known)
    {
        if (fields.Mention("country") is not { } country)
            return fields.Has("country") ? null : Only(fields, known);
        fields.SourceFile.Note(country, Kind);
        if (IsCode(country.Value))
            return country;
        fields.SourceFile.Fault(
            Faults.ValueWrong,
            country.At,
            $"{Quote.Of(country.Value)} is no country.",
            "Write the two capital letters of the country, as GB or IE.",
            country.Value.Length
        );
        return null;
    }

    private static Mention<string>? Only(Fields fields, Series<string>? known)
    {
        if (known is [var only])
            return new(only, fields.SourceFile.Whole);
        if (known is not null)
            fields.SourceFile.Fault(
                Faults.KeyMissing,
                fields.Entries.FirstOrDefault()?.KeyAt ?? fields.At,
                $"'country' is missing, and practice.md has numbers for "
                    + $"{(known.Count == 0 ? "none" : string.Join(", ", known))}.",
                "Add a line 'country:' with the country in which the client trains: it decides whom to call in an " + "emergency."
            );
        return null;
    }
}
