using System.Diagnostics;
using System.Text;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>A page printed on A4 by Chromium, and the PDF read back by poppler.</summary>
/// <param name="Pages">The text of each page, without blanks: how a line is broken does not matter.</param>
/// <param name="Smallest">The size of the smallest letters, in pt.</param>
internal sealed record PrintedSheet(string[] Pages, double Smallest)
{
    private const string SmallestLetters = """
        () => Math.min(...Array.from(document.querySelectorAll('body, body *'))
            .filter(element => element.getClientRects().length > 0
                && Array.from(element.childNodes).some(node => node.nodeType === 3 && node.textContent.trim() !== ''))
            .map(element => parseFloat(getComputedStyle(element).fontSize) * 72 / 96))
        """;

    /// <param name="style">What a theme says on top of its own, on paper.</param>
    /// <param name="change">A script that changes the page before it is printed.</param>
    public static async Task<PrintedSheet> Of(PublishedContent content, string path, string style = "", string change = "")
    {
        await using var context = await content.ContextAsync(new() { Offline = true, BypassCSP = style.Length > 0 });
        var page = await context.NewPageAsync();
        await page.GotoAsync("file://" + path);
        if (style.Length > 0)
            await page.AddStyleTagAsync(new() { Content = "@media print { " + style + " }" });
        if (change.Length > 0)
            await page.EvaluateAsync(change);
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        var smallest = await page.EvaluateAsync<double>(SmallestLetters);
        var pdf = Path.ChangeExtension(Path.GetTempFileName(), ".pdf");
        try
        {
            await page.PdfAsync(
                new PagePdfOptions
                {
                    Path = pdf,
                    PreferCSSPageSize = true,
                    Tagged = true,
                    Outline = true,
                }
            );
            var about = await Run("pdfinfo", pdf);
            Assert.Matches("Tagged: +yes", about);
            Assert.Matches("Page size: .*A4", about);
            var bytes = await File.ReadAllBytesAsync(pdf, TestContext.Current.CancellationToken);
            Assert.Contains("/Outlines", Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
            var pages = (await Run("pdftotext", "-raw", "-enc", "UTF-8", pdf, "-"))
                .Split('\f', StringSplitOptions.RemoveEmptyEntries)
                .Select(Bare)
                .ToArray();
            Assert.Matches(FormattableString.Invariant($"Pages: +{pages.Length}\n"), about);
            return new(pages, smallest);
        }
        finally
        {
            File.Delete(pdf);
        }
    }

    /// <summary>A hyphen where a line is broken is part of the word, and so is a typographic ligature.</summary>
    public static string Bare(string text) =>
        string.Concat(text.Normalize(NormalizationForm.FormKC).Where(c => !char.IsWhiteSpace(c) && c != '\u00AD'));

    private static async Task<string> Run(string command, params string[] words)
    {
        using var process = Process.Start(new ProcessStartInfo(command, words) { RedirectStandardOutput = true })
            ?? throw new InvalidOperationException(command);
        var said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return said;
    }
}
