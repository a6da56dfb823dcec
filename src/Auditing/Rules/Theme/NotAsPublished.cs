using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class NotAsPublished : IPublishedRule
{
    private const string Again = "Publish the site again; where it was made with a theme of your own, name that with --theme.";

    /// <summary>Where the list of files agrees with the files themselves, nobody touched them: the sources or the theme are other
    /// than they were.</summary>
    public IEnumerable<Finding> Check(Plan plan, Site found, Site made)
    {
        var (there, planned) = (FilesOf(found), FilesOf(AlikePictures.Taken(plan, found, made)));
        var changed = planned
            .Keys.Union(there.Keys)
            .Order(StringComparer.Ordinal)
            .Where(path => !IsSame(path, there, planned))
            .ToArray();
        if (changed.Length == 0)
            return [];
        if (there.TryGetValue(PagePath.FileList, out var list) && Text(list) == FileList.Of(found.Pages, found.Assets))
            return
            [
                Said(
                    PagePath.FileList,
                    1,
                    $"These pages are of another edition than the sources are now: {changed.Length} of {planned.Count} files "
                        + "would be other."
                ),
            ];
        return changed.Select(path =>
            !there.TryGetValue(path, out var file) ? Said(path, 1, "This file of the site is missing.")
            : !planned.TryGetValue(path, out var meant) ? Said(path, 1, "This file is no part of the site.")
            : Said(path, LineOf(file, meant), "This file is not as it was published.")
        );

        Finding Said(string path, int line, string message) =>
            new(RuleId.Of(typeof(NotAsPublished)), Level.Error, plan.Client, new(path, line, 1), message, Again);
    }

    internal static Finding Locked(ClientId client, string path) =>
        new(
            RuleId.Of(typeof(NotAsPublished)),
            Level.Error,
            client,
            Location.Whole(path),
            "This locked file is not known as the one that the sources make now.",
            "Publish the site again, or look into it with --passphrase ask."
        );

    private static bool IsSame(
        string path,
        SortedDictionary<string, ReadOnlyMemory<byte>> there,
        SortedDictionary<string, ReadOnlyMemory<byte>> planned
    ) => there.TryGetValue(path, out var file) && planned.TryGetValue(path, out var meant) && file.Span.SequenceEqual(meant.Span);

    private static SortedDictionary<string, ReadOnlyMemory<byte>> FilesOf(Site site) =>
        new(
            site.Pages.Select(p => (p.Path, Bytes: (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(p.Html)))
                .Concat(site.Assets.Select(a => (a.Path, a.Bytes)))
                .ToDictionary(f => f.Path, f => f.Bytes),
            StringComparer.Ordinal
        );

    /// <summary>The first line that is other, from 1.</summary>
    private static int LineOf(ReadOnlyMemory<byte> file, ReadOnlyMemory<byte> meant)
    {
        var same = file.Span.CommonPrefixLength(meant.Span);
        return 1 + file.Span[..same].Count((byte)'\n');
    }

    private static string Text(ReadOnlyMemory<byte> bytes) => Encoding.UTF8.GetString(bytes.Span);
}
