using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>A fault planted in the little practice, and the rules that must find it: all of them, and no other.</summary>
/// <param name="Rules">With their levels, as "error side-said-twice", separated by commas; empty where nothing is wrong.</param>
/// <param name="Edits">Each a path, and then lines as a rule's page writes them.</param>
public sealed record PlantedSourceFault(string Kind, string Rules, params string[] Edits)
{
    /// <summary>What finds it, in the order of the names of the rules.</summary>
    public string Found() =>
        string.Join(
            ", ",
            Findings()
                .OrderBy(f => f.Rule.Text, StringComparer.Ordinal)
                .Select(f => $"{f.Level.ToString().ToLowerInvariant()} {f.Rule}")
                .Distinct()
        );

    public void MustBeFound() => Assert.True(Rules == Found(), $"{Kind}: expected '{Rules}'\n{Example.Written(Findings())}");

    public override string ToString() => Kind;

    private Series<Finding> Findings() =>
        Trial.Of(Edits.Select(e => e.Split('\n')).Select(lines => Edit.Of(lines[0], lines.Skip(1))).ToSeries());
}
