using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>A fault planted in a finished site, and the rules that must find it: all of them, and no other.</summary>
/// <param name="Kind">What is wrong, for the table.</param>
/// <param name="Rules">Separated by blanks; empty where nothing is wrong.</param>
public sealed record PlantedFault(string Kind, string Path, string Said, string Instead, string Rules)
{
    /// <summary>The rules that find it, in the order of their names. That a style is none of the list is not asked where the
    /// fault is another one.</summary>
    public string Found() =>
        string.Join(
            ' ',
            Findings()
                .Select(f => f.Rule.Text)
                .Where(rule => rule != "style-not-known" || Rules.Contains(rule, StringComparison.Ordinal))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    /// <summary>What is found where the fault was planted, and nowhere else.</summary>
    public void MustBeFound()
    {
        var findings = Findings();
        Assert.True(Rules == Found(), $"{Kind}: expected '{Rules}'\n{Example.Written(findings)}");
        if (Path.EndsWith(".html", StringComparison.Ordinal))
            Assert.All(findings, f => Assert.Equal(Path, f.At.File));
    }

    public override string ToString() => Kind;

    private Series<Finding> Findings() => FinishedSite.Audit(FinishedSite.With(Path, Said, Instead));
}
