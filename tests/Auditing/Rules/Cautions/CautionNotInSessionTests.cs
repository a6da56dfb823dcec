namespace Gradus.Tests.Auditing;

/// <summary>A session's page with the guide on it and an article for each exercise, whole, and then with one line less.</summary>
public sealed class CautionNotInSessionTests
{
    private const string Stretch =
        "<article data-about='wall-calf-stretch' data-planned='1 2'><p>Stop at once: Sharp pain</p><p>Ease off: A pinch in the "
        + "ankle</p><p>What you may feel: A pull in the calf</p></article>";

    private const string Press =
        "<article data-about='calf-press' data-planned='1 2'><p>Stop at once: Sharp pain</p><p>Take care: Keep breathing</p>"
        + "<p>What you may feel: A pull in the calf</p></article>";

    [Fact]
    public void Nothing_is_missed_where_all_stands() => Assert.Empty(Missed(Stretch + Press, "<h1>", "<h1>"));

    [Theory]
    [InlineData("<h3>A pinch in the ankle</h3>", "<h3>A pinch</h3>", "\"A pinch in the ankle\" to read before the start")]
    [InlineData(
        "<p>Come back a little until it is gone.</p>",
        "<p>Go on.</p>",
        "\"A pinch in the ankle\" to read before the start"
    )]
    [InlineData("<h2>Pain from 0 to 10</h2>", "", "the note \"Pain from 0 to 10\" to read before the start")]
    [InlineData("<p>A hernia (B)</p>", "", "the note \"Ask a doctor first with:\" to read before the start")]
    [InlineData("An ankle injury in the last 12 weeks (A, B)", "", "the note \"Leave out with:\" to read")]
    public void A_line_less_before_the_start_is_missed(string said, string instead, string missed) =>
        Assert.Contains(missed, Assert.Single(Missed(Stretch + Press, said, instead)), StringComparison.Ordinal);

    [Fact]
    public void What_stands_in_another_exercise_s_article_is_missed_in_its_own()
    {
        var pinch = "<p>Ease off: A pinch in the ankle</p>";
        var moved =
            Stretch.Replace(pinch, "", StringComparison.Ordinal)
            + Press.Replace("</article>", pinch + "</article>", StringComparison.Ordinal);
        Assert.Contains(
            "\"A pinch in the ankle\" during 'Wall calf stretch'",
            Assert.Single(Missed(moved, "<h1>", "<h1>")),
            StringComparison.Ordinal
        );
    }

    private static IEnumerable<string> Missed(string articles, string said, string instead)
    {
        var site = FinishedSite.With("session-1.html", said, instead);
        var led = site.Pages.Select(p =>
            p.Path == "session-1.html"
                ? p with
                {
                    Html = p.Html.Replace(
                        "<p>wall</p>",
                        $"<dialog data-guide='1'></dialog>{articles}<p>wall</p>",
                        StringComparison.Ordinal
                    ),
                }
                : p
        );
        return FinishedSite
            .Audit(new(site.Client, led, site.Assets))
            .Where(f => f.Rule.Text == "caution-not-in-session")
            .Select(f => f.Message);
    }
}
