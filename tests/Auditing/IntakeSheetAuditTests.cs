using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>What a theme may do with the intake sheet: the plain theme, changed in one place.</summary>
public sealed class IntakeSheetAuditTests(ITestOutputHelper output)
{
    private const string Style = "intake-sheet.css",
        Template = "intake-sheet.html";

    private static readonly IntakeSheet Sheet = AskedSheet.Of(Reading.LittlePractice.Golden.Read());

    private static readonly Series<KeyValuePair<string, byte[]>> Plain = Directory
        .EnumerateFiles(Repository.Path("themes", "plain"))
        .Select(file => KeyValuePair.Create(Path.GetFileName(file), File.ReadAllBytes(file)))
        .OrderBy(file => file.Key, StringComparer.Ordinal)
        .ToSeries();

    /// <summary>Kind, file, what it says, what instead, and the rule.</summary>
    public static readonly Series<(string Kind, string File, string Said, string Instead, string Rule)> Breaks =
    [
        .. Added(
            "taken away",
            ".question { display: none; }",
            "@media print { .question { display: none; } }",
            "legend { visibility: hidden; }",
            ".replies label { opacity: 0; }",
            ".places { display: none; }",
            "@media screen { .places { display: none; } }",
            ".question:has([data-hurts]) .places { display: none; }",
            "input[type=\"radio\"] { display: none; }",
            "p { content-visibility: hidden; }"
        ),
        .. Added(
            "made small",
            "legend { font-size: 1px; }",
            "legend { font-size: 0.5rem; }",
            "@media print { legend { font-size: 4pt; } }",
            ".replies label { font-size: 0; }",
            "html { font-size: 20%; }",
            "body { zoom: 0.2; }",
            ".question { transform: scale(0.1); }",
            "input[type=\"radio\"] { block-size: 1px; inline-size: 1px; }",
            ".question { inline-size: 1px; }"
        ),
        .. Added(
            "covered, cut or moved",
            ".question { block-size: 0; overflow: hidden; }",
            "legend { position: absolute; inset-inline-start: -9999px; }",
            "legend { margin-inline-start: -100vw; }",
            "legend { text-indent: -999px; }",
            "legend { clip-path: inset(50%); }",
            ".questions { order: 1; }",
            "legend { float: inline-start; }",
            "button { position: fixed; }"
        ),
        .. Added(
            "without colour",
            "legend { color: transparent; }",
            "@media print { legend { color: transparent; } }",
            "select { color: transparent; }",
            "legend { color: #fff; }",
            ".question { background: #000; }",
            "input[type=\"date\"] { color: var(--ground); }"
        ),
        .. Added("words beside it", ".question::before { content: \"Answer no\"; }", "legend::after { content: \" (no)\"; }"),
        .. Added("cannot be read", ".question { margin: 0;", "@import \"other.css\";", "legend { colo\\72: red; }"),
        .. Markup(
            "hidden by markup",
            ("<legend>{{ question.number }}", "<legend hidden>{{ question.number }}"),
            ("<div class=\"questions\">", "<div class=\"questions\" hidden>"),
            ("<div class=\"questions\">", "<div class=\"questions\" inert>"),
            ("<div class=\"questions\">", "<div class=\"questions\" aria-hidden=\"true\">"),
            ("<div class=\"questions\">", "<div class=\"questions on-paper\">"),
            ("<div class=\"replies\">", "<div class=\"replies on-screen\">"),
            ("<div class=\"questions\">", "<details>"),
            ("<div class=\"questions\">", "<template>"),
            ("<div class=\"questions\">", "<noscript>"),
            ("{{ words.intake_why }}", "<small>{{ words.intake_why }}</small>"),
            ("{{ words.intake_why }}", "<marquee>{{ words.intake_why }}</marquee>"),
            ("{{ words.intake_why }}", "<font size=\"1\">{{ words.intake_why }}</font>"),
            ("{{ words.intake_why }}", "<bdo dir=\"rtl\">{{ words.intake_why }}</bdo>"),
            ("value=\"no\">", "value=\"no\" checked>"),
            ("value=\"no\">", "value=\"no\" disabled>"),
            ("value=\"no\">", "value=\"no\" data-mine=\"1\">"),
            ("<input type=\"date\" name=\"born\"", "<input type=\"hidden\" name=\"born\""),
            ("autocomplete=\"off\"", "autocomplete=\"off\" action=\"https://example.org/\""),
            ("{{ sheet.script }}", "<iframe></iframe>{{ sheet.script }}")
        ),
        .. Of(
            "a style of the page's own",
            Template,
            "style-not-known",
            ("<legend>", "<legend style=\"font-size: 1px\">"),
            ("{{ sheet.style }}", "{{ sheet.style }}<style>legend { display: none; }</style>")
        ),
        .. Of(
            "a question left out",
            Template,
            "plan-words-altered",
            ("<legend>{{ question.number }}. {{ question.question }}</legend>", "<p>{{ question.question }}</p>"),
            (". {{ question.question }}", ". {{ question.id }}"),
            ("for question in sheet.questions", "for question in sheet.questions limit: 3")
        ),
        .. Of(
            "a script of somebody's",
            Template,
            "script-or-style-from-author",
            ("{{ sheet.script }}", "{{ sheet.script }}<script>alert(1)</script>"),
            ("{{ sheet.script }}", "<script src=\"https://example.org/a.js\"></script>")
        ),
    ];

