using System.Globalization;
using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class PublishedSiteTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    private string Place => folder["sites/rufus"];

    public PublishedSiteTests() => Publication.Write(ExampleSite.Edition("first"), folder["sites"]);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void What_was_published_is_read_back_byte_for_byte()
    {
        var site = new FolderForm().Read(Place, ExampleSite.Rufus);

        Assert.Equal(ExampleSite.Rufus, site.Client);
        Assert.Equal(ExampleSite.Edition("first").Pages, site.Pages);
        Assert.Equal(ExampleSite.Edition("first").Files(), site.Files());
    }

    [Fact]
    public void Whatever_somebody_put_there_is_read_too()
    {
        Directory.CreateDirectory(Path.Combine(Place, "a"));
        File.WriteAllText(Path.Combine(Place, "a", "LOUD.HTML"), "<p>");
        File.WriteAllText(Path.Combine(Place, ".hidden"), "");

        var site = new FolderForm().Read(Place, ExampleSite.Rufus);

        Assert.Contains(new Page("a/LOUD.HTML", "<p>"), site.Pages);
        Assert.Contains(site.Assets, asset => asset.Path == ".hidden");
    }

    [Theory]
    [InlineData("page.html")]
    [InlineData("folder")]
    public void A_link_is_refused(string name)
    {
        var outside = Directory.CreateDirectory(folder["outside"]).FullName;
        File.CreateSymbolicLink(Path.Combine(Place, name), outside);

        Assert.Equal($"'{Place}/{name}' is a link and may lead out of the site.", Refusal(Place).Sentence);
    }

    [Fact]
    public void A_site_that_is_itself_a_link_is_refused()
    {
        Directory.CreateSymbolicLink(folder["sites/maud"], Place);

        Assert.Contains("is a link", Refusal(folder["sites/maud"]).Sentence, StringComparison.Ordinal);
        Assert.Contains("is a link", Refusal(folder["sites/maud/"]).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_of_four_mebibytes_is_read_and_one_byte_more_is_not()
    {
        var page = Path.Combine(Place, "log.html");
        File.WriteAllText(page, new string('a', PublishedSite.LargestPage));
        Assert.Contains(new FolderForm().Read(Place, ExampleSite.Rufus).Pages, p => p.Html.Length == 4_194_304);

        File.AppendAllText(page, "a");

        Assert.Equal($"'{page}' is larger than 4 MiB.", Refusal(Place).Sentence);
    }

    /// <summary>What a browser has to take apart is the page; what is written out in it of pictures and clips is not.</summary>
    [Fact]
    public void A_page_that_holds_all_others_is_read_with_its_pictures_up_to_64_mebibytes()
    {
        var page = Path.Combine(Place, "all-pages.html");
        var picture = $"<img src=\"data:image/png;base64,{new string('A', 3 * PublishedSite.LargestPage)}\">";
        File.WriteAllText(page, picture + new string('a', PublishedSite.LargestPage - 100));
        Assert.Contains(new FolderForm().Read(Place, ExampleSite.Rufus).Pages, p => p.Html.Length > 16_000_000);

        File.AppendAllText(page, new string('a', 100));
        Assert.Equal($"'{page}' is larger than 4 MiB, without its pictures and clips.", Refusal(Place).Sentence);

        using (var longer = File.OpenWrite(page))
            longer.SetLength(PublishedSite.LargestWhole + 1);
        Assert.Equal($"'{page}' is larger than 64 MiB.", Refusal(Place).Sentence);
    }

    [Fact]
    public void Ten_thousand_files_are_read_and_one_more_is_not()
    {
        var many = Directory.CreateDirectory(folder["many"]).FullName;
        for (var n = 0; n < 10_000; n++)
            File.WriteAllBytes(Path.Combine(many, n.ToString(CultureInfo.InvariantCulture)), []);
        Assert.Equal(10_000, new FolderForm().Read(many, ExampleSite.Rufus).Assets.Count);

        File.WriteAllBytes(Path.Combine(many, "more"), []);

        Assert.Equal($"'{many}' holds more than 10000 files.", Refusal(many).Sentence);
    }

    [Fact]
    public void A_site_that_is_larger_than_a_gibibyte_is_not_read()
    {
        using (var asset = File.Create(Path.Combine(Place, "film")))
            asset.SetLength(PublishedSite.LargestSite);

        Assert.Equal($"'{Place}' is larger than 1024 MiB.", Refusal(Place).Sentence);
    }

    [Fact]
    public void A_pipe_is_not_waited_for()
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && TemporaryFolder.Run("mkfifo", Path.Combine(Place, "pipe.html")).Exit == 0,
            "No pipe can be made here."
        );

        Assert.Contains(new Page("pipe.html", ""), new FolderForm().Read(Place, ExampleSite.Rufus).Pages);
    }

    [Fact]
    public void A_page_that_is_no_text_is_refused()
    {
        File.WriteAllBytes(Path.Combine(Place, "log.html"), [0xc3, 0x28]);

        Assert.Equal($"'{Place}/log.html' is not UTF-8 text.", Refusal(Place).Sentence);
    }

    [Fact]
    public void Two_names_that_differ_only_in_case_are_refused()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only a disk that tells capitals apart can hold both.");
        File.WriteAllText(Path.Combine(Place, "Log.html"), "");

        Assert.Contains("differ only in case", Refusal(Place).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_site_that_is_not_there_is_said_not_to_be() =>
        Assert.Equal($"There is no published site in '{folder["sites/maud"]}'.", Refusal(folder["sites/maud"]).Sentence);

    private static HandOverException Refusal(string place) =>
        Assert.Throws<HandOverException>(() => new FolderForm().Read(place, ExampleSite.Rufus));
}
