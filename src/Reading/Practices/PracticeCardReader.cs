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
        var emergency = EmergencyReader.In(fields);
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
}
