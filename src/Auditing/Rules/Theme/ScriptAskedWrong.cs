using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class ScriptAskedWrong : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        foreach (var page in site.Pages)
        {
            var asked = page
                .Shape.Scripts.Select(s => (Script: s, Path: PathOf(s)))
                .Where(s => s.Path is not null)
                .Select(s => (s.Script, Path: s.Path ?? ""))
                .ToArray();
            var early = asked.FirstOrDefault(s => s.Script.Source is not null && !s.Script.IsDeferred);
            if (early.Script is not null)
                yield return Said(early.Script.At, $"asks for '{early.Path}' before it is read");
            var needed = Needed(site, asked.Length > 0);
            if (!asked.Select(s => s.Path).SequenceEqual(needed))
                yield return Said(
                    asked.Length > 0 ? asked[0].Script.At : page.At,
                    $"has the scripts '{string.Join("', '", asked.Select(s => s.Path))}' in place of "
                        + $"'{string.Join("', '", needed)}'"
                );
        }

        Finding Said(Location at, string what) =>
            this.Found(
                Level.Error,
                plan.Client,
                at,
                $"This page {what}.",
                "Ask for each of Gradus's scripts once, in their order, with 'defer'; the plain theme does it in top.html."
            );
    }

    /// <summary>Those that the site has; where all pages are one, a theme may have none at all.</summary>
    private static string[] Needed(SiteSeen site, bool any) =>
        site.IsInOne
            ? any
                ? [.. BuiltScript.InOne.Select(s => s.Path)]
                : []
            : [.. BuiltScript.OfPages.Select(s => s.Path).Where(site.Files.Contains)];

    /// <summary>Which of Gradus's it is; null where it is another's, which another rule tells.</summary>
    private static string? PathOf(ScriptSeen script) =>
        script.Source is { } address
            ? BuiltScript.OfPages.FirstOrDefault(s => s.Path == address)?.Path
            : OwnScripts.NameOf(script.Text);
}
