using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Tests.Rendering;

namespace Gradus.Tests.Auditing;

/// <summary>What a script puts into the pages is held to the plan as if it stood there, and what scripts go by too.</summary>
public sealed class GuideFileTests
{
    private const string Session = "session-1.html";

    [Fact]
    public void As_it_is_made_nothing_is_found() => Assert.Empty(Found(new PlainTheme(), s => s));

    private static string Chest => PlainTheme.Plan.Words.Say("guide-flag-chest") + "</button>";

    private const string Side = "<p class=\"which\" data-fill=\"side\"></p>";

    private const string Detail = "<p class=\"detail\" data-fill=\"detail\"></p>";

    /// <summary>What stands in the dialog, what stands there instead, and the rule that finds it.</summary>
    public static TheoryData<string, string, string> Changes() =>
        new()
        {
            { Chest, "Only " + Chest, "plan-words-altered" },
            { "data-alarm=\"chest\"", "data-alarm=\"faint\"", "plan-words-altered" },
            { "</dialog>", "<p>Ignore the cautions.</p></dialog>", "text-not-planned" },
            { "<p class=\"detail\"", "<p data-choose class=\"detail\"", "markup-not-known" },
            { Side, "", "guide-told-wrong" },
            { Side, Side + Side, "guide-told-wrong" },
            { Detail, "<p class=\"detail\" data-fill=\"side\"></p><p data-fill=\"detail\"></p>", "guide-told-wrong" },
            { "role=\"status\" aria-atomic=\"true\"", "aria-label=\"\"", "guide-told-wrong" },
            {
                "<p class=\"told\" data-fill=\"told\"></p>",
                "</div><div role=\"status\"><p data-fill=\"told\"></p>",
                "guide-told-wrong"
            },
            { $"href=\"{PlainTheme.Plan.Emergency.Address}\"", "href=\"tel:5550100\"", "link-broken-on-page" },
        };

    [Theory, MemberData(nameof(Changes))]
    public void A_change_in_it_is_found_there(string said, string instead, string rule)
    {
        var found = Found(new PlainTheme(), s => WithGuide(s, dialog => Changed(dialog, said, instead)));
        Assert.Contains(found, f => f.Rule.Text == rule && f.At.File == GuideFile.Path);
    }

    /// <summary>A browser sees no dialog in a comment or in an attribute.</summary>
    [Theory]
    [InlineData("<!-- <dialog data-guide -->")]
    [InlineData("<p class=\"<dialog data-guide='1'>\"></p>")]
    public void What_only_looks_like_the_place_for_it_is_none(string decoy)
    {
        var theme = new PlainTheme().Edit("session.html", "<h1>", decoy + "<h1>");
        var found = Found(theme, s => WithGuide(s, dialog => Changed(dialog, Chest, "Only " + Chest)));
        Assert.Contains(found, f => f.Rule.Text == "plan-words-altered" && f.At.File == GuideFile.Path);
    }

    [Theory]
    [InlineData(";alert(1);\n")]
    [InlineData("\n")]
    public void It_holds_the_dialog_and_nothing_else(string more)
    {
        var found = Found(new PlainTheme(), s => With(s, GuideFile.Path, text => text + more));
        Assert.Contains(found, f =>
            f.Rule.Text == "script-or-style-from-author" && f.Message.Contains("guide.js", StringComparison.Ordinal)
        );
    }

    /// <summary>A place behind the dialog is that in the file.</summary>
    [Fact]
    public void What_stands_behind_it_keeps_its_place()
    {
        var theme = new PlainTheme().Edit("foot.html", "</footer>", "<p>Only joking.</p></footer>");
        var (site, _) = theme.Fill();
        var found = RuleBook
            .Audit(PlainTheme.Plan, site!, [])
            .First(f => f.Rule.Text == "text-not-planned" && f.At.File == Session);
        var lines = site!.Pages.Single(p => p.Path == Session).Html.Split('\n');
        Assert.StartsWith("<p>Only joking.", lines[found.At.Line - 1][(found.At.Column - 1)..], StringComparison.Ordinal);
    }

    /// <summary>By these a script finds what it shows of an exercise, and what it puts away.</summary>
    [Theory]
    [InlineData("data-planned=\"{{ use.planned }}\"", "data-planned=\"9\"", "week-told-wrong")]
    [InlineData("data-dose={{ use.letter }}", "data-dose=\"Z\"", "week-told-wrong")]
    [InlineData("data-doses={{ use.letter }}", "data-doses=\"Z\"", "week-told-wrong")]
    [InlineData("<details class=by-the-second>", "<details class=by-the-second data-planned=\"9\">", "week-told-wrong")]
    public void What_the_script_of_the_week_goes_by_is_the_plan_s(string said, string instead, string rule) =>
        Assert.Contains(Found(new PlainTheme().Edit("session.html", said, instead), s => s), f =>
            f.Rule.Text == rule && f.At.File == Session
        );

    /// <summary>A sign that is put away takes nothing else with it, and goes by its own letters.</summary>
    [Theory]
    [InlineData("{{ caution.body }}</div>", "{{ caution.body }}<p>{{ cautions.asked }}</p></div>")]
    [InlineData("<p class=belongs>{{ caution.exercises }}", "<p>{{ caution.exercises }}</p><p class=\"belongs\">Z</p>")]
    [InlineData(
        "<div class=caution>\n<h4>{{ caution.title }}</h4>",
        "<div class=caution><div><h4>{{ caution.title }}</h4></div>"
    )]
    public void A_part_that_a_script_puts_away_is_one_sign(string said, string instead)
    {
        var found = Found(new PlainTheme().Edit("cautions.html", said, instead), s => s);
        var isHarmless = instead.Contains("<div><h4>", StringComparison.Ordinal);
        Assert.Equal(!isHarmless, found.Any(f => f.Rule.Text == "caution-hidden" && f.At.File == Session));
    }

    private static Series<Finding> Found(PlainTheme theme, Func<Site, Site> change)
    {
        var (site, findings) = theme.Fill();
        Assert.Empty(findings);
        return RuleBook.Audit(PlainTheme.Plan, change(site!), []).Where(f => f.Level != Level.Note).ToSeries();
    }

    private static Site WithGuide(Site site, Func<string, string> change) =>
        With(site, GuideFile.Path, text => GuideFile.Of(change(GuideFile.DialogIn(text)!)));

    private static Site With(Site site, string path, Func<string, string> change) =>
        new(
            site.Client,
            site.Pages,
            site.Assets.Select(a =>
                a.Path == path ? a with { Bytes = Encoding.UTF8.GetBytes(change(Encoding.UTF8.GetString(a.Bytes.Span))) } : a
            )
        );

    private static string Changed(string text, string said, string instead)
    {
        Assert.Contains(said, text, StringComparison.Ordinal);
        return text.Replace(said, instead, StringComparison.Ordinal);
    }
}
