using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>Whom a client calls in an emergency, by country. The numbers become links that a phone dials.</summary>
internal static partial class EmergencyReader
{
    /// <summary>Short numbers have two digits at least (17 and 18 in some countries); 15 are the most of ITU-T E.164.</summary>
    private const int FewestDigits = 2,
        MostDigits = 15;

    [GeneratedRegex(@"^\+?[0-9](?: ?[0-9])*\z", RegexOptions.CultureInvariant)]
    private static partial Regex NumberShape();

    public static Series<EmergencyNumber> In(Fields fields)
    {
        if (fields.NeedGroup("emergency", "emergency") is not { } countries)
            return [];
        var emergency = new List<EmergencyNumber>();
        foreach (var entry in countries.OwnEntries)
        {
            fields.SourceFile.Note(entry.Name, Country.Kind);
            if (!Country.IsCode(entry.Key))
                fields.SourceFile.Fault(
                    Faults.ValueWrong,
                    entry.KeyAt,
                    $"{Quote.Of(entry.Key)} is no country.",
                    "Write the two capital letters of the country, as GB or IE.",
                    Math.Max(1, entry.Key.Length)
                );
            else if (One(fields.SourceFile, entry) is { } number)
                emergency.Add(number);
        }

        return emergency.ToSeries();
    }

    private static EmergencyNumber? One(SourceFile sheet, YamlEntry entry)
    {
        if (entry.Value is YamlNode.Text sentence)
        {
            sheet.Fault(
                Faults.ValueWrong,
                sentence.At,
                $"A sentence stands here, so nobody can press the number to call in {entry.Key}.",
                $"Write {entry.Key}: {{ call: \"999\" }} with the number there; 'unsure' may be a number for whoever does not "
                    + "know how urgent it is, and 'text' what you want to add."
            );
            return null;
        }

        if (Fields.Of(sheet, entry.Value, "a country") is not { } fields)
            return null;
        var call = Number(sheet, fields.NeedMention("call"));
        var unsure = Number(sheet, fields.Mention("unsure"));
        var text = fields.Text("text");
        fields.Done();
        return call is null ? null : new(entry.Key, call, unsure, text);
    }

    private static string? Number(SourceFile sheet, Mention<string>? written)
    {
        if (written is null)
            return null;
        sheet.Note(written, ValueKind.Of(NumberShape()));
        if (NumberShape().IsMatch(written.Value) && written.Value.Count(char.IsAsciiDigit) is >= FewestDigits and <= MostDigits)
            return written.Value;
        sheet.Fault(
            Faults.ValueWrong,
            written.At,
            $"{Quote.Of(written.Value)} is no telephone number.",
            YamlFaults.OfQuotes(written.Value)
                ?? $"Write {FewestDigits} to {MostDigits} digits in quotation marks, as \"999\"; only spaces may stand between "
                    + "them, and a + before them.",
            written.Value.Length
        );
        return null;
    }
}
