using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class ScriptOrStyleFromAuthor : IToldOnceRule, ISheetRule
{
    private const string Help =
        "Put styles into a style file of the theme, and leave scripts out: nobody can tell what they do on a client's phone.";

    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        var own = site.Texts.Where(t => t.IsOwnScript).Select(t => t.Path).ToHashSet(StringComparer.Ordinal);
        foreach (var page in site.Pages)
        {
            // Where all pages are one, the style stands in it, because it has no other file.
            foreach (var written in page.Shape.Written.Where(w => !site.IsInOne || w.What != "the element 'style'"))
                yield return Said(written.At, $"{written.What}, which Gradus did not write");
            foreach (var script in page.Shape.Scripts)
            {
                if (script.Source is { } address && (!own.Contains(address) || script.Text.Length > 0))
                    yield return Said(script.At, $"the script '{address}', which is none of Gradus's own");
                else if (script.Source is null && !(site.IsInOne && OwnScripts.Hold(script.Text)))
                    yield return Said(script.At, "the element 'script', which Gradus did not write");
            }
        }

        Finding Said(Location at, string what) => this.Found(Level.Error, plan.Client, at, $"This page has {what}.", Help);
    }

    public IEnumerable<Finding> Check(IntakeSheet sheet, IntakeSheetSeen seen) =>
        from script in seen.Scripts
        where script.Source is not null || !OwnScripts.IsOfSheet(script.Text)
        select this.Found(
            Level.Error,
            null,
            script.At,
            "The intake sheet has a script that Gradus did not write.",
            $"Take the script out of the template, and '{BuiltScript.Sheet.Path}' as it comes with Gradus."
        );
}
