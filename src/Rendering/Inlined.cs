using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>A style or a script that stands in the page itself, and the hash by which the page's policy knows it (CSP Level 3,
/// 2.3.1).</summary>
internal sealed record Inlined(Html Markup, string Hash)
{
    public static Inlined Style(Theme theme, Series<string> files) =>
        theme.Once(string.Join(' ', files), () =>
            Of("style", PageStyle.Written(files.Select(theme.Text)), theme, files, "</style")
        );

    public static Inlined Script(Theme theme, BuiltScript script) =>
        theme.Once(script.Path, () =>
            Of("script", Compact.Script(script.Text(theme.Text)), theme, script.Sources, "</script", "<!--")
        );

    private static Inlined Of(string tag, string text, Theme theme, IEnumerable<string> files, params string[] ends)
    {
        foreach (var (file, end) in files.SelectMany(file => ends.Select(end => (file, end))))
            if (theme.Text(file).Contains(end, StringComparison.OrdinalIgnoreCase))
                throw new ThemeException(
                    Location.Whole(file),
                    $"'{end}' cannot stand in the {tag} of a page.",
                    "Write it in another way; it would end that part of the page too early."
                );
        return new(
            new($"<{tag}>{text}</{tag}>"),
            "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))
        );
    }
}
