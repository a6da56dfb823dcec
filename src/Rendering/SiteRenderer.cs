using System.Reflection;
using Gradus.Domain;
using Gradus.Planning;
using Scriban.Runtime;

namespace Gradus.Rendering;

/// <summary>Plan + theme → site.</summary>
public static class SiteRenderer
{
    /// <summary>A theme that cannot be filled: its page is in <c>Faults</c>.</summary>
    public static readonly RuleId ThemeBroken = new("theme-broken");

    /// <summary>The pages of what this room finds.</summary>
    public static IEnumerable<RulePage> Pages() => [RulePage.Of(ThemeBroken, Assembly.GetExecutingAssembly())];

    /// <summary>The client's whole site, or null (and a finding) where the theme is broken. Beside its pages it holds all of them
    /// in one, where the theme has a template for that.</summary>
    public static Site? Render(Plan plan, Theme theme, Findings findings, Rendition rendition = Rendition.Pages) =>
        Tried(plan.Client, theme, findings, () => rendition switch
            {
                Rendition.OneFile => new(plan.Client, [InOne(plan, theme)], []),
                Rendition.Locked => Locked(plan, InOne(plan, theme)),
                _ => Pages(plan, theme),
            });

    private static Page InOne(Plan plan, Theme theme) => new SiteFrames(plan, theme).AllInOne();

    /// <summary>The page that holds all others, with the one that asks for its passphrase.</summary>
    public static Site Locked(Plan plan, Page inside) =>
        new(plan.Client, [inside, new(PagePath.Lock, LockPage.Of(plan.Words, inside.Html))], []);

    private static Site Pages(Plan plan, Theme theme)
    {
        var own = plan
            .Pictures.SelectMany(p => p.Files)
            .DistinctBy(f => f.Path)
            .Concat(plan.Clips.Select(c => new Asset(c.Path, c.Bytes)))
            .ToList();
        if (CalendarFile.Of(plan) is { } calendar)
            own.Add(calendar);
        var frames = new SiteFrames(plan, theme);
        var pages = frames.Pages();
        if (theme.Has(SiteFrames.AllPagesTemplate))
            pages = [.. pages, frames.AllInOne()];
        if (frames.Guide() is { } guide)
            own.Add(guide);
        own.Add(HostedFiles.ManifestOf(plan, theme));
        if (HostedFiles.ListOf(theme, pages, theme.Assets.Concat(own)) is { } list)
            own.Add(list);
        SeeThatPathsDiffer(theme, pages.Select(p => p.Path).Concat(own.Select(a => a.Path)));
        return new Site(plan.Client, pages, theme.Assets.Concat(own));
    }

    /// <summary>What is rendered, or null (and a finding) where the theme is broken.</summary>
    /// <param name="client">Null where it is for nobody by name.</param>
    internal static T? Tried<T>(ClientId? client, Theme theme, Findings findings, Func<T> render)
        where T : class
    {
        try
        {
            return render();
        }
        catch (ThemeException broken)
        {
            findings.Add(
                new(
                    ThemeBroken,
                    Level.Error,
                    client,
                    broken.At,
                    $"The theme '{theme.Name}' cannot be filled: {broken.Message}",
                    broken.Help
                )
            );
            return null;
        }
    }

    /// <summary>A file of the theme cannot take the place of a page or a picture, nor of another file where small and capital
    /// letters are the same.</summary>
    private static void SeeThatPathsDiffer(Theme theme, IEnumerable<string> others)
    {
        var taken = others.ToHashSet(StringComparer.OrdinalIgnoreCase);
        if (theme.Assets.Select(a => a.Path).FirstOrDefault(path => !taken.Add(path)) is { } path)
            throw new ThemeException(
                Location.Whole(path),
                "The site has another file of this name.",
                "Rename it; pages, pictures and the theme's own files lie side by side in one site."
            );
    }

    /// <summary>The catalogue as templates see it: <c>words.before_you_start</c>. Phrases that need filling are filled in the
    /// views.</summary>
    internal static ScriptObject WordsOf(Words words)
    {
        var seen = new ScriptObject(StringComparer.Ordinal);
        foreach (var key in words.Keys)
            if (words.Plain(key) is { } phrase)
                seen.SetValue(key.Replace('-', '_'), phrase, readOnly: true);
        return seen;
    }
}
