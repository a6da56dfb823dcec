using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Media;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>A site as it would have been made with the pictures of another one, where these show the same: what was published on
/// another kind of machine is not called altered because the last digit of a colour is other.</summary>
internal static partial class AlikePictures
{
    [GeneratedRegex("(?<=\")data:image/(?:webp|jpeg);base64,[A-Za-z0-9+/=]+(?=\")", RegexOptions.CultureInvariant)]
    private static partial Regex WrittenOut();

    /// <param name="plan">Whose pictures may be others; whatever else a site has may not.</param>
    public static Site Taken(Plan plan, Site found, Site made)
    {
        var scaled = plan
            .Pictures.SelectMany(p => p.Files)
            .DistinctBy(f => f.Path)
            .ToDictionary(f => f.Path, StringComparer.Ordinal);
        if (scaled.Count == 0)
            return made;
        var there = found.Assets.ToDictionary(a => a.Path, StringComparer.Ordinal);
        var pages = found.Pages.ToDictionary(p => p.Path, p => p.Html, StringComparer.Ordinal);
        var data = new Dictionary<(string, string), bool>();
        var own = scaled.Values.ToLookup(f => Convert.ToBase64String(f.Bytes.Span), StringComparer.Ordinal);
        var newPages = made.Pages.Select(Page).ToSeries();
        var newAssets = made.Assets.Select(Asset).ToSeries();
        return new(
            made.Client,
            newPages,
            newAssets.Select(a =>
                a.Path == PagePath.FileList
                    ? a with
                    {
                        Bytes = System.Text.Encoding.UTF8.GetBytes(FileList.Of(newPages, newAssets)),
                    }
                    : a
            )
        );

        Asset Asset(Asset asset) =>
            scaled.ContainsKey(asset.Path)
            && there.TryGetValue(asset.Path, out var other)
            && PictureLikeness.AreAlike(asset.Bytes, other.Bytes)
                ? other
                : asset;

        Page Page(Page page) =>
            pages.TryGetValue(page.Path, out var html) && html != page.Html ? page with { Html = In(page.Html, html) } : page;

        string In(string html, string other)
        {
            var (asked, others) = (WrittenOut().Matches(html), WrittenOut().Matches(other));
            var at = -1;
            return asked.Count == others.Count ? WrittenOut().Replace(html, one => Either(one.Value, others[++at].Value)) : html;
        }

        string Either(string one, string other) =>
            one != other && own.Contains(BytesOf(one)) && KindOf(one) == KindOf(other) && Known(BytesOf(one), BytesOf(other))
                ? other
                : one;

        bool Known(string one, string other) =>
            data.TryGetValue((one, other), out var alike)
                ? alike
                : data[(one, other)] = Decoded(other) is { } bytes && PictureLikeness.AreAlike(own[one].First().Bytes, bytes);
    }

    private static string KindOf(string address) => address[..address.IndexOf(',', StringComparison.Ordinal)];

    private static string BytesOf(string address) => address[(address.IndexOf(',', StringComparison.Ordinal) + 1)..];

    private static byte[]? Decoded(string text)
    {
        var bytes = new byte[text.Length];
        return Convert.TryFromBase64String(text, bytes, out var written) ? bytes[..written] : null;
    }
}
