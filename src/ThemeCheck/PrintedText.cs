using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using Microsoft.Playwright;

namespace Gradus.ThemeCheck;

/// <summary>A page as a PDF, and the text that poppler reads in it.</summary>
internal static class PrintedText
{
    private const string Reader = "pdftotext";

    /// <summary>Whether a line is there, whole or, where columns stand side by side and poppler reads across them, each word of
    /// it.</summary>
    public static bool Has(string text, string line) =>
        text.Contains(Bare(line), StringComparison.Ordinal)
        || line.Split(' ').All(word => text.Contains(Bare(word), StringComparison.Ordinal));

    private static string Bare(string text) => PageWatch.Bare(text.Normalize(NormalizationForm.FormKC));

    /// <summary>The text without blanks: where a line is broken does not matter.</summary>
    /// <exception cref="IOException">There is no poppler.</exception>
    public static async Task<string> Of(IPage page)
    {
        var file = Path.GetTempFileName();
        try
        {
            await page.PdfAsync(new() { Path = file, PreferCSSPageSize = true });
            using var process = Process.Start(
                new ProcessStartInfo(Reader, ["-enc", "UTF-8", file, "-"]) { RedirectStandardOutput = true }
            );
            var text = await (process ?? throw new Win32Exception()).StandardOutput.ReadToEndAsync();
            await process.WaitForExitAsync();
            return Bare(text);
        }
        catch (Win32Exception)
        {
            throw new IOException($"There is no {Reader}. On Debian: apt-get install poppler-utils.");
        }
        finally
        {
            File.Delete(file);
        }
    }
}
