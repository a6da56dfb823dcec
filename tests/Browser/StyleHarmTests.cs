using System.Text.RegularExpressions;
using Gradus.Tests.Auditing;
using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>A sample of the styles that must be found, seen in a browser: each takes something of the first cautions from a
/// reader.</summary>
public sealed partial class StyleHarmTests(PublishedContent content, ITestOutputHelper output)
{
    /// <summary>What a reader misses of the first cautions, a word for each kind of harm; empty where all is as it should
    /// be. Boxes count, and what is painted where the middle of each line is.</summary>
    private const string Seen = """
        () => {
          const harms = new Set();
          const number = (text) => text.match(/[\d.]+/g)?.map(Number) ?? [];
          const light = ([r, g, b]) => [r, g, b].map((p) => p / 255)
            .map((p) => p <= 0.04045 ? p / 12.92 : ((p + 0.055) / 1.055) ** 2.4)
            .reduce((sum, p, i) => sum + p * [0.2126, 0.7152, 0.0722][i], 0);
          const ground = (e) => {
            for (let at = e; at; at = at.parentElement) {
              const c = number(getComputedStyle(at).backgroundColor);
              if (c.length === 3 || c[3] > 0) return c;
            }
            return [255, 255, 255];
          };
          let below = -Infinity;
          const cautions = [...document.querySelectorAll('.cautions .caution')].slice(0, 2);
          for (const e of cautions.flatMap((c) => [...c.querySelectorAll('h4, p')])) {
            const style = getComputedStyle(e);
            for (const kind of ['::before', '::after']) {
              const said = getComputedStyle(e, kind).content;
              if (!['none', 'normal', '""'].includes(said)) harms.add('words');
            }
            e.scrollIntoView({ block: 'center' });
            const range = document.createRange();
            range.selectNodeContents(e);
            const lines = [...range.getClientRects()];
            if (lines.length === 0) { harms.add('gone'); continue; }
            const size = parseFloat(style.fontSize);
            if (size < 12.8) harms.add('small');
            if (style.direction !== 'ltr' || style.writingMode !== 'horizontal-tb') harms.add('turned');
            let [opacity, turned] = [1, false];
            for (let at = e; at; at = at.parentElement) {
              const own = getComputedStyle(at);
              opacity *= parseFloat(own.opacity);
              turned ||= own.transform !== 'none' || own.rotate !== 'none' || own.scale !== 'none';
              if (own.visibility !== 'visible' || own.filter !== 'none' || own.maskImage !== 'none') harms.add('unseen');
            }
            if (opacity < 1) harms.add('faint');
            if (turned) harms.add('turned');
            const [one, other] = [light(number(style.color)), light(ground(e))];
            const alpha = number(style.color)[3] ?? 1;
            if (alpha < 1 || (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05) < 4.5) harms.add('pale');
            for (const line of lines) {
              if (line.height < 10 || line.width < 2) harms.add('flat');
              if (line.left < -1 || line.right > innerWidth + 1) harms.add('away');
              const at = document.elementFromPoint(Math.min(line.right - 2, line.left + 8), (line.top + line.bottom) / 2);
              if (!at || !(e.contains(at) || at.contains(e))) harms.add('covered');
              else if (at !== e && !e.contains(at)) harms.add('covered');
            }
            const top = lines[0].top + scrollY;
            const line = parseFloat(style.lineHeight) / size;
            if (line < 1) harms.add('flat');
            if (style.columnCount === 'auto' && top < below - 400) harms.add('order');
            below = top;
          }
          return [...harms].join(' ');
        }
        """;

    [GeneratedRegex(@"<link rel=""stylesheet""[^>]*>|<meta http-equiv[^>]*>|<script[^>]*></script>")]
    private static partial Regex Asked();

