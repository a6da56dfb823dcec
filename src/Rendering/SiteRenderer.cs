using System.Reflection;
using Gradus.Domain;
using Scriban.Runtime;

namespace Gradus.Rendering;

/// <summary>Plan + theme → site.</summary>
public static class SiteRenderer
{
    /// <summary>A theme that cannot be filled: its page is in <c>Faults</c>.</summary>
    public static readonly RuleId ThemeBroken = new("theme-broken");

    /// <summary>The pages of what this room finds.</summary>
    public static IEnumerable<RulePage> Pages() => [RulePage.Of(ThemeBroken, Assembly.GetExecutingAssembly())];

    /// <summary>The client's whole site, or null (and a finding) where the theme is broken.</summary>
    public static Site? Render(Plan plan, Theme theme, Findings findings)
    {
        try
        {
            var shared = new Dictionary<string, object>(StringComparer.Ordinal) { ["site"] = Viewing.Site(plan), ["words"] = WordsOf(plan.Words) };
            var pages = PagesOf(plan, theme, shared);
            var own = plan.Pictures.Select(p => new Asset(p.Path, p.Bytes)).ToList();
            if (CalendarFile.Of(plan) is { } calendar) own.Add(calendar);
            SeeThatPathsDiffer(theme, pages.Select(p => p.Path).Concat(own.Select(a => a.Path)));
            return new(plan.Client, pages, theme.Assets.Concat(own));
        }
        catch (ThemeException broken)
        {
            findings.Add(new(ThemeBroken, Level.Error, plan.Client, broken.At, $"The theme '{theme.Name}' cannot be filled: {broken.Message}", broken.Help));
            return null;
        }
    }

    /// <summary>A file of the theme cannot take the place of a page or a picture, nor of another file where small and capital letters are the same.</summary>
    private static void SeeThatPathsDiffer(Theme theme, IEnumerable<string> others)
    {
        var taken = others.ToHashSet(StringComparer.OrdinalIgnoreCase);
        if (theme.Assets.Select(a => a.Path).FirstOrDefault(path => !taken.Add(path)) is { } path)
            throw new ThemeException(Location.Whole(path), "The site has another file of this name.", "Rename it; pages, pictures and the theme's own files lie side by side in one site.");
    }

    private static List<Page> PagesOf(Plan plan, Theme theme, Dictionary<string, object> shared)
    {
        var pages = new List<Page>
        {
            Filled(Plan.HomePath, "index.html", "home", Viewing.Home(plan)),
            Filled(Plan.BeforeYouStartPath, "before-you-start.html", "before", Viewing.Before(plan)),
            Filled(Plan.WeeksPath, "weeks.html", "weeks", ViewingWeeks.Of(plan)),
        };
        pages.AddRange(plan.Sessions.Select(s => Filled(s.Path, "session.html", "session", Viewing.Session(plan, s))));
        pages.AddRange(plan.Exercises.Select(e => Filled(e.Path, "exercise.html", "exercise", Viewing.Exercise(plan, e))));
        return pages;

        Page Filled(string path, string template, string name, object view) =>
            new(path, TemplateRun.Fill(theme, template, new Dictionary<string, object>(shared, StringComparer.Ordinal) { [name] = view, ["path"] = path }));
    }

    /// <summary>The catalogue as templates see it: <c>words.before_you_start</c>. Phrases that need filling are filled in the views.</summary>
    private static ScriptObject WordsOf(Words words)
    {
        var seen = new ScriptObject(StringComparer.Ordinal);
        foreach (var key in words.Keys)
            if (words.Plain(key) is { } phrase) seen.SetValue(key.Replace('-', '_'), phrase, readOnly: true);
        return seen;
    }
}
