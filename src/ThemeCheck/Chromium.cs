using Microsoft.Playwright;

namespace Gradus.ThemeCheck;

/// <summary>The browser that is the judge.</summary>
internal static class Chromium
{
    private static readonly string?[] Known =
    [
        Environment.GetEnvironmentVariable("GRADUS_CHROMIUM"),
        "/usr/bin/chromium-headless-shell",
        "/usr/bin/chromium",
        "/usr/bin/chromium-browser",
        "/usr/bin/google-chrome",
    ];

    /// <exception cref="IOException">There is none.</exception>
    public static string Find() => Find(Known);

    internal static string Find(IEnumerable<string?> known) =>
        known.FirstOrDefault(File.Exists)
        ?? throw new IOException(
            "No Chromium is installed. On Debian: apt-get install chromium; elsewhere set GRADUS_CHROMIUM to it."
        );

    public static Task<IBrowser> Launch(IPlaywright playwright) =>
        playwright.Chromium.LaunchAsync(new() { ExecutablePath = Find(), Args = ["--no-sandbox", "--disable-gpu"] });
}
