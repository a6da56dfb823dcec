using System.Diagnostics;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>Every page through the Nu HTML checker, the reference implementation of HTML conformance checking.</summary>
public sealed class NuCheckerTests(PublishedContent content, ITestOutputHelper output)
{
    /// <summary>For a process that ends before the better compiler and the parallel collector would pay.</summary>
    private static readonly string[] Short = ["-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xss4m"];

    [Fact]
    public async Task Every_page_and_style_is_valid()
    {
        string[] pages = LongProof.Whole
            ? [.. content.Clients.SelectMany(content.PagesOf)]
            : [.. content.PagesOf("rufus").Union(content.PagesOfEveryKind())];
        var said = await Check([.. pages, Path.Combine(Path.GetDirectoryName(pages[0]) ?? "", "look.css")]);
        output.WriteLine($"{pages.Length} pages and 1 style checked");
        Assert.Equal("", said);
    }

    [Fact]
    public async Task A_planted_error_is_noticed()
    {
        var broken = Path.Combine(Path.GetTempPath(), $"gradus-{Environment.ProcessId}-broken.html");
        var page = await File.ReadAllTextAsync(
            content.PagesOf(content.Clients[0]).First(),
            TestContext.Current.CancellationToken
        );
        await File.WriteAllTextAsync(
            broken,
            page.Replace("</main>", "<ol><p>x</p></ol></main>", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );
        try
        {
            Assert.Contains("not allowed as child of element", await Check([broken]), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(broken);
        }
    }

    internal static async Task<string> Check(string[] files)
    {
        var jar = Repository.Path("tests", "Browser", "node_modules", "vnu-jar", "build", "dist", "vnu.jar");
        Assert.True(
            File.Exists(jar),
            "The checker is missing; tests/run fetches it, or: npm ci --ignore-scripts --prefix "
                + $"{Repository.Path("tests", "Browser")}"
        );
        var start = new ProcessStartInfo("java") { RedirectStandardError = true, RedirectStandardOutput = true };
        foreach (var word in (string[])[.. Short, "-jar", jar, "--errors-only", "--also-check-css", .. files])
            start.ArgumentList.Add(word);
        using var checker = Process.Start(start) ?? throw new InvalidOperationException("java did not start");
        var said = await checker.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await checker.WaitForExitAsync(TestContext.Current.CancellationToken);
        return said.Trim();
    }
}
