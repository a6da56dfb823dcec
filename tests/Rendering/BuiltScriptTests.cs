using System.Text;
using AngleSharp.Html.Parser;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Rendering;

/// <summary>What pages load, and what it is built from.</summary>
[Trait("Slow", "yes")]
public sealed class BuiltScriptTests
{
    private const int MostScripts = 4;

    private static readonly Practice Content = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;

    [Fact]
    public void Every_script_of_the_plain_theme_is_in_the_list_and_the_list_names_no_other() =>
        Assert.Equal(
            Repository.Files("themes", ".js").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal),
            BuiltScript.All.SelectMany(s => s.Sources).Distinct().Order(StringComparer.Ordinal)
        );

    [Fact]
    public void A_built_script_is_its_sources_one_behind_the_other()
    {
        var assets = ThemeFolder.Plain().Assets;
        Assert.Equal(
            BuiltScript.OfSites.Select(s => s.Path).Order(StringComparer.Ordinal),
            assets.Select(a => a.Path).Where(p => p.EndsWith(".js", StringComparison.Ordinal))
        );
        Assert.All(BuiltScript.OfSites, script =>
            Assert.Equal(
                string.Join('\n', script.Sources.Select(s => File.ReadAllText(Repository.Path("themes", "plain", s)))),
                Encoding.UTF8.GetString(assets.Single(a => a.Path == script.Path).Bytes.Span)
            )
        );
    }

    [Fact]
    public void No_page_of_the_demonstration_loads_more_than_four()
    {
        var pages = 0;
        foreach (var client in Content.Clients)
        {
            var site = SiteRenderer.Render(Planned.For(Content, client), ThemeFolder.Plain(), []);
            Assert.NotNull(site);
            Assert.Empty(Overloaded(site));
            pages += site.Pages.Count;
        }

        Assert.True(pages > 60, $"{pages} pages");
    }

    [Fact]
    public void A_page_that_loads_four_is_seen()
    {
        const string one = "<script src=\"offline.js\" defer></script>\n";
        var site = new PlainTheme().Edit("top.html", "</head>", one + "</head>").Fill().Site;
        Assert.NotNull(site);
        Assert.Equal(site.Pages.Count - 1, Overloaded(site).Count());
    }

    /// <summary>One statement in one source, in the folder and in the one file.</summary>
    [Theory]
    [InlineData("page.js", "good-until.js")]
    [InlineData("page.js", "log-page.js")]
    [InlineData("session.js", "guide-loads.js")]
    [InlineData("session.js", "guide-page.js")]
    [InlineData("hosted.js", "keep-offline.js")]
    public void The_auditor_knows_them_to_the_letter(string built, string source)
    {
        Assert.DoesNotContain("script", Found(new()).SelectMany(f => f.Message.Split(' ', '\'')));
        var found = Found(new PlainTheme().Edit(source, "'use strict';", "'use strict'; document.title = '';"));
        Assert.Contains(found, f => f.Message == $"This page has the script '{built}', which is none of Gradus's own.");
        Assert.Equal(
            BuiltScript.InOne.Any(s => s.Path == built),
            found.Any(f => f.At.File == PagePath.AllPages && f.Message.Contains("the element 'script'", StringComparison.Ordinal))
        );

        static Finding[] Found(PlainTheme theme)
        {
            var site = theme.Fill().Site;
            Assert.NotNull(site);
            return
            [
                .. RuleBook
                    .Audit(PlainTheme.Plan, site, [])
                    .Where(f => f.Rule.Text is "script-or-style-from-author" or "policy-weak" or "address-to-network"),
            ];
        }
    }

    /// <summary>A theme may do without one of them.</summary>
    [Fact]
    public void What_a_theme_does_not_bring_no_page_asks_for()
    {
        var theme = new PlainTheme();
        foreach (var source in BuiltScript.Session.Sources)
            theme.Without(source);
        var site = theme.Fill().Site;
        Assert.NotNull(site);
        Assert.DoesNotContain(site.Assets, a => a.Path == BuiltScript.Session.Path);
        Assert.All(site.Pages, p => Assert.DoesNotContain(BuiltScript.Session.Path, p.Html, StringComparison.Ordinal));
    }

    private static IEnumerable<string> Overloaded(Site site) =>
        site
            .Pages.Where(p => new HtmlParser().ParseDocument(p.Html).Scripts.Length > MostScripts)
            .Select(p => $"{site.Client} {p.Path}");
}
