using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>What one rule says of the little practice, changed in places.</summary>
internal static class OneRule
{
    /// <param name="edits">Each a path, and then lines as a rule's page writes them; several with an empty line between. An empty
    /// text is none.</param>
    public static Finding[] Says(string rule, params string[] edits) =>
        [
            .. Trial
                .Of([
                    .. edits
                        .SelectMany(e => e.Split("\n\n", StringSplitOptions.RemoveEmptyEntries))
                        .Select(e => e.Split('\n'))
                        .Select(lines => Edit.Of(lines[0], lines.Skip(1))),
                ])
                .Where(f => f.Rule.Text == rule),
        ];
}
