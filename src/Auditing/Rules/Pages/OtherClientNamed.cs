using System.Text;
using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>The one rule that is told something beside the plan and the site: the names of the other clients.</summary>
public sealed class OtherClientNamed : IRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteReading site, IEnumerable<string> others)
    {
        var own = new[] { plan.ClientName, plan.Publisher.Coach, plan.Publisher.Practice };
        foreach (var other in others.Where(name => !own.Any(o => o.Contains(name, StringComparison.OrdinalIgnoreCase))))
        {
            foreach (var (at, _) in Places(site).Where(p => Names(p.Text, other)))
            {
                yield return new(
                    RuleId.Of(GetType()), Level.Error, plan.Client, at, $"Another client, {other}, is named in {plan.ClientName}'s site.",
                    "Take the name out where it is written: the letter, an exercise, a caution or the theme.");
            }
        }
    }

    private static IEnumerable<(Location At, string Text)> Places(SiteReading site) => site.Pages
        .SelectMany(p => p.Lines.Select(l => (l.At, l.Text)).Append((Location.Whole(p.Path), p.Html)))
        .Concat(site.Texts.Select(t => (Location.Whole(t.Path), t.Text)))
        .Concat(site.Files.Select(f => (Location.Whole(f), f.Replace('-', ' '))));

    /// <summary>Whether the whole name stands there, however its letters are cased and its words are spaced.</summary>
    private static bool Names(string text, string name) =>
        text.Contains(name, StringComparison.OrdinalIgnoreCase)
        || (text.Contains('&', StringComparison.Ordinal) && System.Net.WebUtility.HtmlDecode(text).Contains(name, StringComparison.OrdinalIgnoreCase))
        || Spacing.Collapse(text).Normalize(NormalizationForm.FormC).Contains(name, StringComparison.OrdinalIgnoreCase);
}
