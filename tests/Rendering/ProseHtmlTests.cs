using Gradus.Domain;

namespace Gradus.Tests.Rendering;

/// <summary>Prose → HTML, seen through a theme that shows the letter and nothing else. The letter's first heading is an
/// h3.</summary>
public sealed class ProseHtmlTests
{
    private static readonly Location At = Location.Whole("clients/ansel/programme.md");

    [Fact]
    public void Paragraphs_and_emphasis() =>
        Assert.Equal(
            "<p>Keep <em>both <strong>heels</strong></em> down.</p>\n",
            Html(
                Paragraph(
                    Plain("Keep "),
                    new Inline.Emphasis(false, [Plain("both "), new Inline.Emphasis(true, [Plain("heels")])]),
                    Plain(" down.")
                )
            )
        );

    [Fact]
    public void Lists_in_lists() =>
        Assert.Equal(
            "<ol>\n<li>Lean in</li>\n<li><p>Wait</p>\n<ul>\n<li>breathe</li>\n</ul>\n</li>\n<li></li>\n</ol>\n",
            Html(
                new Block.Listing(
                    true,
                    [
                        Item(Paragraph(Plain("Lean in"))),
                        Item(Paragraph(Plain("Wait")), new Block.Listing(false, [Item(Paragraph(Plain("breathe")))], At)),
                        Item(),
                    ],
                    At
                )
            )
        );

    [Fact]
    public void Links_lead_out_or_to_another_exercise() =>
        Assert.Equal(
            "<p><a href=\"https://example.org/?a=1&amp;b=&#39;2&#39;\">the club</a> <a "
                + "href=\"exercise-calf-sway.html\">the <em>sway</em></a></p>\n",
            Html(
                Paragraph(
                    new Inline.Link("https://example.org/?a=1&b='2'", [Plain("the club")], At),
                    Plain(" "),
                    new Inline.ExerciseLink(new("calf-sway"), [Plain("the "), new Inline.Emphasis(false, [Plain("sway")])], At)
                )
            )
        );

    [Fact]
    public void A_picture_says_what_it_shows_and_how_large_it_is_and_a_browser_chooses_its_size() =>
        Assert.Equal(
            "<p><picture><source type=\"image/webp\" srcset=\"pictures/a-480.webp 480w, pictures/a-960.webp 960w\" "
                + "sizes=\"(min-width: 48rem) 44rem, 100vw\"><img src=\"pictures/a-480.jpg\" "
                + "alt=\"The &lt;heel&gt; is &quot;down&quot;\" width=\"960\" height=\"640\" loading=\"lazy\"></picture></p>\n",
            Html(
                Paragraph(
                    new Inline.Picture(
                        "exercises/a\"b.png",
                        "The <heel> is \"down\"",
                        [new(480, 320, Asset("a-480.webp"), Asset("a-480.jpg")), new(960, 640, Asset("a-960.webp"), null)],
                        At
                    )
                )
            )
        );

    [Fact]
    public void A_picture_of_one_size_in_one_format_stands_alone() =>
        Assert.Equal(
            "<p><img src=\"pictures/a-480.webp\" alt=\"The heel\" width=\"480\" height=\"320\" loading=\"lazy\"></p>\n",
            Html(Paragraph(new Inline.Picture("a.png", "The heel", [new(480, 320, Asset("a-480.webp"), null)], At)))
        );

    private static Asset Asset(string name) => new("pictures/" + name, new byte[] { 1 });

    [Fact]
    public void A_clip_asks_for_nothing_until_it_is_played_and_has_its_captions_with_it() =>
        Assert.Equal(
            "<p><video controls preload=\"none\" playsinline src=\"clips/a.mp4\" poster=\"pictures/a-64.webp\" "
                + "aria-label=\"The &lt;heel&gt; sinks\" width=\"64\" height=\"48\">"
                + "<track kind=\"captions\" srclang=\"en\" label=\"captions phrase of ours\" default "
                + "src=\"data:text/vtt;base64,V0VCVlRUCgowMDowMDowMS4wMDAgLS0+IDAwOjAwOjAyLjAwMApTaW5rICZsdDsgbm93Cg==\"></video>"
                + "<img src=\"pictures/a-64.webp\" alt=\"The &lt;heel&gt; sinks\" width=\"64\" "
                + "height=\"48\" class=\"still\"> <span class=\"said\">What is said: Sink &lt; now</span> </p>\n",
            Html(Paragraph(Clip("clips/a.mp4")))
        );

    [Fact]
    public void Where_there_is_no_clip_its_still_says_where_it_is() =>
        Assert.Equal(
            "<p><img src=\"pictures/a-64.webp\" alt=\"The &lt;heel&gt; sinks\" width=\"64\" height=\"48\" loading=\"lazy\"> "
                + "<span class=\"said\">What is said: Sink &lt; now</span> "
                + " <span class=\"said\">clip-elsewhere phrase of ours</span> </p>\n",
            Html(Paragraph(Clip("")))
        );

    private static Inline.Clip Clip(string path) =>
        new(
            path,
            "exercises/a.png",
            [new(64, 48, Asset("a-64.webp"), null)],
            "The <heel> sinks",
            64,
            48,
            new("en", [new(1000, 2000, "Sink < now")]),
            "What is said: Sink < now",
            At
        );

