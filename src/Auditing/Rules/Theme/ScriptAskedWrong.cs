using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class ScriptAskedWrong : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site)
    {
        foreach (var page in site.Pages)
        {
            var asked = new List<ScriptSeen>();
            var paths = new List<string>();
            foreach (var script in page.Shape.Scripts)
                if (PathOf(script, site) is { } path)
                {
                    asked.Add(script);
                    paths.Add(path);
                }

            var needed = Needed(site, asked.Count > 0);
            if (!paths.SequenceEqual(needed))
                yield return Said(asked.FirstOrDefault()?.At ?? page.At, $"{Named(paths)} in place of {Named(needed)}");
            else if (asked.FirstOrDefault(s => s.Source is not null && !s.IsDeferred) is { } early)
                yield return Said(early.At, $"'{early.Source}' before it is read");
        }

        Finding Said(Location at, string what) =>
            this.Found(
                Level.Error,
                plan.Client,
                at,
                $"This page asks for {what}.",
                "Ask for each of Gradus's scripts once, in their order, with 'defer'; the plain theme does it in top.html."
            );
    }

    /// <summary>Those that the site has; where all pages are one, a theme may have none at all.</summary>
    private static string[] Needed(SiteSeen site, bool any) =>
        site.IsInOne
            ? any
                ? [.. BuiltScript.InOne.Select(s => s.Path)]
                : []
            : [.. BuiltScript.Asked.Where(site.Files.Contains)];

    /// <summary>Which of Gradus's it is; null where it is none that the site has, which another rule tells.</summary>
    private static string? PathOf(ScriptSeen script, SiteSeen site) =>
        script.Source is { } address
            ? BuiltScript.Asked.FirstOrDefault(path => path == address && site.Files.Contains(path))
            : OwnScripts.NameOf(script.Text);

    private static string Named(IReadOnlyCollection<string> scripts) =>
        scripts.Count == 0 ? "no script" : string.Join(", ", scripts.Select(s => $"'{s}'"));
}
