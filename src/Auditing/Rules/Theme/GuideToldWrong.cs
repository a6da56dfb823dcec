using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class GuideToldWrong : IToldOnceRule
{
    public IEnumerable<Finding> Check(Plan plan, SiteSeen site) =>
        from session in plan.Sessions
        let page = site.Page(session.Path)
        where page is not null
        from guide in page.Guides
        from finding in Told(plan, session, guide).Concat(Misplaced(plan, site, guide))
        select finding;

    private IEnumerable<Finding> Told(Plan plan, PlannedSession session, GuideSeen guide)
    {
        if (guide.Session != FormattableString.Invariant($"{session.Number}"))
            yield return Said(
                guide.At,
                $"The guided session of this page is told that it is session '{guide.Session}'; in the plan it is "
                    + $"{session.Number}.",
                $"Write {PageData.Guide}=\"{session.Number}\"."
            );
        foreach (var use in session.Uses)
        foreach (
            var article in guide.During.Where(a => a.Exercise == use.Exercise.Text && a.Loads != string.Join(' ', use.Loads))
        )
            yield return Said(
                article.At,
                $"The guided session is told that '{use.Title}' loads '{article.Loads}', which the plan does not say.",
                $"Write {PageData.Loads}=\"{string.Join(' ', use.Loads)}\", as use.loads has it: by it, what hurts is left out."
            );
        var planned = plan.VersionsOf(session);
        foreach (var version in guide.Versions.Where(v => !planned.Any(p => Same(v, p))))
            yield return Said(
                version.At,
                $"The guided session is told of a session '{version.Session}' of the kind '{version.Kind}' with the "
                    + $"lengths '{version.Lengths}' and the loads '{version.Loads}' behind '{version.Leads}', which "
                    + "the plan does not have.",
                "Write each of session.guide.versions as it is, with the link to its page."
            );
        foreach (var version in planned.Where(p => !guide.Versions.Any(v => Same(v, p))))
            yield return Said(
                guide.At,
                $"The guided session is not told of '{version.Name}', among which it is to choose.",
                "Write each of session.guide.versions as it is, with the link to its page."
            );

        Finding Said(Location at, string message, string help) => this.Wrong(plan, at, message, help);
    }

    /// <summary>The script fills the first place of a name, wherever it is: so there is one, in its panel, and what changes with
    /// each step is said together. Where pages share the places, one of them has them all.</summary>
    private IEnumerable<Finding> Misplaced(Plan plan, SiteSeen site, GuideSeen guide)
    {
        var all = site.Pages.SelectMany(p => p.Guides).ToArray();
        if (guide != (all.FirstOrDefault(g => g.Places.Count > 0) ?? all[0]) && guide.Places.Count == 0)
            yield break;
        var wrong = GuidePlace
            .All.GroupBy(p => p.Name)
            .Where(asked => !IsAsAsked(asked, guide))
            .SelectMany(asked => asked)
            .ToArray();
        if (wrong.Length > 0)
            yield return this.Wrong(
                plan,
                guide.Places.FirstOrDefault(p => p.Name == wrong[0].Name)?.At ?? guide.At,
                "The script of the guided session does not find, once and in its panel, what it fills: "
                    + $"{string.Join(", ", wrong.Select(w => w.Name).Distinct())}.",
                $"Write each into an element with {PageData.Fill}, one in each of its panels: "
                    + $"{string.Join("; ", ByPanel(wrong))}."
            );
        var said = guide.Places.Where(p => GuidePlace.Said.Contains(p.Name)).ToArray();
        if (said.Any(s => s.Status is null) || said.Select(s => s.Status).Distinct().Count() > 1)
            yield return this.Wrong(
                plan,
                said[0].At,
                "Which side a step is on, and what is done, is not said together to whoever hears the page.",
                $"Put {PageData.Fill} with {string.Join(", ", GuidePlace.Said)} into one element with role=\"status\"."
            );
    }

    private static bool IsAsAsked(IGrouping<string, GuidePlace> asked, GuideSeen guide) =>
        guide
            .Places.Where(p => p.Name == asked.Key)
            .Select(p => p.Panel)
            .Order(StringComparer.Ordinal)
            .SequenceEqual(asked.Select(p => p.Panel).Order(StringComparer.Ordinal));

    private static IEnumerable<string> ByPanel(IEnumerable<GuidePlace> places) =>
        places.GroupBy(p => p.Panel, p => p.Name).Select(panel => $"in '{panel.Key}' {string.Join(", ", panel)}");

    private static bool Same(VersionSeen seen, PlannedSession planned) =>
        seen.Session == FormattableString.Invariant($"{planned.Number}")
        && seen.Kind == planned.KindName()
        && seen.Lengths == planned.Lengths()
        && seen.Loads == planned.LoadedPlaces()
        && PageLinks.Lead(seen.Leads, planned.Path);
}
