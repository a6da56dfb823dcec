using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Gradus.ThemeCheck;

/// <summary>What axe finds in the way of somebody: every rule for WCAG A and AA to 2.2, best practice, and the size of
/// targets.</summary>
internal static class Barriers
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    private const string Look = """
        async () => {
          const found = await window.axe.run(document, {
            runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
            rules: { "target-size": { enabled: true } },
            resultTypes: ["violations"],
          });
          return found.violations.map((v) => `axe ${v.id}: ${v.help}: ${v.nodes.slice(0, 3).map((n) => n.html.slice(0, 120)).join(" | ")}`);
        }
        """;

    /// <summary>A line for each; none where nothing is found.</summary>
    public static async Task<string[]> In(IPage page)
    {
        await page.EvaluateAsync(Axe);
        return await page.EvaluateAsync<string[]>(Look);
    }
}
