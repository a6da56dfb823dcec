using Gradus.Domain;

namespace Gradus.Reading;

internal static class PracticeCardReader
{
    public static PracticeCard? Read(SourceFile sheet, IReadOnlySet<string> exercises, MediaFiles media)
    {
        if (Headed.Read(sheet) is not { } headed || Fields.OfHeader(sheet, headed, "the practice") is not { } fields)
            return null;
        var name = fields.NeedText("name");
        var coach = fields.NeedText("coach");
        var contact = ContactReader.In(fields);
        var language = LanguageReader.In(fields);
        var emergency = EmergencyIn(fields);
        var settings = SettingsReader.Read(fields.Group("settings", "settings"));
        fields.Done();
        var scope = ProseReader.Read(sheet, headed.Body, headed.BodyLine, new(Placeholders: false, exercises, media));
        if (!scope.Lines().Any())
            sheet.Fault(
                Faults.KeyMissing,
                sheet.At(headed.BodyLine, 1),
                "Nothing says what these programmes are, and are not.",
                "Write below the header that they do not replace advice from a doctor or a physiotherapist."
            );
        return name is null || coach is null || contact is null || language is null
            ? null
            : new(name, coach, contact, language.Value, emergency, settings, scope, sheet.Whole);
    }

    private static Series<EmergencyText> EmergencyIn(Fields fields)
    {
        if (fields.NeedGroup("emergency", "emergency") is not { } texts)
            return [];
        var emergency = new List<EmergencyText>();
        foreach (var entry in texts.Entries)
        {
            if (!Country.IsCode(entry.Key))
                fields.SourceFile.Fault(
                    Faults.ValueWrong,
                    entry.KeyAt,
                    $"{Quote.Of(entry.Key)} is no country.",
                    "Write the two capital letters of the country, as GB or IE.",
                    Math.Max(1, entry.Key.Length)
                );
            else if (Values.Text(fields.SourceFile, entry.Key, entry.Value) is { } text)
                emergency.Add(new(entry.Key, text.Value));
        }

        return emergency.ToSeries();
    }
}
