using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

/// <summary>Names of clients come with the reading of a site, the one thing in it that is neither plan nor page.</summary>
public sealed class OtherClientNamed : ISiteRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var names = site.Names;
        var own = new[] { plan.ClientName, plan.Publisher.Coach, plan.Publisher.Practice }.Select(ClientNames.Plain).ToArray();
        return Places(site, text => names.In(text).Where(IsOther), file => names.InFileName(file).Where(IsOther))
            .Select(p =>
                this.Found(
                    Level.Error,
                    plan.Client,
                    p.At,
                    $"Another client, {p.Name}, is named in {plan.ClientName}'s site.",
                    "Take the name out where it is written: the letter, an exercise, a caution or the theme."
                )
            );

        bool IsOther(string name) => !own.Any(o => o.Contains(ClientNames.Plain(name), StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The lines of the pages that name somebody; a page as a whole where the name is only in what nobody sees; and
    /// other files.</summary>
    private static IEnumerable<(string Name, Location At)> Places(
        SiteSeen site,
        Func<string, IEnumerable<string>> named,
        Func<string, IEnumerable<string>> namedByFile
    )
    {
        foreach (var page in site.Pages)
        {
            // Hardly any page names anybody, so its lines are looked at one by one only where all together do.
            var lines = named(string.Join('\n', page.Lines.Select(l => l.Text))).Any()
                ? page.Lines.SelectMany(l => named(l.Text).Select(name => (name, l.At))).ToArray()
                : [];
            foreach (var line in lines)
                yield return line;
            foreach (var name in named(page.Html).Where(name => lines.All(l => l.name != name)))
                yield return (name, page.At);
        }

        foreach (var text in site.Texts)
        foreach (var name in named(text.Text))
            yield return (name, Location.Whole(text.Path));
        foreach (var file in site.Files.Order(StringComparer.Ordinal))
        foreach (var name in namedByFile(file))
            yield return (name, Location.Whole(file));
    }
}
