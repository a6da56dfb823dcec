using Gradus.Domain;

namespace Gradus.Tests.Auditing;

/// <summary>A fault planted in a finished site, and the rules that must find it: all of them, and no other but the closed lists,
/// which refuse whatever is not planned or not known.</summary>
/// <param name="Kind">What is wrong, for the table.</param>
/// <param name="Rules">Separated by blanks; empty where nothing is wrong.</param>
public sealed record PlantedFault(string Kind, string Path, string Said, string Instead, string Rules)
{
    /// <summary>What refuses whatever is not planned or not known.</summary>
    public static readonly string[] ClosedLists =
    [
        "file-unplanned",
        "link-broken-on-page",
        "markup-not-known",
        "plan-words-altered",
        "script-asked-wrong",
        "style-not-known",
        "text-not-planned",
    ];

    /// <summary>The rules that find it, in the order of their names.</summary>
    public string Found() => string.Join(' ', Findings().Select(f => f.Rule.Text).Distinct().Order(StringComparer.Ordinal));

    /// <summary>What is found where the fault was planted, and nowhere else.</summary>
    public void MustBeFound()
    {
        var findings = Findings();
        Assert.True(IsRight(), $"{Kind}: expected '{Rules}'\n{Example.Written(findings)}");
        if (Path.EndsWith(".html", StringComparison.Ordinal))
            Assert.All(findings, f => Assert.Equal(Path, f.At.File));
    }

    /// <summary>Whether it is found by all of its rules, and by no other but the closed lists.</summary>
    public bool IsRight()
    {
        var (expected, found) = (Split(Rules), Split(Found()));
        return expected.All(found.Contains) && found.Except(expected).All(ClosedLists.Contains);
    }

    private static string[] Split(string rules) => rules.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    public override string ToString() => Kind;

    /// <summary>Whether it stands in the site of the client with a restriction.</summary>
    public bool IsRestricted { get; init; }

    private Series<Finding> Findings() =>
        IsRestricted
            ? FinishedSite.AuditRestricted(FinishedSite.RestrictedWith(Path, Said, Instead))
            : FinishedSite.Audit(FinishedSite.With(Path, Said, Instead));
}