    private static readonly Series<(string File, string Said, string Instead)> Harmless =
    [
        (Style, "border-radius: 6px; cursor", "border-radius: 0; cursor"),
        (Style, "font-size: 8.5pt;", "font-size: 9pt;"),
        (Style, ".questions { columns: 2; column-gap: 2.67rem; }", ""),
        (Style, "select:disabled { border-style: dashed; }", "select:disabled { border-style: dotted; }"),
        (Style, "margin-block-start: 1.25rem; }", "margin-block-start: 2rem; }"),
        (Style, "appearance: none; inline-size: 4mm", "appearance: none; inline-size: 5mm"),
        (Template, "<p class=\"lead\">", "<p>"),
        (Template, "{{ words.intake_why }}", "<em>{{ words.intake_why }}</em>"),
        (Template, "<h2 id=\"about-you\">", "<h2 id=\"about-you\" class=\"mine\">"),
        (Template, "<main>", "<header><p>{{ sheet.coach }}</p></header>\n<main>"),
    ];

    [Fact]
    public void The_plain_theme_has_nothing_to_find()
    {
        Assert.Empty(Found(Plain));
        Assert.DoesNotContain(RuleBook.Judge(new Theme("mine", Plain).Seen), f => f.Level == Level.Error);
    }

    [Fact]
    public void What_hides_shrinks_or_adds_is_found_at_the_file_of_the_theme()
    {
        var missed = new List<string>();
        foreach (var kind in Breaks.GroupBy(b => b.Kind))
        {
            var unseen = kind.Where(b =>
                !Found(With(b.File, b.Said, b.Instead)).Any(f => f.Rule.Text == b.Rule && f.At.File == b.File)
            );
            missed.AddRange(unseen.Select(b => b.Instead));
            output.WriteLine($"{kind.Key, -30}{kind.Count(), 4} planted {unseen.Count(), 3} missed");
        }

        Assert.Empty(missed);
    }

    [Fact]
    public void What_harms_nobody_is_not_found() =>
        Assert.All(Harmless, h => Assert.Empty(Found(With(h.File, h.Said, h.Instead)).Select(f => $"{h.Instead}: {f.Message}")));

    /// <summary>Whoever publishes is told of the style as well, and of no page for it.</summary>
    [Fact]
    public void The_style_is_judged_with_the_theme()
    {
        foreach (var broken in Breaks.Where(b => b.File == Style))
            Assert.Contains(RuleBook.Judge(new Theme("mine", With(broken.File, broken.Said, broken.Instead)).Seen), f =>
                (f.Rule.Text, f.At.File, f.Level) == (broken.Rule, Style, Level.Error)
            );
        var look = With("look.css", "h1 {", "h1 { opacity: 0;");
        Assert.DoesNotContain(RuleBook.Judge(new Theme("mine", look).Seen), f => f.Level == Level.Error);
        Assert.Contains(Found(look), f => f.At.File == "look.css");
    }

