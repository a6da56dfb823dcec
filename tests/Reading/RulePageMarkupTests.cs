using Gradus.Reading;

namespace Gradus.Tests.Reading;

public sealed class RulePageMarkupTests
{
    [Fact]
    public void Headings_follow_the_place_where_the_page_stands() =>
        Assert.Equal(
            "<h3>some-fault</h3>\n<p>A sentence.</p>\n<h4>Found: an example</h4>\n",
            Markup("# some-fault\n\nA sentence.\n\n## Found: an example\n")
        );

    [Fact]
    public void A_block_says_which_file_it_changes() =>
        Assert.Equal(
            "<p>What is changed in <code>clients/tess/client.yaml</code>:</p>\n<pre><code>- &lt;b&gt;\n</code></pre>\n"
                + "<p>What is then found:</p>\n<pre><code>Nothing.\n</code></pre>\n",
            Markup("```edit clients/tess/client.yaml\n- <b>\n```\n\n```finds\nNothing.\n```\n")
        );

    [Fact]
    public void Nothing_that_a_page_writes_is_taken_as_html() =>
        Assert.Equal("<p>A &lt;script&gt; stands here.</p>\n", Markup("A <script> stands here.\n"));

    private static string Markup(string text) => RulePageMarkup.Of(new(new("some-fault"), text), 3);
}
