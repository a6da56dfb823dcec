using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.CommandLine;

/// <summary>What is other between two sites of one client.</summary>
internal static class Changes
{
    /// <summary>Stands for every page: a file that any of them may show is other.</summary>
    public const string Every = "*";

    /// <summary>The pages that a browser must show anew, by path.</summary>
    public static IEnumerable<string> Between(Site? before, Site? after)
    {
        if (before is null || after is null)
            return [Every];
        var pages = before.Pages.ToDictionary(p => p.Path, p => p.Html, StringComparer.Ordinal);
        // The list of files for later changes with every page, and no page shows it.
        return Files(before).SequenceEqual(Files(after), SameFile.Instance)
            ? after.Pages.Where(p => pages.GetValueOrDefault(p.Path) != p.Html).Select(p => p.Path)
            : [Every];
    }

    private static IEnumerable<Asset> Files(Site site) => site.Assets.Where(a => a.Path != PagePath.FileList);

    private sealed class SameFile : IEqualityComparer<Asset>
    {
        public static readonly SameFile Instance = new();

        public bool Equals(Asset? one, Asset? other) =>
            one is not null && other is not null && one.Path == other.Path && one.Bytes.Span.SequenceEqual(other.Bytes.Span);

        public int GetHashCode(Asset asset) => asset.Path.GetHashCode(StringComparison.Ordinal);
    }
}
