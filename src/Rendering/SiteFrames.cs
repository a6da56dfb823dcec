using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>The content of each page, made by its own template, put into the frame of a page or all together into one.</summary>
internal sealed class SiteFrames(Plan plan, Theme theme)
{
    internal const string AllPagesTemplate = PagePath.AllPages;

    private const string PageTemplate = "page.html",
        GuideTemplate = "guide.html";

    /// <summary>Captions stand in the page: a browser does not load a file of them over file://.</summary>
    private readonly string pagesPolicy =
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; "
        + $"{Media(plan, "'self' data:")}worker-src 'self' blob:; manifest-src 'self'; connect-src 'self'; base-uri "
        + "'none'; form-action 'none'";

    private readonly Words words = plan.Words;

    public Series<Page> Pages()
    {
        var shared = SharedByPages();
        return Contents(plan, shared, path => path, "")
            .Select(page => new Page(page.Path, Filled(shared, PageTemplate, ("page", page), ("path", page.Path), ("here", ""))))
            .ToSeries();
    }

    /// <summary>The dialog that leads through each of its sessions; null where the theme has none, or the client no
    /// session.</summary>
    public Asset? Guide()
    {
        if (!BringsGuide || plan.Sessions is not [var first, ..])
            return null;
        var session = SessionViews.Of(plan, first, "");
        var dialog = Filled(
            SharedByPages(),
            GuideTemplate,
            ("session", session),
            ("whole", true),
            ("path", first.Path),
            ("here", "")
        );
        return new(GuideFile.Path, Encoding.UTF8.GetBytes(GuideFile.Of(dialog)));
    }

    private bool BringsGuide => theme.Has(GuideTemplate) && theme.Brings(BuiltScript.Session);

    private Dictionary<string, object> SharedByPages()
    {
        var brought = BuiltScript.OfPages.Where(theme.Brings).Select(s => s.Path).ToHashSet(StringComparer.Ordinal);
        if (BringsGuide && plan.Sessions.Count > 0)
            brought.Add(GuideFile.Path);
        return Shared(plan, pagesPolicy, BuiltScript.Asked.Where(brought.Contains), path => path, "");
    }

    /// <summary>With its clips, unless they make it too heavy; then with their stills.</summary>
    public Page AllInOne()
    {
        var html = AllInOne(clips: true);
        if (plan.Clips.Count > 0 && AllPages.LengthWithFiles(html, plan) > AllPages.MostWithClips)
            html = AllInOne(clips: false);
        return new(PagePath.AllPages, AllPages.WithFiles(html, plan)) { Styles = Aside.Of(theme.Texts(PageStyle.InOne)) };
    }

    private string AllInOne(bool clips)
    {
        var style = Inlined.Style(theme, PageStyle.InOne);
        var scripts = BuiltScript.InOne.Where(theme.Brings).Select(script => Inlined.Script(theme, script)).ToArray();
        var policy =
            $"default-src 'none'; style-src '{style.Hash}'; script-src {Known(scripts)}; img-src data:; "
            + $"{Media(plan, "data:")}worker-src blob:; base-uri 'none'; form-action 'none'";
        var calendar = CalendarFile.Of(plan);
        var inOne = AllPages.Of(plan, clips);
        var shared = Shared(inOne, policy, [], At, "-");
        var view = new AllPagesView(
            style.Markup,
            scripts.Select(s => s.Markup).ToSeries(),
            Contents(inOne, shared, At, "-")
                .Select(page => page with { Content = new(OptionalEnds.LeftOut(page.Content.Markup)) })
                .ToSeries(),
            FigureHtml.Once(plan.Figures)
        );
        return Filled(shared, AllPagesTemplate, ("file", view), ("path", PagePath.AllPages), ("here", ""));

        string At(string path) =>
            path == PagePath.Calendar && calendar is not null
                ? AllPages.DataOf(calendar, "text/calendar;charset=utf-8")
                : AllPages.AddressOf(path);
    }

    private static string Media(Plan plan, string from) => plan.Clips.Count > 0 ? $"media-src {from}; " : "";

    private static string Known(IReadOnlyCollection<Inlined> scripts) =>
        scripts.Count == 0 ? "'none'" : string.Join(' ', scripts.Select(s => $"'{s.Hash}'"));

    private static Dictionary<string, object> Shared(
        Plan plan,
        string policy,
        IEnumerable<string> scripts,
        Func<string, string> at,
        string behind
    ) =>
        new(StringComparer.Ordinal)
        {
            ["site"] = PageViews.Site(plan, policy, scripts, at, Here(PagePath.BeforeYouStart, behind)),
            ["words"] = SiteRenderer.WordsOf(plan.Words),
        };

    /// <summary>What the ids on a page begin with.</summary>
    private static string Here(string path, string behind) => behind.Length > 0 ? PageId.Page(path) + behind : "";

    /// <param name="shown">The plan with its pages where they are addressed.</param>
    /// <param name="at">How a page is addressed.</param>
    /// <param name="behind">What stands between the id of a page and an id on it; empty where pages are apart.</param>
    private IEnumerable<FramedView> Contents(
        Plan shown,
        Dictionary<string, object> shared,
        Func<string, string> at,
        string behind
    )
    {
        yield return Of(PagePath.Home, shown.Programme.Title, PagePath.Home, "home", here => PageViews.Home(shown, at, here));
        yield return Of(PagePath.BeforeYouStart, words.Say("before-you-start"), PagePath.BeforeYouStart, "before", here =>
            PageViews.Before(shown, here)
        );
        yield return Of(PagePath.Weeks, words.Say("your-weeks"), PagePath.Weeks, "weeks", _ => WeekViews.Of(shown));
        if (shown.Progress is { } progress)
            yield return Of(PagePath.Progress, words.Say("progress"), PagePath.Progress, "progress", _ =>
                ProgressViews.Of(progress)
            );
        foreach (var (session, view) in plan.Sessions.Zip(shown.Sessions))
            yield return Of(session.Path, session.Name, "session.html", "session", here => SessionViews.Of(shown, view, here));
        foreach (var (exercise, view) in plan.Exercises.Zip(shown.Exercises))
            yield return Of(exercise.Path, exercise.Title, "exercise.html", "exercise", here =>
                PageViews.Exercise(shown, view, here)
            );

        FramedView Of(string path, string title, string template, string name, Func<string, object> view)
        {
            var here = Here(path, behind);
            var terms = plan.TermsOn(path).Select(TermView.Of).ToSeries();
            var html = Filled(
                shared,
                template,
                (name, view(here)),
                ("path", at(path)),
                ("here", here),
                ("terms", terms),
                ("since", SinceView.Of(plan, path)),
                ("whole", IsFirstOfAll(path, behind))
            );
            return new(path, PageId.Page(path), name, title, new(html));
        }
    }

    /// <summary>Where all pages are one, the first session has the dialog of all of them.</summary>
    private bool IsFirstOfAll(string path, string behind) =>
        behind.Length > 0 && plan.Sessions is [var first, ..] && first.Path == path;

    private string Filled(Dictionary<string, object> shared, string template, params (string Name, object View)[] views)
    {
        var all = new Dictionary<string, object>(shared, StringComparer.Ordinal);
        foreach (var (name, view) in views)
            all[name] = view;
        return TemplateRun.Fill(theme, template, all);
    }
}
