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
        from finding in Told(plan, session, guide)
        select finding;

    private static IEnumerable<Finding> Told(Plan plan, PlannedSession session, GuideSeen guide)
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

        Finding Said(Location at, string message, string help) =>
            new(RuleId.Of(typeof(GuideToldWrong)), Level.Error, plan.Client, at, message, help);
    }

    private static bool Same(VersionSeen seen, PlannedSession planned) =>
        seen.Session == FormattableString.Invariant($"{planned.Number}")
        && seen.Kind == planned.KindName()
        && seen.Lengths == planned.Lengths()
        && seen.Loads == planned.LoadedPlaces()
        && PageLinks.Lead(seen.Leads, planned.Path);
}
