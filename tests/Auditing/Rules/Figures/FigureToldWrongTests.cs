using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>Faults planted in the figures of a finished page of the demonstration, in the folder and in the one file.</summary>
public sealed partial class FigureToldWrongTests
{
    private static readonly (Plan Plan, Site Pages, Site InOne) Rufus = Made();

    [GeneratedRegex(
        "(?<=data-part=\"working-shank\" data-near=\"[^\"]*\"[^>]* d=\"M)(-?[0-9.]+) (-?[0-9.]+)L(-?[0-9.]+) (-?[0-9.]+)"
    )]
    private static partial Regex WorkingShank();

    [GeneratedRegex("<symbol .*?</symbol>")]
    private static partial Regex Symbol();

    [GeneratedRegex("(?<=<svg class=\"?drawn\"? .*?>)[LR](?=</text>)")]
    private static partial Regex Letter();

    [GeneratedRegex(" transform=\"matrix[^\"]*\"")]
    private static partial Regex Mirroring();

    [GeneratedRegex("href=\"?#figure-([a-z-]+)-start\"?")]
    private static partial Regex Start();

    public static TheoryData<string, string> Faults()
    {
        var all = new TheoryData<string, string>();
        foreach (var fault in Planted.Keys)
        foreach (var page in new[] { "session-1.html", "exercise-half-kneeling-ankle-rock.html", PagePath.AllPages })
            all.Add(fault, page);
        return all;
    }

    private static readonly Dictionary<string, (Func<string, string> Change, string Said)> Planted = new(StringComparer.Ordinal)
    {
        ["the letter of the other side"] = (
            html => Letter().Replace(html, m => m.Value == "L" ? "R" : "L", 1),
            "has the letter '"
        ),
        ["no letter"] = (html => Letter().Replace(html, "", 1), "has the letter ''"),
        ["mirrored, or not"] = (Turned, "the sides are the wrong way round"),
        ["end for start"] = (html => Start().Replace(html, "href=\"#figure-$1-end\"", 1), "another stands, '#figure-"),
        ["a shank 5 degrees off"] = (html => WorkingShank().Replace(html, m => Bent(m, 5), 1), "the working shank is 5° away"),
        ["a shank 2 degrees off"] = (html => WorkingShank().Replace(html, m => Bent(m, 2), 1), "the working shank is 2° away"),
        ["a foot through the floor"] = (Sunk, "drawn otherwise than the pose says"),
        ["another body"] = (
            html => Symbol().Replace(html, m => m.Value.Replace("working-", "other-", StringComparison.Ordinal), 1),
            ""
        ),
        ["no drawing"] = (html => Symbol().Replace(html, "", 1), "is drawn nowhere on the page"),
        ["no figure"] = (html => new Regex("<svg class=\"?drawn\"?.*?</svg>").Replace(html, "", 1), "The page shows "),
        ["something over it"] = (
            html =>
                html.Replace(
                    "</symbol>",
                    "<g><path stroke-width=\"40\" d=\"M-90 -90L90 -20\"/></g></symbol>",
                    StringComparison.Ordinal
                ),
            "drawn otherwise than the pose says"
        ),
        ["another piece of it"] = (
            html => new Regex("(?<=<use href=\"?#[^ ]* x=\"?)-?[0-9]+").Replace(html, "7", 1),
            "another part of it is seen"
        ),
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void It_is_found_in_every_form(string fault, string page)
    {
        var (change, said) = Planted[fault];
        var site = page == PagePath.AllPages ? Rufus.InOne : Rufus.Pages;
        var before = site.Pages.First(p => p.Path == page).Html;
        var after = change(before);
        if (after == before)
        {
            // On the page of one exercise with one side nothing is mirrored.
            Assert.Equal("mirrored, or not", fault);
            return;
        }

        var found = FiguresOf(Found(page, after));
        Assert.NotEmpty(found);
        Assert.Contains(found, f => f.Message.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("session-1.html")]
    [InlineData(PagePath.AllPages)]
    public void Nothing_is_found_where_nothing_is_changed(string page)
    {
        var site = page == PagePath.AllPages ? Rufus.InOne : Rufus.Pages;
        Assert.Empty(FiguresOf(Found(page, site.Pages.First(p => p.Path == page).Html)));
    }

    [Fact]
    public void Where_sessions_begin_with_different_sides_the_page_of_the_exercise_has_no_letter()
    {
        var exercise = Rufus.Plan.Exercise(new("side-lying-chest-turn"));
        var uses = exercise.Uses.Select(u => u.Text.Pair.OfType<Inline.Drawn>().Select(d => d.Letter).Distinct().Single());
        Assert.True(uses.Distinct().Count() > 1);
        Assert.All(exercise.Text.Pair.OfType<Inline.Drawn>(), d => Assert.Equal(("", ""), (d.Letter, d.Mirrored)));
    }

    [Fact]
    public void A_page_may_do_without_figures() =>
        Assert.Empty(
            FiguresOf(
                Found(
                    "session-1.html",
                    new Regex("<svg class=\"?(drawn|figures)\"?.*?</svg>").Replace(
                        Rufus.Pages.Pages.First(p => p.Path == "session-1.html").Html,
                        ""
                    )
                )
            )
        );

    private static Finding[] FiguresOf(IEnumerable<Finding> findings) =>
        [.. findings.Where(f => f.Rule == RuleId.Of(typeof(FigureToldWrong)))];

    private static IEnumerable<Finding> Found(string path, string html)
    {
        var site = path == PagePath.AllPages ? Rufus.InOne : Rufus.Pages;
        var pages = site.Pages.Select(p => p.Path == path ? p with { Html = html } : p);
        var changed = new Site(site.Client, pages, site.Assets);
        return RuleBook.Audit(Rufus.Plan, changed, []);
    }

    private static string Turned(string html) => Mirroring().Replace(html, "", 1);

    /// <summary>The lower end turned about the upper one, on paper.</summary>
    private static string Bent(Match shank, double degrees)
    {
        double Number(int group) => double.Parse(shank.Groups[group].Value, CultureInfo.InvariantCulture);
        var (x, y) = (Number(3) - Number(1), Number(4) - Number(2));
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(degrees));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Number(1)} {Number(2)}L{Number(1) + (x * cos) - (y * sin):0.0} {Number(2) + (x * sin) + (y * cos):0.0}"
        );
    }

    /// <summary>The whole foot 6 units lower, which is 3 per cent of the height.</summary>
    private static string Sunk(string html) =>
        new Regex("(?<=data-part=\"working-foot\"[^>]* d=\")[^\"]*").Replace(
            html,
            m =>
                new Regex("([ML])(-?[0-9.]+) (-?[0-9.]+)").Replace(m.Value, p =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{p.Groups[1]}{p.Groups[2]} {double.Parse(p.Groups[3].Value, CultureInfo.InvariantCulture) + 6:0.#}"
                    )
                ),
            1
        );

    private static (Plan, Site, Site) Made()
    {
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice
            ?? throw new InvalidOperationException();
        var plan = Planned.For(practice, practice.Clients.First(c => c.Id.Text == "rufus"));
        var theme = ThemeFolder.Plain();
        return (plan, Rendered(Rendition.Pages), Rendered(Rendition.OneFile));

        Site Rendered(Rendition form) => SiteRenderer.Render(plan, theme, [], form) ?? throw new InvalidOperationException();
    }
}
