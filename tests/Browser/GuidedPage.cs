using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>A page of Rufus on which somebody is led through a session: on Monday 14 December 2026 at ten, in the second week of
/// his programme. Its clocks stand still but for what they are put forward, so a busy machine changes nothing.</summary>
internal sealed class GuidedPage
{
    private const string Clocks = """
        {
          const Day = Date;
          let day = new Day('NOW').getTime();
          window.Date = class extends Day { constructor(...of) { if (of.length > 0) super(...of); else super(day); } static now() { return day; } };
          let now = Math.ceil(performance.now());
          Performance.prototype.now = () => now;
          window.putForward = ms => { now += ms; day += ms; };
          window.putDay = ms => { day += ms; };
          window.heard = 0;
          window.hearing = () => new MutationObserver(seen => { if (seen.some(one => (one.target.closest ?? one.target.parentElement.closest).call(one.target.closest ? one.target : one.target.parentElement, '[role="status"]') !== null)) window.heard++; }).observe(document.querySelector('dialog[open] [data-panel="play"]'), { childList: true, characterData: true, subtree: true });
        }
        """;

    /// <summary>A browser that has nothing: it keeps nothing, makes no sound, says nothing, does not shake and does not stay
    /// awake.</summary>
    public const string Bare = """
        Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });
        for (const name of ['AudioContext', 'webkitAudioContext', 'speechSynthesis', 'Worker']) Object.defineProperty(window, name, { value: undefined });
        delete Navigator.prototype.vibrate;
        delete Navigator.prototype.wakeLock;
        """;

    private const string ChooseWeek = """
        () => {
          const now = window.gradus?.weekNow?.();
          return now?.why === 'late' && gradus.log.choose(now.most, gradus.today());
        }
        """;

    private readonly List<string> troubles = [];

    private GuidedPage(IPage page) => Page = page;

    public IPage Page { get; }

    /// <summary>What the console said, and what went wrong.</summary>
    public IReadOnlyList<string> Troubles => troubles;

    public ILocator Dialog => Page.Locator("dialog[open]");

    /// <summary>The clocks of a page that is opened then, to be put forward.</summary>
    public static string ClocksFrom(string now) => Clocks.Replace("NOW", now, StringComparison.Ordinal);

    public static Task<IBrowserContext> ContextAsync(PublishedContent content, BrowserNewContextOptions? options = null) =>
        content.Browser.NewContextAsync(new(options ?? new()) { Offline = true });

    /// <param name="context">Two pages of one context have the same store.</param>
    /// <param name="more">What is done to the browser first.</param>
    public static Task<GuidedPage> Open(
        PublishedContent content,
        IBrowserContext context,
        string file,
        string now = "2026-12-14T10:00:00",
        string more = ""
    ) =>
        OpenAt(
            context,
            content.PagesOf("rufus").First(p => Path.GetFileName(p) == Path.GetFileName(file.Split('#')[0]))
                + (file.Contains('#', StringComparison.Ordinal) ? "#" + file.Split('#')[1] : ""),
            now,
            more
        );

    /// <summary>A page of anybody.</summary>
    /// <param name="path">Of its file, with the place in it where there is one.</param>
    public static async Task<GuidedPage> OpenAt(IBrowserContext context, string path, string now, string more = "")
    {
        var guided = new GuidedPage(await context.NewPageAsync());
        guided.Page.Console += (_, message) => guided.troubles.Add($"console {message.Type}: {message.Text}");
        guided.Page.PageError += (_, error) => guided.troubles.Add($"error: {error}");
        await guided.Page.AddInitScriptAsync(ClocksFrom(now) + more);
        await guided.Page.GotoAsync("file://" + path);

        await guided.SayWeek();
        return guided;
    }

    /// <summary>Who has no log is asked for the week, and says that it is the calendar's.</summary>
    private async Task SayWeek()
    {
        if (await Page.EvaluateAsync<bool>(ChooseWeek))
            await Page.ReloadAsync();
    }

    /// <summary>The same page as somebody sees it who was never here: opening another browser for that takes far
    /// longer.</summary>
    public async Task Afresh()
    {
        await Page.EvaluateAsync("localStorage.clear()");
        await Page.EvaluateAsync<bool>(ChooseWeek);
        await Page.ReloadAsync();
        await SayWeek();
    }

    public Task Lead() => Page.Locator("[data-lead-in]:visible").First.ClickAsync();

    public Task Press(string act) => Dialog.Locator($"[data-act='{act}']:visible").First.ClickAsync();

    /// <summary>Tab until the keyboard is there; gives how often.</summary>
    public async Task<int> TabTo(string selector)
    {
        for (var presses = 0; presses < 80; presses++)
        {
            if (await Page.EvaluateAsync<bool>("selector => document.activeElement.matches(selector)", selector))
                return presses;
            await Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"No Tab leads to '{selector}'.");
        return 0;
    }

