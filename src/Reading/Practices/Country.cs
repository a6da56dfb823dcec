using Gradus.Domain;

namespace Gradus.Reading;

internal static class Country
{
    /// <summary>Whether a text has the shape of an ISO 3166 two-letter code.</summary>
    public static bool IsCode(string text) => text.Length == 2 && text.All(char.IsAsciiLetterUpper);

    public static Mention<string>? In(Fields fields)
    {
        if (fields.NeedMention("country") is not { } country)
            return null;
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
}
