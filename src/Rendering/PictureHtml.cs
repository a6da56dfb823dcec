using System.Globalization;
using System.Text;
using Gradus.Domain;

namespace Gradus.Rendering;

/// <summary>A picture → the element that shows it: as WebP in the size that the screen needs, and as JPEG where a browser shows
/// no WebP. Where a form of the site has one size in one format, that alone.</summary>
internal static class PictureHtml
{
    /// <summary>How wide a page shows it at most, for a browser to choose by.</summary>
    private const string Shown = "(min-width: 48rem) 44rem, 100vw";

    /// <param name="sizes">The smallest first; at least one.</param>
    /// <param name="shows">What it shows, in words.</param>
    /// <param name="more">Attributes of the picture, each with a blank before it.</param>
    public static string Of(Series<PictureSize> sizes, string shows, string more)
    {
        var (small, large) = (sizes[0], sizes[^1]);
        var html = new StringBuilder();
        if (small.Jpeg is not null)
            html.Append(CultureInfo.InvariantCulture, $"<picture><source type=\"image/webp\" {Choice(sizes)}>");
        html.Append(
            CultureInfo.InvariantCulture,
            $"<img src=\"{(small.Jpeg ?? small.WebP).Path}\" alt=\"{Html.Escape(shows)}\" width=\"{large.Width}\" "
                + $"height=\"{large.Height}\"{more}>"
        );
        if (small.Jpeg is not null)
            html.Append("</picture>");
        return html.ToString();
    }

    /// <summary>Of one size there is nothing to choose.</summary>
    private static string Choice(Series<PictureSize> sizes) =>
        sizes is [var only]
            ? $"srcset=\"{only.WebP.Path}\""
            : $"srcset=\"{string.Join(", ", sizes.Select(Candidate))}\" sizes=\"{Shown}\"";

    private static string Candidate(PictureSize size) =>
        string.Create(CultureInfo.InvariantCulture, $"{size.WebP.Path} {size.Width}w");
}