    public Task<string> Heading() => Dialog.Locator("[data-panel]:visible h2").First.InnerTextAsync();

    public Task<string> Text(string part) => Dialog.Locator($"[data-fill='{part}']:visible").First.InnerTextAsync();

    /// <summary>Whether anything is other than usual, and what; where nothing is, only what is left from last time.</summary>
    public async Task Answer(
        string pain = "0",
        string worse = "no",
        string ill = "no",
        string still = "yes",
        string where = "knee",
        string side = "left"
    )
    {
        var isAny = pain != "0" || worse != "no" || ill != "no";
        await Press(isAny ? "some" : "none");
        var form = Dialog.Locator("[data-form='questions']");
        if (!await form.IsVisibleAsync())
            return;
        if (isAny)
        {
            await form.Locator($"[name='pain'][value='{(pain == "0" ? "no" : "yes")}']").CheckAsync();
            if (pain != "0")
            {
                var now = form.Locator("[data-pain-where]");
                await now.Locator("[data-level]").SelectOptionAsync(pain);
                await now.Locator("[data-where]").SelectOptionAsync(where);
                await now.Locator("[data-side]").SelectOptionAsync(side);
            }

            await form.Locator($"[name='worse'][value='{worse}']").CheckAsync();
            await form.Locator($"[name='ill'][value='{ill}']").CheckAsync();
        }

        foreach (var question in await form.Locator("[data-still]:visible").AllAsync())
            await question.Locator($"[value='{still}']").CheckAsync();
        await form.Locator("[type='submit']").ClickAsync();
    }

    /// <summary>What is asked where it hurts; empty for what nobody says.</summary>
    public async Task Say(string level, string feel, string where = "knee", string side = "left")
    {
        var form = Dialog.Locator("[data-form='hurts']");
        await form.Locator("[data-level]").SelectOptionAsync(level);
        await form.Locator("[data-where]").SelectOptionAsync(where);
        await form.Locator("[data-side]").SelectOptionAsync(side);
        if (feel.Length > 0)
            await form.Locator($"[name='feel'][value='{feel}']").CheckAsync();
    }

    /// <summary>To the first second of its first step.</summary>
    public async Task Begin()
    {
        await Start();
        await Press("in-place");
    }

    /// <summary>Nothing hurts, nothing is new: to where its first step is waited for. For tests that begin there: each button is
    /// pressed by the page itself, if it is there to be pressed, and the last one by hand, without which no sound would be
    /// allowed.</summary>
    public async Task Start()
    {
        await Page.EvaluateAsync(
            """
            () => {
              const press = (where, selector) => {
                const found = [...where.querySelectorAll(selector)].find(one => one.checkVisibility() && !one.disabled);
                if (!found) throw new Error(`Nothing to press: ${selector}`);
                found.click();
              };
              const within = selector => press(document.querySelector('dialog[open]'), selector);
              press(document, '[data-lead-in]');
              within('[data-act="none"]');
              const stills = [...document.querySelectorAll('dialog[open] [data-still]')].filter(one => one.checkVisibility());
              for (const still of stills) press(still, '[value="yes"]');
              if (stills.length > 0) within('[data-form="questions"] [type="submit"]');
            }
            """
        );
        await Press("start");
    }

    /// <summary>"running 1 79": how it stands, at which step, and the whole seconds that are left of it.</summary>
    public Task<string> Stand() =>
        Page.EvaluateAsync<string>(
            "(() => { const guide = Object.values(gradus.guides).find(one => one.dialog.open)?.guide; return guide ? "
                + "`${guide.state.phase} ${guide.state.at} ${Math.ceil(guide.leftNow() / 1000)}` : 'none'; })()"
        );

    /// <summary>Puts the clocks forward, and lets the page look as it does when it comes back into sight; that it looks by itself
    /// in time is measured by <see cref="GuideTimeTests"/>.</summary>
    public Task PutForward(int seconds) =>
        Page.EvaluateAsync(
            "ms => { window.putForward(ms); document.dispatchEvent(new Event('visibilitychange')); }",
            seconds * 1000
        );

    /// <summary>On to the end, a few seconds at a time, waiting for nobody.</summary>
    public async Task PlayOn(int seconds = 9) =>
        Assert.True(
            await Page.EvaluateAsync<bool>(
                """
                ms => {
                  const { dialog, guide } = Object.values(gradus.guides).find(one => one.dialog.open);
                  for (let times = 0; times < 600; times++) {
                    if (['done', 'ended'].includes(guide.state.phase)) return true;
                    if (guide.state.phase === 'waiting') [...dialog.querySelectorAll('[data-act="in-place"]')].find(one => one.checkVisibility()).click();
                    window.putForward(ms);
                    document.dispatchEvent(new Event('visibilitychange'));
                  }
                  return false;
                }
                """,
                seconds * 1000
            ),
            "It never ends."
        );
}
