using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class OtherClientNamedTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        Body("a name in the text", "<p>as Bram Ullyett does</p>"),
        Body("in other cases", "<p>BRAM ullyett</p>"),
        Body("over two lines", "<p>Bram\n   Ullyett</p>"),
        Body("over two elements", "<p>Bram <b>Ullyett</b></p>"),
        Body("with a break between", "<p>Bram<br>Ullyett</p>"),
        Body("over two paragraphs", "<p>Bram</p><p>Ullyett</p>"),
        Body("with the surname first", "<p>ULLYETT, Bram</p>"),
        Body("with a hyphen", "<p>Bram-Ullyett</p>"),
        Body("with letters that look alike", "<p>\u0412r\u0430m Ullyett</p>"),
        Body("with marks on its letters", "<p>Br\u00e1m Ullyett</p>"),
        Body("in wide letters", "<p>\uff22ram Ullyett</p>"),
        Body("in an attribute", "<p title=\"Bram Ullyett\">x</p>"),
        Body("in a comment", "<!-- Bram Ullyett -->"),
        Body("in hidden text", "<p hidden>Bram Ullyett</p>"),
        Body("in a template", "<template>Bram Ullyett</template>"),
        Body("in a script", "<script>var a = 'Bram Ullyett'</script>") with
        {
            Rules = "other-client-named policy-weak script-or-style-from-author",
        },
        Body("with a hard blank", "<p>Bram&nbsp;Ullyett</p>"),
        Body("letters as numbers", "<p>Bra&#109; &#x55;llyett</p>"),
        Body("as numbers in a comment", "<!-- &#66;ram Ullyett -->"),
        Body("with soft hyphens", "<p>Bram Ully&shy;ett</p>"),
        Body("with a mark nobody sees", "<p>Bram Ully\u200bett</p>"),
        Body("in an address", "<a href=\"https://example.org/?n=Bram%20Ullyett\">x</a>"),
        new("in the title of the page", "index.html", "<title>", "<title>Bram Ullyett ", "other-client-named"),
        new("in a style file", "look.css", "body {", "/* Bram Ullyett */ body {", "other-client-named"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Body("the first name alone", "<p>Bram</p>") with
        {
            Rules = "",
        },
        Body("the client's own name", "<p>Tess Harrowby</p>") with
        {
            Rules = "",
        },
        Body("the coach", "<p>Ottoline Marsh</p>") with
        {
            Rules = "",
        },
        Body("a name that ends alike", "<p>Abram Ullyett</p>") with
        {
            Rules = "",
        },
        Body("a name that begins alike", "<p>Bram Ullyetts</p>") with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_however_the_name_is_written(PlantedFault fault) => fault.MustBeFound();

    [Theory]
    [InlineData("bram-ullyett.txt")]
    [InlineData("Bram Ullyett.png")]
    [InlineData("pictures/bram_ullyett/foot.png")]
    [InlineData("BramUllyett.ics")]
    public void It_is_found_in_the_name_of_a_file(string path)
    {
        var site = new Site(
            FinishedSite.Site.Client,
            FinishedSite.Site.Pages,
            FinishedSite.Site.Assets.Append(new(path, Array.Empty<byte>()))
        );
        Assert.Equal(
            [("file-unplanned", path), ("other-client-named", path)],
            FinishedSite.Audit(site).Select(f => (f.Rule.Text, f.At.File)).Order()
        );
    }

    /// <summary>Whatever is text is read, captions and calendars too; a name may be cut in two by a mark.</summary>
    [Theory]
    [InlineData("css js mjs json svg txt ics vtt xml webmanifest csv")]
    public void It_is_found_in_every_file_that_is_text(string endings) =>
        Assert.All(endings.Split(' ').Select(ending => $"more.{ending}"), file =>
            Assert.Contains(
                file,
                FinishedSite
                    .Audit(FinishedSite.Site.And(file, "x, Bram: Ullyett (y)"))
                    .Where(f => f.Rule.Text == "other-client-named")
                    .Select(f => f.At.File)
            )
        );

    private static PlantedFault Body(string kind, string html) =>
        new($"{kind}: {html}", "index.html", "</body>", html + "</body>", "other-client-named");
}
