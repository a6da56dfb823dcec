using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What axe finds in the way of somebody: every rule for WCAG A and AA to 2.2, best practice, and the size of
/// targets.</summary>
internal static class Barriers
{
    private static readonly AxeRunOptions Rules = new()
    {
        RunOnly = new RunOnlyOptions
        {
            Type = "tag",
            Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
        },
        Rules = new() { ["target-size"] = new RuleOptions { Enabled = true } },
        ResultTypes = [ResultType.Violations],
    };

    /// <summary>A line for each; none where nothing is found.</summary>
    public static async Task<string[]> In(IPage page) => Lines(await page.RunAxe(Rules));

    public static async Task<string[]> In(ILocator part) => Lines(await part.RunAxe(Rules));

    /// <summary>Letters as large as somebody may set them, 1 for the size of the theme.</summary>
    public static Task SetText(IPage page, double size) =>
        page.EvaluateAsync(FormattableString.Invariant($"document.documentElement.style.fontSize = '{size * 112.5}%'"));

    private static string[] Lines(AxeResult found) =>
        [.. found.Violations.Select(v => $"axe {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}")];
}
