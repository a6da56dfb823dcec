using Gradus.Domain;
using Gradus.Reading;
using Gradus.Rendering;
using Gradus.Tests.House;
using SkiaSharp;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Gradus.Tests.Browser;

/// <summary>The card for the bag as somebody scans it: a picture of it out of Chromium, read back by ZXing.</summary>
public sealed class CardTests(PublishedContent content)
{
    private const string Long =
        "https://train.example.org/a/rather/long/way/to/the/folder/of/the/clients/and/then/a/little/further/on/until/"
        + "it/is/as/long/as/may/be/for/once/9qf7hx4mzc6vkeo3jyn5bwdaur/";

    [Theory]
    [InlineData("https://example.org/2qf7hx4mzc6vkeo3jyn5bwdaur/", 1)]
    [InlineData(Long, 3)]
    public async Task Its_code_is_the_address(string address, int scale)
    {
        await using var context = await content.ContextAsync(
            new()
            {
                ViewportSize = new() { Width = 420, Height = 600 },
                DeviceScaleFactor = scale,
            }
        );
        var page = await context.NewPageAsync();
        var troubles = new List<string>();
        page.Console += (_, message) => troubles.Add(message.Text);
        await page.SetContentAsync(Card(address));
        Assert.Equal(address, Scanned(await page.ScreenshotAsync(new() { FullPage = true })));
        await page.EmulateMediaAsync(new() { ColorScheme = Microsoft.Playwright.ColorScheme.Dark });
        Assert.Equal(address, Scanned(await page.ScreenshotAsync(new() { FullPage = true })));
        Assert.Empty(troubles);
    }

    [Fact]
    public async Task It_fits_one_page_of_A6_and_says_whom_to_call_and_until_when_and_not_whose_it_is()
    {
        await using var context = await content.ContextAsync(new());
        var page = await context.NewPageAsync();
        await page.SetContentAsync(Card(Long));
        var text = await page.InnerTextAsync("body");
        Assert.Contains("999", text, StringComparison.Ordinal);
        Assert.Contains("17 January 2027", text, StringComparison.Ordinal);
        Assert.Contains("+44 1632 960001", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Rufus", text, StringComparison.Ordinal);
        var pdf = await page.PdfAsync(new() { PreferCSSPageSize = true });
        var written = System.Text.Encoding.Latin1.GetString(pdf);
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(written, @"/Type\s*/Page\b"));
        // 105 by 148 mm in points of 1/72 inch, and what a browser rounds.
        var box = System.Text.RegularExpressions.Regex.Match(written, @"/MediaBox\s*\[0 0 (\d+)\S* (\d+)");
        Assert.Contains(box.Groups[1].Value, (string[])["297", "298"]);
        Assert.Contains(box.Groups[2].Value, (string[])["419", "420"]);
    }

    private static string Card(string address)
    {
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice;
        var rufus = practice?.Find(new ClientId("rufus"));
        Assert.NotNull(practice);
        Assert.NotNull(rufus);
        return CardPage.Of(Planned.For(practice, rufus), address);
    }

    private static string? Scanned(byte[] picture)
    {
        using var map = SKBitmap.Decode(picture).Copy(SKColorType.Bgra8888);
        var source = new RGBLuminanceSource(map.Bytes, map.Width, map.Height, RGBLuminanceSource.BitmapFormat.BGRA32);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)))?.Text;
    }
}
