using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.HandingOver;

/// <summary>One file of a site as it will stand on the disk.</summary>
internal sealed record SiteFile(string Path, ReadOnlyMemory<byte> Bytes)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Every file of a site, in the ordinal order of the paths. Pages are UTF-8 without mark, their lines as they
    /// are.</summary>
    /// <exception cref="HandOverException">A path cannot be handed over, a page is no text, or there is no front
    /// page.</exception>
    public static Series<SiteFile> AllOf(Site site)
    {
        var files = site
            .Pages.Select(page => new SiteFile(page.Path, Encoded(page)))
            .Concat(site.Assets.Select(asset => new SiteFile(asset.Path, asset.Bytes)))
            .OrderBy(file => file.Path, StringComparer.Ordinal)
            .ToSeries();
        SitePath.Check(files.Select(file => file.Path));
        if (files.All(file => file.Path != PagePath.Home))
            throw new HandOverException($"The site of '{site.Client}' has no {PagePath.Home}.", "Give the theme a front page.");
        return files;
    }

    private static byte[] Encoded(Page page)
    {
        try
        {
            return Utf8.GetBytes(page.Html);
        }
        catch (EncoderFallbackException half)
        {
            throw new HandOverException(
                $"The page '{page.Path}' holds half a character.",
                "Look for a letter that was cut in two in its text.",
                half
            );
        }
    }
}
