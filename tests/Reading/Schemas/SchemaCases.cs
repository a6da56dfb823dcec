using System.Reflection;
using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Reading;

/// <summary>Files that the reader takes, and the mistakes of the tables of the reader's tests.</summary>
internal static class SchemaCases
{
    /// <summary>Kinds of files that no practice in this house has, and other ways to write a value.</summary>
    private static readonly Series<(string Path, string Text)> Others =
    [
        ("cautions/pinch.de.md", "---\ntitle: Ein Kneifen\n---\nGeh zurück.\n"),
        ("exercises/lean.de.md", "---\ntitle: Anlehnen\nstart: { shows: Eine Wand }\n---\nWarum.\n"),
        ("words/de.yaml", "your-weeks: Alle Wochen\nseconds: { one: 1 Sekunde, other: \"{n} Sekunden\" }\n"),
        ("words/cy.yaml", "language: { direction: ltr, decimal-mark: \".\", plural: { one: n = 1 } }\n"),
        ("accepted.yaml", "- rule: equipment-missing\n  file: practice.md\n  because: So.\n  by: Me\n  until: 2027-06-30\n"),
        ("clients/x/answers.yaml", "answered: 2026-11-20\nanswers: { pain-now: 10 left knee, fever: yes }\n"),
        ("clients/x/answers.yaml", "answered: 2026-11-20\nborn: 1970\nanswers: { pain-now: 0, sore: 'yes, left' }\n"),
        (
            "clients/x/programme.md",
            "---\ntitle: 12\nstart: 2026-12-07\nweeks: 104\npause: { from: 2026-12-21, until: 2026-12-22 }\nretest: 104\n"
                + "sessions:\n  - name: true\n    days: every 14 days\n    do:\n      - rounds: 2\n"
                + "        of: [{ use: a, from-week: 104 }]\n"
                + "alternate:\n  - name: b\n    instead-of: c\n    kind: short\n    do:\n      - rounds: 3\n"
                + "        rest: 1 min 30 s\n"
                + "        of: [{ use: a, by-week: { 104: 2 x hold 30 s, 3: { use: easier } } }]\n---\nx\n"
        ),
    ];

    /// <summary>Without a fault of reading.</summary>
    public static Series<SchemaCase> Good() =>
        LittlePractice
            .Golden.Files.Select(f => SchemaFiles.Of("golden " + f.Key, f.Key, Encoding.UTF8.GetString(f.Value), "", ""))
            .Concat(Others.Select(f => SchemaFiles.Of(f.Path, f.Path, f.Text, "", "")))
            .OfType<SchemaCase>()
            .Concat(SchemaFiles.Good())
            .ToSeries();

    /// <summary>Each mistake that stands in a header or a YAML file, with the first thing that the reader says of it.</summary>
    public static Series<SchemaCase> Bad() => Rows().Select(Case).OfType<SchemaCase>().ToSeries();

    private static IEnumerable<string> Rows() =>
        from type in Assembly.GetExecutingAssembly().GetTypes()
        where type.Namespace == "Gradus.Tests.Reading"
        orderby type.Name
        from property in type.GetProperties(BindingFlags.Static | BindingFlags.Public)
        where property.PropertyType == typeof(TheoryData<string>) && property.Name.EndsWith("Rows", StringComparison.Ordinal)
        from row in (TheoryData<string>?)property.GetValue(null) ?? []
        where row.Data.Split('\n') is [_, ['-', ..], ['+', ..], ..]
        select row.Data;

    private static SchemaCase? Case(string row)
    {
        var lines = row.Split('\n');
        var wrong = LittlePractice.Golden.Edit(lines[0], Written(lines[1]), Written(lines[2]));
        var found = wrong.Findings().FirstOrDefault(f => f.At.File == lines[0] && f.Level == Level.Error);
        return found is null || !IsInYaml(lines[0], wrong[lines[0]], found.At.Line)
            ? null
            : SchemaFiles.Of($"{lines[0]}: {found.Message}", lines[0], wrong[lines[0]], found.Rule.Text, found.Message);
    }

    private static bool IsInYaml(string path, string text, int line) =>
        path.EndsWith(".yaml", StringComparison.Ordinal)
        || line
            <= text.Split('\n').Index().Where(l => l.Item.TrimEnd() == "---").Select(l => l.Index + 1).Skip(1).FirstOrDefault();

    private static string Written(string line) => line.Length < 2 ? "" : line[2..].Replace('⏎', '\n').Replace('⇥', '\t');
}
