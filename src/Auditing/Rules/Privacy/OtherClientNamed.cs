using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Names of clients come with the reading of a site, the one thing in it that is neither plan nor page.</summary>
public sealed class OtherClientNamed : ISiteRule
{
    /// <summary>Each other client once, where the name is met first. A name of one word may be a word of any text, so it is for
    /// somebody to look at.</summary>
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var own = new[] { plan.ClientName, plan.Publisher.Coach, plan.Publisher.Practice }
            .Select(name => $" {FoldedText.Of(name)} ")
            .ToArray();
        return Places(site)
            .Where(p => IsOther(p.Name))
            .GroupBy(p => p.Name, StringComparer.Ordinal)
            .Select(same => same.ToArray())
            .Select(same =>
                this.Found(
                    ClientNames.IsOneWord(same[0].Name) ? Level.Warning : Level.Error,
                    plan.Client,
                    same[0].At,
                    $"Another client, {same[0].Name}, is named in {plan.ClientName}'s site{Count(same.Length)}.",
                    "Take the name out where it is written: the letter, an exercise, a caution or the theme."
                )
            );

        bool IsOther(string name) => !own.Any(o => o.Contains($" {FoldedText.Of(name)} ", StringComparison.Ordinal));
    }

    /// <summary>The lines of the pages that name somebody, over the end of a line too; a page as a whole where the name is only
    /// in what nobody sees; and other files.</summary>
    private static IEnumerable<(string Name, Location At)> Places(SiteSeen site)
    {
        foreach (var page in site.Pages)
        {
            var shown = site.Names.InLines(page.Lines).ToArray();
            foreach (var (name, line) in shown)
                yield return (name, page.Lines[line].At);
            foreach (var name in site.Names.In(page).Where(name => shown.All(s => s.Name != name)))
                yield return (name, page.At);
        }

        foreach (var text in site.Texts)
        foreach (var name in site.Names.In(text))
            yield return (name, Location.Whole(text.Path));
        foreach (var file in site.Files.Order(StringComparer.Ordinal))
        foreach (var name in site.Names.InFileName(file))
            yield return (name, Location.Whole(file));
    }

    private static string Count(int places) => places == 1 ? "" : FormattableString.Invariant($", in {places} places");
}
