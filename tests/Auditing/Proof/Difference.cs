using System.Text;
using AngleSharp;
using AngleSharp.Html.Parser;
using Gradus.Domain;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Where a broken site is another than it was, for somebody who has to find out why nothing was found.</summary>
internal static class Difference
{
    private const int Shown = 160;

    public static string Of(Site before, Site after)
    {
        var (old, now) = (Files(before), Files(after));
        foreach (var path in old.Keys.Union(now.Keys).Order(StringComparer.Ordinal))
        {
            var (was, said) = (old.GetValueOrDefault(path, ""), now.GetValueOrDefault(path, ""));
            if (path == Gradus.Planning.PagePath.FileList || said == was)
                continue;
            if (path.EndsWith(".html", StringComparison.Ordinal) && was.Length > 0)
                was = new HtmlParser().ParseDocument(was).ToHtml();
            var same = was.AsSpan().CommonPrefixLength(said);
            if (same < Math.Max(was.Length, said.Length))
                return $"{path}: {Cut(was, same)} => {Cut(said, same)}".Replace('\n', ' ');
        }

        return "nothing but its list of files";
    }

    private static string Cut(string text, int at)
    {
        var from = Math.Max(0, at - 30);
        return $"'{text[from..Math.Min(text.Length, from + Shown)]}'";
    }

    private static Dictionary<string, string> Files(Site site) =>
        site
            .Pages.Select(p => (p.Path, Text: p.Html))
            .Concat(site.Assets.Select(a => (a.Path, Text: Encoding.UTF8.GetString(a.Bytes.Span))))
            .ToDictionary(f => f.Path, f => f.Text, StringComparer.Ordinal);
}
