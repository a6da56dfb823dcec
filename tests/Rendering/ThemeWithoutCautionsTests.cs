using Gradus.Auditing;
using Gradus.Domain;

namespace Gradus.Tests.Rendering;

/// <summary>Themes that fill without a mistake, but leave the cautions out, hide them, or show them late.</summary>
[Trait("Slow", "yes")]
public sealed class ThemeWithoutCautionsTests
{
    private const string NotInSession = "caution-not-in-session";

    private const string Included = "{{ cautions = session.cautions; include 'cautions.html' }}";

    /// <param name="Rules">Those that find it on a session's page, in the order of their names.</param>
    public sealed record Way(string What, string Path, string Said, string Instead, string Rules)
    {
        public override string ToString() => What;
    }

    private static readonly Series<Way> All =
    [
        new("left out on a session's page", "session.html", Included, "", "page-without-cautions"),
        new(
            "the whole panel left out",
            "cautions.html",
            "<section class=\"part cautions\"",
            "{{ ret }}<section class=\"part cautions\"",
            "page-without-cautions"
        ),
        new(
            "only the stop signs",
            "cautions.html",
            "<h4>{{ caution.title }}</h4>",
            "{{ if group.kind != \"stop\"; continue; end }}<h4>{{ caution.title }}</h4>",
            "page-without-cautions"
        ),
        new(
            "only the first kind",
            "cautions.html",
            "{{~ end ~}}\n</section>\n{{~ end ~}}\n{{~ if cautions.pain_rule ~}}",
            "{{~ end ~}}\n</section>\n{{~ break; end ~}}\n{{~ if cautions.pain_rule ~}}",
            "page-without-cautions"
        ),
        new("the titles left out", "cautions.html", "<h4>{{ caution.title }}</h4>", "", "caution-altered"),
        new("the texts left out", "cautions.html", "{{ caution.body }}", "", "caution-altered"),
        new("the exercises left out", "cautions.html", "<p class=belongs>{{ caution.exercises }}", "", "caution-altered"),
        new("the kind left out", "cautions.html", "{{ group.heading }}", "", "caution-altered"),
        new(
            "who must leave it out, left out",
            "cautions.html",
            "{{~ if cautions.notes.count > 0 ~}}",
            "{{~ if false ~}}",
            "page-without-cautions"
        ),
        new(
            "hidden by an attribute",
            "cautions.html",
            "<section class=\"part cautions\"",
            "<section hidden class=\"part cautions\"",
            "caution-hidden"
        ),
        new(
            "hidden from a screen reader",
            "cautions.html",
            "<div class=caution>",
            "<div class=caution aria-hidden=\"true\">",
            "caution-hidden"
        ),
        new(
            "folded away",
            "cautions.html",
            "<div class=caution>",
            "<div class=caution><details><summary>More</summary>",
            "caution-hidden"
        ),
        new(
            "hidden by the style",
            "look.css",
            "* { box-sizing: border-box; }",
            ".cautions { display: none; }",
            "style-not-known"
        ),
        new("hidden in print", "print.css", "html { font-size: 8.5pt; }", ".cautions { display: none; }", "style-not-known"),
        new(
            "hidden on a phone",
            "look.css",
            ".belongs { color: var(--soft); }",
            ".caution { max-height: 2rem; overflow: hidden; }",
            "style-not-known"
        ),
        new(
            "in the colour of the ground",
            "look.css",
            "* { box-sizing: border-box; }",
            ".cautions { color: transparent; }",
            "style-not-known"
        ),
        new("in a comment", "cautions.html", "<div class=caution>", "<div class=caution><!--", "page-without-cautions"),
        new(
            "written by a script",
            "cautions.html",
            "<section class=\"part cautions\"",
            "<script type=\"text/plain\"><section class=\"part cautions\"",
            "page-without-cautions"
        ),
        new("behind the steps", "session.html", Included, "", "caution-after-instruction"),
    ];

    public static TheoryData<Way> Ways => new(All);

    [Theory]
    [MemberData(nameof(Ways))]
    public void It_is_caught_on_the_finished_page(Way way)
    {
        var theme = new PlainTheme().Edit(way.Path, way.Said, way.Instead);
        if (way.Rules == "caution-after-instruction")
            theme.With("session.html", theme.Text("session.html") + Included);
        Assert.Equal(way.Rules, Found(theme, "session-1.html"));
    }

    [Theory]
    [InlineData("exercise.html", "exercise", "exercise-sway.html")]
    [InlineData("before-you-start.html", "before", "before-you-start.html")]
    public void It_is_caught_on_every_other_page_that_needs_them(string template, string view, string page) =>
        Assert.Equal(
            "page-without-cautions",
            Found(new PlainTheme().Edit(template, $"{{{{ cautions = {view}.cautions; include 'cautions.html' }}}}", ""), page)
        );

    [Fact]
    public void The_plain_theme_has_nothing_to_find() => Assert.Equal("", Found(new PlainTheme(), "session-1.html"));

    /// <summary>Who is led through such a session would miss them too.</summary>
    [Theory]
    [InlineData("cautions.html", "<h4>{{ caution.title }}</h4>", "")]
    [InlineData("session.html", "<p class=\"again {{ kind.kind }}\">", "<p class=\"again {{ kind.kind }}\" hidden>")]
    public void It_is_missed_in_the_guided_session(string file, string said, string instead)
    {
        var (site, _) = new PlainTheme().Edit(file, said, instead).Fill();
        Assert.Contains(
            NotInSession,
            RuleBook.Audit(PlainTheme.Plan, site!, []).Where(f => f.At.File == "session-1.html").Select(f => f.Rule.Text)
        );
    }

    /// <summary>The rules about cautions that find something on that page.</summary>
    private static string Found(PlainTheme theme, string page)
    {
        var (site, findings) = theme.Fill();
        Assert.Empty(findings);
        Assert.NotNull(site);
        var found = RuleBook
            .Audit(PlainTheme.Plan, site, [])
            .Where(f =>
                f.Rule.Text == "style-not-known"
                || (f.At.File == page && f.Rule.Text.Contains("caution", StringComparison.Ordinal) && f.Rule.Text != NotInSession)
            )
            .ToArray();
        Assert.All(found, f => Assert.Equal(Level.Error, f.Level));
        return string.Join(' ', found.Select(f => f.Rule.Text).Distinct().Order(StringComparer.Ordinal));
    }
}
