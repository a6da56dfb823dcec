using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.CommandLine;

/// <summary>The folder that the file of a finding lies in.</summary>
internal enum FindingFolder
{
    Practice,
    Site,
    Theme,
}

/// <summary>Tells of a finding where its file lies: a finding names the file alone.</summary>
internal static class FindingFolders
{
    private static readonly HashSet<RuleId> OnPages =
    [
        .. RuleBook.Rules.Where(rule => rule is ISiteRule or IPublishedRule).Select(rule => rule.Id),
    ];

    /// <summary>A rule about finished pages may lead to a source; no page has the path of a source.</summary>
    public static FindingFolder Of(Finding finding, SourceFolder practice) =>
        practice.Has(finding.At.File) ? FindingFolder.Practice
        : finding.Rule == SiteRenderer.ThemeBroken ? FindingFolder.Theme
        : OnPages.Contains(finding.Rule) ? FindingFolder.Site
        : FindingFolder.Practice;

    /// <summary>The file's path in its folder; the sites of several clients lie side by side there.</summary>
    public static string PathOf(Finding finding, SourceFolder practice) =>
        Of(finding, practice) == FindingFolder.Site && finding.Client is { } client
            ? $"{client}/{finding.At.File}"
            : finding.At.File;
}