    [Fact]
    public void Whatever_a_coach_writes_is_text() =>
        Assert.Equal(
            "<p>&lt;b&gt; &amp;lt; &quot;a&quot; &#39;b&#39; {{ site.name }} "
                + "{x}</p>\n<h3>&lt;/h3&gt;</h3>\n<ul>\n<li>&lt;li&gt;</li>\n</ul>\n",
            Html(
                Paragraph(Plain("<b> &lt; \"a\" 'b' {{ site.name }} {x}")),
                Heading(1, "</h3>"),
                new Block.Listing(false, [Item(Paragraph(Plain("<li>")))], At)
            )
        );

    [Fact]
    public void A_placeholder_that_nobody_filled_is_no_page() =>
        Assert.Throws<NotSupportedException>(() => Html(Paragraph(new Inline.Placeholder("hold", At))));

    [Fact]
    public void Nothing_is_nothing() => Assert.Equal("", Html());

    /// <summary>What the coach wrote, as numbers of hashes, and the levels on the page.</summary>
    [Theory]
    [InlineData("1", "3")]
    [InlineData("2", "3")]
    [InlineData("6", "3")]
    [InlineData("1 2 3 4 5 6", "3 4 5 6 6 6")]
    [InlineData("1 3 2", "3 4 4")]
    [InlineData("1 3 2 3", "3 4 4 5")]
    [InlineData("2 1", "3 3")]
    [InlineData("4 2 3 1 6 6 2", "3 3 4 3 4 4 4")]
    [InlineData("2 2 4 2 4", "3 3 4 3 4")]
    public void Headings_go_down_one_level_at_a_time(string written, string shown)
    {
        var html = Html([.. written.Split(' ').Select(n => Heading(n[0] - '0', "Heading"))]);
        Assert.Equal(shown, string.Join(' ', html.Split("<h").Skip(1).Select(h => h[0])));
    }

    [Fact]
    public void A_heading_in_a_list_counts_with_the_others() =>
        Assert.Equal(
            "<h3>One</h3>\n<ul>\n<li><h4>Two</h4>\n</li>\n</ul>\n<h5>Three</h5>\n",
            Html(Heading(1, "One"), new Block.Listing(false, [Item(Heading(2, "Two"))], At), Heading(3, "Three"))
        );

    [Fact]
    public void A_word_of_the_glossary_leads_to_its_explanation() =>
        Assert.Equal(
            "<p>A <a class=\"term\" href=\"#word-2\">&lt;Lunge&gt;s</a></p>\n",
            Html(Paragraph(Plain("A "), new Inline.Term(2, "<Lunge>s", "lunge", "A long step.")))
        );

    [Fact]
    public void A_figure_is_shown_from_where_it_stands_once_and_its_letter_stays_upright()
    {
        var html = Html(
            Paragraph(
                new Inline.Drawn(
                    "figure-lean-start",
                    "-5 -10 20 30",
                    "matrix(-1 0 0 1 10 0)",
                    "L",
                    "3",
                    "4.5",
                    "Lean <1>: Start",
                    "Drawn from the side."
                )
            )
        );
        Assert.StartsWith(
            "<p><svg class=\"drawn\" viewBox=\"-5 -10 20 30\" role=\"img\" data-letters=\"",
            html,
            StringComparison.Ordinal
        );
        Assert.Contains("<title>Lean &lt;1&gt;: Start</title><desc>Drawn from the side.</desc>", html, StringComparison.Ordinal);
        Assert.Contains(
            "<use href=\"#figure-lean-start\" x=\"-5\" y=\"-10\" width=\"20\" height=\"30\" "
                + "transform=\"matrix(-1 0 0 1 10 0)\"/>",
            html,
            StringComparison.Ordinal
        );
        Assert.Contains("<text class=\"drawn-letter\" x=\"3\" y=\"4.5\" text-anchor=\"middle\"", html, StringComparison.Ordinal);
        Assert.EndsWith(">L</text></svg></p>\n", html, StringComparison.Ordinal);
    }

    /// <summary>A kind of block or piece of text that is added must be added here.</summary>
    [Fact]
    public void Every_kind_is_written_above()
    {
        Assert.Equal(
            ["Heading", "Listing", "Paragraph"],
            typeof(Block).GetNestedTypes().Select(t => t.Name).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            [
                "Clip",
                "Drawn",
                "Emphasis",
                "ExerciseLink",
                "Figure",
                "Link",
                "Picture",
                "Placeholder",
                "Plain",
                "RangeFigure",
                "Term",
            ],
            typeof(Inline).GetNestedTypes().Select(t => t.Name).Order(StringComparer.Ordinal)
        );
    }

    private static string Html(params Block[] blocks)
    {
        var plan = PlainTheme.Plan with { Programme = PlainTheme.Plan.Programme with { Letter = new(blocks.ToSeries()) } };
        return new PlainTheme()
            .With("index.html", "{{ home.letter }}")
            .With("page.html", "{{ page.content }}")
            .Page("index.html", plan);
    }

    private static Inline Plain(string words) => new Inline.Plain(words);

    private static Block Paragraph(params Inline[] text) => new Block.Paragraph(text.ToSeries(), At);

    private static Block Heading(int level, string words) => new Block.Heading(level, [Plain(words)], At);

    private static Prose Item(params Block[] blocks) => new(blocks.ToSeries());
}
