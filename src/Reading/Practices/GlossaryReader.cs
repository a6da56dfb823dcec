using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>glossary.yaml</c>: words with their explanations.</summary>
internal static class GlossaryReader
{
    public static Series<GlossaryEntry> Read(SourceFile sheet)
    {
        var entries = Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "a glossary")?.OwnEntries ?? [];
        return entries
            .Select(e => (e, text: Values.Shown(sheet, e.Key, e.Value)))
            .Where(e => e.text is not null)
            .Select(e => new GlossaryEntry(e.e.Key, e.text?.Value ?? "", e.e.KeyAt))
            .ToSeries();
    }
}
