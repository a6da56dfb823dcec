using System.Diagnostics;
using Gradus.Domain;
using Gradus.Rendering;

namespace Gradus.Tests.Rendering;

/// <summary>Themes with a mistake, or worse, and what is said of them.</summary>
[Trait("Slow", "yes")]
public sealed class ThemeFaultTests
{
    [Theory]
    [MemberData(nameof(ThemeFaultTable.Mistakes), MemberType = typeof(ThemeFaultTable))]
    [MemberData(nameof(ThemeFaultTable.Endless), MemberType = typeof(ThemeFaultTable))]
    public void What_is_wrong_with_a_template_is_said_where_it_stands_and_within_two_seconds(string row)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(row, Show(row));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 300 << 20);
        Assert.InRange(Enumerable.Range(0, 3).Min(_ => SecondsFor(row)), 0, 2);
    }

    [Theory]
    [MemberData(nameof(ThemeFaultTable.WaysOut), MemberType = typeof(ThemeFaultTable))]
    public void There_is_no_way_out_of_the_theme(string way)
    {
        var (site, findings) = new PlainTheme().With("index.html", $"<p>{{{{ {way} }}}}</p>").Fill();
        Assert.Null(site);
        var finding = Assert.Single(findings);
        Assert.Equal("index.html", finding.At.File);
        Assert.Matches("There is no '|There is no template '|This is no text", finding.Message);
    }

    [Fact]
    public void A_template_that_is_missing_is_named()
    {
        var finding = Assert.Single(new PlainTheme().Without("session.html").Fill().Findings);
        Assert.Equal(
            ("session.html", "The theme 'mine' cannot be filled: There is no template 'session.html'."),
            (finding.At.ToString(), finding.Message)
        );
    }

    [Fact]
    public void A_template_that_is_no_text_or_too_large_is_named()
    {
        Assert.EndsWith(
            "This template is not in UTF-8.",
            Assert.Single(new PlainTheme().With("foot.html", [0x3C, 0xFF]).Fill().Findings).Message,
            StringComparison.Ordinal
        );
        Assert.EndsWith(
            "This template has 257 KiB; the most that is read is 256 KiB.",
            Assert.Single(new PlainTheme().With("foot.html", new string('x', (256 * 1024) + 1)).Fill().Findings).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Brackets_without_end_are_refused_and_do_not_end_the_program()
    {
        foreach (var bracket in (string[])["(", "[", "-", "!", "f(", "{ a: "])
        {
            var (site, findings) = new PlainTheme()
                .With("index.html", "{{ " + string.Concat(Enumerable.Repeat(bracket, 40_000)) + " }}")
                .Fill();
            Assert.Null(site);
            Assert.Equal("index.html", Assert.Single(findings).At.File);
        }
    }

    [Theory]
    [InlineData("INDEX.HTML")]
    [InlineData("Session-1.HTML")]
    [InlineData("pictures/d44c0303173e-1.webp")]
    [InlineData("LOOK.css")]
    public void A_file_that_would_take_the_place_of_another_is_refused(string path)
    {
        var (site, findings) = new PlainTheme().With(path, "x").Fill();
        Assert.Null(site);
        Assert.Equal(
            "The theme 'mine' cannot be filled: The site has another file of this name.",
            Assert.Single(findings).Message
        );
    }

    [Fact]
    public void Windows_line_ends_and_a_mark_at_the_start_change_nothing()
    {
        var theme = new PlainTheme();
        var expected = theme.Page("session-1.html");
        foreach (var name in (string[])["session.html", "head.html", "cautions.html", "time.html"])
            theme.With(name, "\uFEFF" + theme.Text(name).Replace("\n", "\r\n", StringComparison.Ordinal));
        Assert.Equal(expected, theme.Page("session-1.html"));
    }

    [Fact]
    public void What_is_typed_as_html_is_escaped_once_it_is_a_text()
    {
        var page = new PlainTheme()
            .With("page.html", "{{ page.content }}")
            .With("index.html", "{{ home.letter }}<!-- -->{{ home.letter.markup }}{{ x = home.letter + '' }}{{ x }}")
            .Page("index.html");
        var (typed, text) = (page.Split("<!-- -->")[0], page.Split("<!-- -->")[1]);
        Assert.Contains("<p>letter of ours</p>", typed, StringComparison.Ordinal);
        Assert.DoesNotContain("<", text, StringComparison.Ordinal);
    }

    /// <summary>Two years, every week another dose, a hundred steps in each.</summary>
    [Fact]
    public void The_longest_page_that_a_coach_could_want_is_far_from_any_limit()
    {
        var weeks = PlainTheme.Plan.Sessions[0].Weeks[0];
        var steps = Enumerable.Repeat(weeks.Steps, 20).SelectMany(s => s).Take(100).ToSeries();
        var longest = PlainTheme.Plan.Sessions[0] with
        {
            Weeks = Enumerable.Range(1, 104).Select(n => weeks with { Weeks = [n], Steps = steps }).ToSeries(),
        };
        var page = new PlainTheme().Page(
            "session-1.html",
            PlainTheme.Plan with
            {
                Sessions = [longest, .. PlainTheme.Plan.Sessions.Skip(1)],
            }
        );
        Assert.Equal(104 * 100, page.Split("<li data-step=").Length - 1);
    }

    /// <summary>The fastest of a few counts: other tests run beside this one.</summary>
    private static double SecondsFor(string row)
    {
        var watch = Stopwatch.StartNew();
        Show(row);
        return watch.Elapsed.TotalSeconds;
    }

    /// <summary>The row as it is: the same template with what is really found.</summary>
    private static string Show(string row)
    {
        var written = row.Split('\n')[0];
        var (path, text) = (written.Split(": ", 2)[0], written.Split(": ", 2)[1]);
        var (site, findings) = new PlainTheme().With(path, text.Replace('⏎', '\n')).Fill();
        Assert.Null(site);
        Assert.All(findings, f =>
            Assert.Equal((SiteRenderer.ThemeBroken, Level.Error, PlainTheme.Plan.Client), (f.Rule, f.Level, f.Client))
        );
        return string.Join(
            '\n',
            findings
                .SelectMany(f =>
                    (string[])
                        [
                            f.At.ToString(),
                            f.Message.Replace("The theme 'mine' cannot be filled: ", "", StringComparison.Ordinal),
                            f.Help,
                        ]
                )
                .Prepend(written)
        );
    }
}
