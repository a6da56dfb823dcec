using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>A kind of file whose keys a schema can describe.</summary>
/// <param name="Name">Of the schema's file, without its ending.</param>
/// <param name="Path">Of such files, as <c>practice-format.md</c> writes it.</param>
internal sealed record SchemaKind(string Name, string Path)
{
    public static readonly Series<SchemaKind> All =
    [
        new("practice", "practice.md"),
        new("conditions", "conditions.yaml"),
        new("motions", "motions.yaml"),
        new("sport", "sports/ID.yaml"),
        new("caution", "cautions/ID.md"),
        new("exercise", "exercises/ID.md"),
        new("caution-translation", "cautions/ID.LANG.md"),
        new("exercise-translation", "exercises/ID.LANG.md"),
        new("client", "clients/ID/client.yaml"),
        new("shared-programme", "programmes/ID.md"),
        new("programme", "clients/ID/programme.md"),
        new("group", "groups/ID.yaml"),
        new("answers", "clients/ID/answers.yaml"),
        new("link", "clients/ID/link.yaml"),
        new("edition", "clients/ID/editions/N.yaml"),
        new("words", "words/LANG.yaml"),
        new("glossary", "glossary.yaml"),
        new("accepted", "accepted.yaml"),
    ];

    /// <summary>Null for any other file.</summary>
    public static SchemaKind? Of(string path) => All.FirstOrDefault(kind => kind.Fits(path));

    private bool Fits(string path)
    {
        var (parts, its) = (path.Split('/'), Path.Split('/'));
        return parts.Length == its.Length && parts.Zip(its).All(p => Fits(p.First, p.Second));
    }

    /// <summary>"ID.LANG.md" for any two names with a dot between them; an id has none.</summary>
    private static bool Fits(string part, string its)
    {
        var (names, asked) = (part.Split('.'), its.Split('.'));
        return names.Length == asked.Length
            && names.Zip(asked).All(n => n.Second is "ID" or "LANG" or "N" || n.First == n.Second);
    }
}