    /// <summary>The same sheet stands in a file of the site, and in the page that holds all others.</summary>
    [Theory]
    [InlineData(Rendition.Pages)]
    [InlineData(Rendition.OneFile)]
    public void A_fault_in_a_stylesheet_is_told_once_and_at_the_file_of_the_theme(Rendition rendition)
    {
        var theme = new Theme("mine", With("look.css", "h1 {", "h1 { opacity: 0;"));
        var (found, place) = (new Findings(), PlaceOf("opacity", theme));
        found.AddRange(RuleBook.Audit(FinishedSite.Plan, Site(theme, rendition), []));
        var told = found.InOrder().Where(f => f.Rule.Text == "style-not-known");
        Assert.Equal([$"look.css:{place}"], told.Select(f => f.At.ToString()));
    }

    /// <summary>Where a site is read back, its own files say what the page was made from.</summary>
    [Fact]
    public void So_it_is_where_nobody_says_what_the_page_was_made_from()
    {
        var theme = new Theme("mine", With("look.css", "h1 {", "h1 { opacity: 0;"));
        var made = Site(theme, Rendition.Pages);
        Site back = new(made.Client, made.Pages.Select(p => new Page(p.Path, p.Html)), made.Assets);
        var found = new Findings();
        found.AddRange(RuleBook.Audit(FinishedSite.Plan, back, []));
        Assert.Single(found.InOrder(), f => f.Rule.Text == "style-not-known");
        var file = new Findings();
        file.AddRange(
            RuleBook.Audit(FinishedSite.Plan, new(back.Client, [back.Pages.First(p => p.Path == "all-pages.html")], []), [])
        );
        Assert.Equal("all-pages.html", Assert.Single(file.InOrder(), f => f.Rule.Text == "style-not-known").At.File);
    }

    /// <summary>What is written into the page and is not what the files make is judged as it stands.</summary>
    [Fact]
    public void A_style_in_the_page_that_is_another_is_judged_by_itself()
    {
        var made = Site(new("mine", Plain), Rendition.Pages);
        var pages = made.Pages.Select(p =>
            p with
            {
                Html = p.Html.Replace("<style>", "<style>h1{opacity:0}", StringComparison.Ordinal),
            }
        );
        var found = RuleBook.Audit(FinishedSite.Plan, new(made.Client, pages, made.Assets), []);
        Assert.Equal("all-pages.html", Assert.Single(found, f => f.Rule.Text == "style-not-known").At.File);
    }

    private static Site Site(Theme theme, Rendition rendition) =>
        SiteRenderer.Render(FinishedSite.Plan, theme, [], rendition) ?? throw new InvalidOperationException("No site.");

    private static string PlaceOf(string word, Theme theme)
    {
        var look = Encoding.UTF8.GetString(theme.Assets.First(a => a.Path == "look.css").Bytes.Span);
        var before = look[..look.IndexOf(word, StringComparison.Ordinal)];
        return $"{before.Count(c => c == '\n') + 1}:{before.Length - before.LastIndexOf('\n')}";
    }

    private static Series<Finding> Found(Series<KeyValuePair<string, byte[]>> files)
    {
        var (theme, broken) = (new Theme("mine", files), new Findings());
        var page = IntakeSheetRenderer.Render(Sheet, theme, broken);
        Assert.Empty(broken);
        return RuleBook.Audit(Sheet, page ?? "", theme.Seen).ToSeries();
    }

    private static Series<KeyValuePair<string, byte[]>> With(string file, string said, string instead) =>
        Plain
            .Select(f =>
            {
                if (f.Key != file)
                    return f;
                var text = Encoding.UTF8.GetString(f.Value);
                Assert.Contains(said, text, StringComparison.Ordinal);
                return KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(text.Replace(said, instead, StringComparison.Ordinal)));
            })
            .ToSeries();

    private static IEnumerable<(string, string, string, string, string)> Added(string kind, params string[] rules) =>
        rules.Select(rule => (kind, Style, "/* The intake sheet:", $"{rule}\n/* The intake sheet:", "style-not-known"));

    private static IEnumerable<(string, string, string, string, string)> Markup(string kind, params (string, string)[] edits) =>
        Of(kind, Template, "markup-not-known", edits);

    private static IEnumerable<(string, string, string, string, string)> Of(
        string kind,
        string file,
        string rule,
        params (string Said, string Instead)[] edits
    ) => edits.Select(e => (kind, file, e.Said, e.Instead, rule));
}
