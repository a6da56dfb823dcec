using System.Globalization;
using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The one rule that is told something beside the plan and the site: the names of the other clients.</summary>
public sealed class OtherClientNamed : IRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site, IEnumerable<string> others)
    {
        var own = new[] { plan.ClientName, plan.Publisher.Coach, plan.Publisher.Practice }.Select(Plain).ToArray();
        foreach (var other in others.Where(name => !own.Any(o => o.Contains(Plain(name), StringComparison.OrdinalIgnoreCase))))
        {
            foreach (var at in Places(site, other))
            {
                yield return new(
                    RuleId.Of(GetType()), Level.Error, plan.Client, at, $"Another client, {other}, is named in {plan.ClientName}'s site.",
                    "Take the name out where it is written: the letter, an exercise, a caution or the theme.");
            }
        }
    }

    /// <summary>The lines of the pages that name somebody; a page as a whole where the name is only in what nobody sees; and other files.</summary>
    private static IEnumerable<Location> Places(SiteReading site, string name)
    {
        foreach (var page in site.Pages)
        {
            var lines = page.Lines.Where(l => Names(l.Text, name)).Select(l => l.At).ToArray();
            foreach (var at in lines) yield return at;
            if (lines.Length == 0 && Names(page.Html, name)) yield return Location.Whole(page.Path);
        }

        foreach (var text in site.Texts.Where(t => Names(t.Text, name))) yield return Location.Whole(text.Path);
        foreach (var file in site.Files.Where(f => Bare(f).Contains(Bare(name), StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)) yield return Location.Whole(file);
    }

    /// <summary>Whether the whole name stands there, however its letters are cased or written and its words are spaced.</summary>
    private static bool Names(string text, string name)
    {
        var decoded = text.Contains('&', StringComparison.Ordinal) ? System.Net.WebUtility.HtmlDecode(text) : text;
        return Plain(decoded).Contains(Plain(name), StringComparison.OrdinalIgnoreCase)
            || (decoded.Contains('%', StringComparison.Ordinal) && Plain(Uri.UnescapeDataString(decoded)).Contains(Plain(name), StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Composed letters, single spaces, and none of the marks that nobody sees.</summary>
    private static string Plain(string text) =>
        Spacing.Collapse(string.Concat(text.Where(c => char.GetUnicodeCategory(c) != UnicodeCategory.Format)).Normalize(NormalizationForm.FormC));

    /// <summary>The letters and digits alone, as the name of a file might put them together.</summary>
    private static string Bare(string text) => string.Concat(Plain(text).Where(char.IsLetterOrDigit));
}
