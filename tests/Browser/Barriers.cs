using Deque.AxeCore.Commons;
using Gradus.Tests.House;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>What axe finds in the way of somebody: every rule for WCAG A and AA to 2.2, best practice, and the size of
/// targets.</summary>
internal static class Barriers
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    /// <summary>A page of ours has no frames, so axe looks once, where it stands.</summary>
    private const string Look = """
        async (part, rules) => {
          const all = { runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }, rules: { 'target-size': { enabled: true } } };
          const found = await window.axe.run(part, { ...(rules.length > 0 ? { runOnly: rules } : all), resultTypes: ['violations'] });
          return found.violations.map(v => `axe ${v.id}: ${v.help}: ${v.nodes.map(n => n.html).join(' | ')}`);
        }
        """;

    /// <summary>The rules whose answer can be another on another screen or in other colours.</summary>
    private static readonly string[] OfTheLook =
    [
        "color-contrast",
        "link-in-text-block",
        "scrollable-region-focusable",
        "target-size",
    ];

    /// <summary>A line for each; none where nothing is found.</summary>
    public static Task<string[]> In(IPage page) => In(page.Locator(":root"));

    public static Task<string[]> In(ILocator part) => In(part, []);

    /// <summary>On a page that was judged by every rule in another look: in <c>tests/run</c> by those that the look can
    /// change.</summary>
    public static Task<string[]> InAnotherLook(IPage page) => In(page.Locator(":root"), LongProof.Whole ? [] : OfTheLook);

    private static async Task<string[]> In(ILocator part, string[] rules)
    {
        if (!await part.Page.EvaluateAsync<bool>("'axe' in window"))
            await part.Page.EvaluateAsync(Axe);
        return await part.EvaluateAsync<string[]>(Look, rules);
    }

    /// <summary>Letters as large as somebody may set them, 1 for the size of the theme.</summary>
    public static Task SetText(IPage page, double size) =>
        page.EvaluateAsync(FormattableString.Invariant($"document.documentElement.style.fontSize = '{size * 112.5}%'"));
}
