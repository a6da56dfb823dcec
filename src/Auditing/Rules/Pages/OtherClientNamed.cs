using System.Buffers;
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
        var names = others.Select(name => (Name: name, Plain: Plain(name))).Where(n => !own.Any(o => o.Contains(n.Plain, StringComparison.OrdinalIgnoreCase))).ToArray();
        var anywhere = SearchValues.Create([.. names.Select(n => n.Plain)], StringComparison.OrdinalIgnoreCase);
        var inFileNames = SearchValues.Create([.. names.Select(n => Bare(n.Name))], StringComparison.OrdinalIgnoreCase);
        return Places(site, Named, file => Bare(file) is var bare && bare.AsSpan().ContainsAny(inFileNames) ? names.Where(n => bare.Contains(Bare(n.Name), StringComparison.OrdinalIgnoreCase)).Select(n => n.Name) : [])
            .Select(p => new Finding(
                RuleId.Of(GetType()), Level.Error, plan.Client, p.At, $"Another client, {p.Name}, is named in {plan.ClientName}'s site.",
                "Take the name out where it is written: the letter, an exercise, a caution or the theme."));

        // Each text is made plain once and searched for all names together: with many clients, looking for one after another would take hours.
        IEnumerable<string> Named(string text) => Readings(text).Where(reading => reading.AsSpan().ContainsAny(anywhere))
            .SelectMany(reading => names.Where(n => reading.Contains(n.Plain, StringComparison.OrdinalIgnoreCase))).Select(n => n.Name).Distinct();
    }

    /// <summary>The lines of the pages that name somebody; a page as a whole where the name is only in what nobody sees; and other files.</summary>
    private static IEnumerable<(string Name, Location At)> Places(SiteReading site, Func<string, IEnumerable<string>> named, Func<string, IEnumerable<string>> namedByFile)
    {
        foreach (var page in site.Pages)
        {
            var lines = page.Lines.SelectMany(l => named(l.Text).Select(name => (name, l.At))).ToArray();
            foreach (var line in lines) yield return line;
            foreach (var name in named(page.Html).Where(name => lines.All(l => l.name != name))) yield return (name, Location.Whole(page.Path));
        }

        foreach (var text in site.Texts)
            foreach (var name in named(text.Text)) yield return (name, Location.Whole(text.Path));
        foreach (var file in site.Files.Order(StringComparer.Ordinal))
            foreach (var name in namedByFile(file)) yield return (name, Location.Whole(file));
    }

    /// <summary>A text as somebody might read it: with entities and percent signs decoded.</summary>
    private static IEnumerable<string> Readings(string text)
    {
        var decoded = text.Contains('&', StringComparison.Ordinal) ? System.Net.WebUtility.HtmlDecode(text) : text;
        yield return Plain(decoded);
        if (decoded.Contains('%', StringComparison.Ordinal)) yield return Plain(Uri.UnescapeDataString(decoded));
    }

    /// <summary>Composed letters, single spaces, and none of the marks that nobody sees.</summary>
    private static string Plain(string text) => text.All(c => c is >= ' ' and < '\u007F') ? Spacing.Collapse(text) :
        Spacing.Collapse(string.Concat(text.Where(c => char.GetUnicodeCategory(c) != UnicodeCategory.Format)).Normalize(NormalizationForm.FormC));

    /// <summary>The letters and digits alone, as the name of a file might put them together.</summary>
    private static string Bare(string text) => string.Concat(Plain(text).Where(char.IsLetterOrDigit));
}
