using Gradus.Domain;
using Gradus.HandingOver;

namespace Gradus.Tests.HandingOver;

public sealed class SitePathTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("index.html")]
    [InlineData("pictures/ankle-rock.jpg")]
    [InlineData("a/b/c d.é.html")]
    public void A_plain_name_inside_the_site_is_safe(string path) => Assert.True(SitePath.IsSafe(path));

    [Theory]
    [InlineData("")]
    [InlineData("/index.html")]
    [InlineData("../index.html")]
    [InlineData("a/../index.html")]
    [InlineData("./index.html")]
    [InlineData("a//b.html")]
    [InlineData("a/")]
    [InlineData("a\\b.html")]
    [InlineData("..\\b.html")]
    [InlineData(".hidden")]
    [InlineData("a/.hidden/b.html")]
    [InlineData("C:index.html")]
    [InlineData("a.html.")]
    [InlineData("a /b.html")]
    [InlineData("a\0.html")]
    [InlineData("a\n.html")]
    public void A_path_that_could_leave_the_site_or_hide_in_it_is_refused(string path)
    {
        Assert.False(SitePath.IsSafe(path));
        var page = ExampleSite.Edition("first").With(new Page(path, ""));
        var asset = new Site(ExampleSite.Rufus, ExampleSite.Edition("first").Pages, [new Asset(path, default)]);

        Assert.Throws<HandOverException>(() => Publication.Write(page, folder["sites"]));
        Assert.Throws<HandOverException>(() => Publication.Write(asset, folder["sites"]));
        Assert.False(Directory.Exists(folder["sites/rufus"]));
    }

    [Fact]
    public void A_file_called_like_a_folder_of_the_site_is_refused()
    {
        var site = ExampleSite.Edition("first").With(new Page("Pictures", ""));

        var failure = Assert.Throws<HandOverException>(() => Publication.Write(site, folder["sites"]));

        Assert.Equal("'pictures' is both a file and a folder of one site.", failure.Sentence);
    }

    [Fact]
    public void A_site_without_a_front_page_is_refused() =>
        Assert.Throws<HandOverException>(() =>
            Publication.Write(ExampleSite.Edition("first").Without("index.html"), folder["sites"])
        );

    [Fact]
    public void A_page_with_half_a_character_is_refused() =>
        Assert.Throws<HandOverException>(() => Publication.Write(ExampleSite.Edition("\ud83e"), folder["sites"]));
}
