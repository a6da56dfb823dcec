using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Tests.Media;

namespace Gradus.Tests.Auditing;

/// <summary>What was published on another kind of machine: pictures whose colours differ by what nobody sees are taken as they
/// stand there.</summary>
public sealed class AlikePicturesTests
{
    private const string Path = "pictures/wall.png";

    private static readonly byte[] Own = Grey(100),
        Near = Grey(102),
        Far = Grey(110);

    private static readonly Plan Plan = FinishedSite.Plan with
    {
        Pictures = [new Picture("wall.png", [new(8, 8, new(Path, Own), null)])],
    };

    [Fact]
    public void A_file_that_shows_the_same_is_taken_as_it_was_published()
    {
        Assert.Equal(Near, Taken(Site("", Near), Site("", Own)).Assets.Single(a => a.Path == Path).Bytes.ToArray());
        Assert.Equal(Own, Taken(Site("", Far), Site("", Own)).Assets.Single(a => a.Path == Path).Bytes.ToArray());
    }

    [Fact]
    public void A_file_that_is_no_picture_of_the_plan_stays()
    {
        var made = new Site(FinishedSite.Site.Client, [], [new("other.png", Own)]);
        var found = new Site(made.Client, [], [new("other.png", Near)]);
        Assert.Equal(Own, Taken(found, made).Assets.Single().Bytes.ToArray());
    }

    [Fact]
    public void A_plan_without_pictures_takes_nothing()
    {
        var made = Site(Shown(Own), Own);
        Assert.Same(made, AlikePictures.Taken(Plan with { Pictures = [] }, Site(Shown(Near), Near), made));
    }

    /// <summary>Of several in one page each is judged by itself, and in its place.</summary>
    [Fact]
    public void What_is_written_out_in_a_page_is_taken_where_it_shows_the_same()
    {
        Assert.Equal(Shown(Near), Page(Shown(Near), Shown(Own)));
        Assert.Equal(Shown(Own), Page(Shown(Far), Shown(Own)));
        Assert.Equal(Shown(Near, Own, Near), Page(Shown(Near, Far, Near), Shown(Own, Own, Own)));
    }

    [Fact]
    public void A_page_with_another_number_of_pictures_is_left_as_it_is()
    {
        Assert.Equal(Shown(Own), Page(Shown(Near, Near), Shown(Own)));
        Assert.Equal(Shown(Own, Own), Page(Shown(Near), Shown(Own, Own)));
    }

    [Fact]
    public void Another_kind_other_bytes_and_what_is_no_picture_are_not_taken()
    {
        Assert.Equal(Shown(Own), Page(Shown(Near).Replace("webp", "jpeg", StringComparison.Ordinal), Shown(Own)));
        Assert.Equal(Shown(Far), Page(Shown(Near), Shown(Far)));
        Assert.Equal(Shown(Own), Page("<img src=\"data:image/webp;base64,AAA=A\">", Shown(Own)));
    }

    [Fact]
    public void Words_beside_the_pictures_stay_and_the_list_of_files_is_made_anew()
    {
        var made = new Site(
            FinishedSite.Site.Client,
            [new("a.html", "new " + Shown(Own)), new("b.html", "b")],
            [new(Path, Own), new(PagePath.FileList, Encoding.UTF8.GetBytes("of before"))]
        );
        var found = new Site(made.Client, [new("a.html", "old " + Shown(Near))], [new(Path, Near)]);
        var taken = Taken(found, made);
        Assert.Equal(["new " + Shown(Near), "b"], taken.Pages.Select(p => p.Html));
        var list = Encoding.UTF8.GetString(taken.Assets.Single(a => a.Path == PagePath.FileList).Bytes.Span);
        Assert.Equal(FileList.Of(taken.Pages, taken.Assets), list);
        Assert.NotEqual("of before", list);
    }

    private static string Page(string found, string made) => Taken(Site(found, Own), Site(made, Own)).Pages.Single().Html;

    private static Site Taken(Site found, Site made) => AlikePictures.Taken(Plan, found, made);

    private static Site Site(string html, byte[] picture) =>
        new(FinishedSite.Site.Client, [new("a.html", html)], [new(Path, picture)]);

    private static string Shown(params byte[][] pictures) =>
        string.Concat(pictures.Select(p => $"<img src=\"data:image/webp;base64,{Convert.ToBase64String(p)}\">"));

    private static byte[] Grey(byte colour)
    {
        var pixels = new byte[4 * 8 * 8];
        Array.Fill(pixels, colour);
        for (var n = 3; n < pixels.Length; n += 4)
            pixels[n] = 255;
        return MadePicture.Encoded(pixels, 8, 8, "png");
    }
}