    [Theory]
    [InlineData("screen", ".cautions { display: none }")]
    [InlineData("screen", ".cautions { opacity: .05 }")]
    [InlineData("screen", ".cautions { mask-image: linear-gradient(transparent, transparent) }")]
    [InlineData("screen", ".top { position: fixed; inset: 0; block-size: auto; background: var(--ground) }")]
    [InlineData(
        "screen",
        ".kind { position: relative } .kind::after { content: \"\"; position: absolute; inset: 0; background: var(--ground) }"
    )]
    [InlineData("screen", ".caution { line-height: 0.1 }")]
    [InlineData("screen", ".caution { height: 1px; overflow: hidden }")]
    [InlineData("screen", ".caution p { white-space: nowrap }")]
    [InlineData("screen", ".caution { clip-path: inset(50%) }")]
    [InlineData("screen", ".cautions { position: fixed; inset: 0 auto auto -9999px }")]
    [InlineData("screen", ".cautions { transform: translateX(-100vw) }")]
    [InlineData("screen", ".cautions { text-indent: -999em }")]
    [InlineData("screen", ".caution { transform: rotate(180deg) }")]
    [InlineData("screen", ".caution { writing-mode: vertical-rl }")]
    [InlineData("screen", ".caution p { direction: rtl }")]
    [InlineData("screen", ".caution p { font-size: calc(1rem - 15px) }")]
    [InlineData("screen", ".caution { font: 0/0 a }")]
    [InlineData("screen", "html { font-size: 40% }")]
    [InlineData("screen", ".caution { scale: 1 0.05 }")]
    [InlineData("screen", ".caution p { color: var(--ground) }")]
    [InlineData("screen", ".kind { --ground: #000; --ink: #111; background: var(--ground); color: var(--ink) }")]
    [InlineData("screen", ":root { --ground: #1b2430 }")]
    [InlineData("screen", ".caution p::after { content: \" Go on all the same.\" }")]
    [InlineData("screen", "@media (max-width: 30rem) { .caution { font-size: 2px } }")]
    [InlineData("screen", "@supports (display: grid) { .cautions { display: none } }")]
    [InlineData("screen", "@layer a { .cautions { display: none } }")]
    [InlineData("screen", ".caution { display: none ! important }")]
    [InlineData("screen", ".caution { d\\69splay: none }")]
    [InlineData("screen", ".caution { color: red; & p { display: none } }")]
    [InlineData("print", "@media print { .caution p { display: none !important } }")]
    [InlineData("print", "@media print { html { font-size: 4pt } }")]
    [InlineData("print", "@media print { .caution p { color: #fff } }")]
    [InlineData("dark", "@media screen and (prefers-color-scheme: dark) { .caution { color: #222 } }")]
    [InlineData("dark", "@media screen and (prefers-color-scheme: dark) { :root { --ink: #333 } }")]
    public async Task A_style_that_is_found_does_harm(string look, string style)
    {
        Assert.NotEmpty(StyleTable.Wrongs([StyleTable.Plain("look.css") + "\n" + style]));
        var harm = await HarmOf(look, style);
        output.WriteLine($"{harm, -24} {style}");
        Assert.NotEqual("", harm);
    }

    [Theory]
    [InlineData("screen")]
    [InlineData("dark")]
    public async Task The_theme_as_it_is_harms_none(string look) => Assert.Equal("", await HarmOf(look, ""));

    /// <summary>Every change that is no fault, seen in the browser too.</summary>
    [Fact]
    public async Task A_change_that_is_not_found_does_no_harm()
    {
        var styles = StyleTable.Read("harmless.txt").Where(r => r.Line.StartsWith("+ ", StringComparison.Ordinal)).ToArray();
        await using var context = await content.Browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 390, Height = 844 },
            }
        );
        var page = await context.NewPageAsync();
        var harmed = new List<string>();
        foreach (var (_, line) in styles)
            if (await HarmOf(page, "screen", line[2..]) is { Length: > 0 } harm)
                harmed.Add($"{harm}: {line}");
        output.WriteLine($"{styles.Length} styles seen.");
        Assert.Empty(harmed);
    }

    private async Task<string> HarmOf(string look, string style)
    {
        await using var context = await content.Browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 390, Height = 844 },
            }
        );
        return await HarmOf(await context.NewPageAsync(), look, style);
    }

    private async Task<string> HarmOf(IPage page, string look, string style)
    {
        var html = await File.ReadAllTextAsync(
            content.PagesOf("rufus").First(p => Path.GetFileName(p) == "session-1.html"),
            TestContext.Current.CancellationToken
        );
        var styles = string.Join('\n', StyleTable.Files.Select(StyleTable.Plain)) + "\n" + style;
        await page.EmulateMediaAsync(
            new()
            {
                Media = look == "print" ? Microsoft.Playwright.Media.Print : Microsoft.Playwright.Media.Screen,
                ColorScheme = look == "dark" ? ColorScheme.Dark : ColorScheme.Light,
            }
        );
        await page.SetContentAsync(
            Asked().Replace(html, "").Replace("</head>", $"<style>{styles}</style></head>", StringComparison.Ordinal)
        );
        return await page.EvaluateAsync<string>(Seen);
    }
}
