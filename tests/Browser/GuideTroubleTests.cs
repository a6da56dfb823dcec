using Microsoft.Playwright;

namespace Gradus.Tests.Browser;

/// <summary>The guided session where something is missing or goes wrong: it stays right, or says plainly what is not
/// there.</summary>
public sealed class GuideTroubleTests(PublishedContent content)
{
    [Fact]
    public async Task A_browser_that_has_nothing_says_so_and_leads_all_the_same()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-5.html", more: GuidedPage.Bare);
        await page.Lead();
        await page.Answer();
        Assert.Contains(
            "This browser cannot keep the screen awake.",
            await page.Dialog.InnerTextAsync(),
            StringComparison.Ordinal
        );
        Assert.Equal(0, await page.Dialog.Locator("[data-set='speech']:visible, [data-set='vibration']:visible").CountAsync());
        await page.Dialog.Locator("[data-panel='ready'] summary").ClickAsync();
        await page.Press("test-sound");
        Assert.Equal("There is no sound in this browser. Watch the page.", await page.Text("sound"));
        await page.Press("start");
        await page.PlayOn(20);
        Assert.Equal("Nothing can be saved here. Please note it on paper.", await page.Text("kept"));
        await page.Dialog.Locator("[data-log='message']:visible").ClickAsync();
        Assert.Matches(
            "^Mon 14 Dec, week 1, Ankles and hips, short: ([0-9]+) of \\1 steps\\. Effort –, pain –\\.\n"
                + "gradus 2026-12-14 [0-9:]{5}; edition [0-9]+; course [0-9a-f]{16}; week 1; session 5; kind short; done; "
                + "steps \\1 of \\1; minutes [0-9.]+; pain-before 0; sets .*; sum [0-9a-f]{8}$",
            await page.Dialog.Locator("[data-log-text]").InputValueAsync()
        );
        Assert.Empty(page.Troubles);
    }

    [Fact]
    public async Task A_device_that_slept_is_paused_where_it_was_and_a_clock_that_is_set_back_moves_nothing()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        await page.PutForward(600);
        Assert.Equal("paused 1 79", await page.Stand());
        Assert.Equal("Paused: your phone went to sleep.", await page.Text("said"));
        await page.Page.EvaluateAsync("window.putDay(-3600 * 1000)");
        await page.Press("go");
        await page.PutForward(10);
        Assert.Equal("running 1 69", await page.Stand());
        Assert.Matches("^Ends at 09:\\d\\d$", await page.Text("ends"));
    }

    /// <summary>The clock of the sound goes 100 ms wrong: the sounds are planned anew at the next step, and not again at the one
    /// after.</summary>
    [Fact]
    public async Task Sounds_that_have_drifted_are_planned_again()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(
            content,
            context,
            "session-1.html",
            more: """
            {
              Object.defineProperty(BaseAudioContext.prototype, 'currentTime', { get() { return performance.now() / 1000 + (window.drift || 0); } });
              delete AudioContext.prototype.getOutputTimestamp;
              const plan = AudioNode.prototype.connect;
              window.planned = 0;
              AudioNode.prototype.connect = function (to, ...more) { if (to instanceof AudioDestinationNode) window.planned++; return plan.call(this, to, ...more); };
            }
            """
        );
        await page.Begin();
        await page.Page.WaitForFunctionAsync("() => gradus.sound.isRunning()");
        await page.PutForward(6);
        var before = await page.Page.EvaluateAsync<int>("window.planned");
        await page.Page.EvaluateAsync("window.drift = 0.1");
        await page.PutForward(80);
        Assert.Equal(before + 1, await page.Page.EvaluateAsync<int>("window.planned"));
        await page.PutForward(10);
        Assert.StartsWith("running 3", await page.Stand(), StringComparison.Ordinal);
        Assert.Equal(before + 1, await page.Page.EvaluateAsync<int>("window.planned"));
    }

    [Fact]
    public async Task A_hidden_page_goes_on_with_a_tick_of_its_own()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(
            content,
            context,
            "session-1.html",
            more: "{ const Real = Worker; window.workers = 0; window.Worker = class extends Real { constructor(...of) { "
                + "super(...of); window.workers++; } }; }"
        );
        await page.Begin();
        await page.Page.EvaluateAsync(
            "Object.defineProperty(document, 'hidden', { value: true, configurable: true }); window.setInterval(() => 0, "
                + "1); for (let i = 0; i < 9999; i++) window.clearInterval(i); document.dispatchEvent(new "
                + "Event('visibilitychange'))"
        );
        await page.PutForward(6);
        await page.Page.WaitForFunctionAsync(
            "() => Object.values(gradus.guides).find(one => one.dialog.open).guide.state.at === 1"
        );
        for (var times = 0; times < 8; times++)
            await page.PutForward(7);
        Assert.Equal(1, await page.Page.EvaluateAsync<int>("window.workers"));
        Assert.Equal("running 1 23", await page.Stand());
        Assert.Empty(page.Troubles);
    }

    [Fact]
    public async Task A_second_click_on_start_does_nothing()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Lead();
        await page.Answer();
        await page.Page.EvaluateAsync(
            "const start = document.querySelector('dialog[open] [data-act=\"start\"]'); start.click(); start.click(); "
                + "start.click();"
        );
        await page.Press("in-place");
        Assert.Equal("running 0 5", await page.Stand());
    }

    [Fact]
    public async Task Past_its_last_day_it_does_not_start()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "session-1.html#lead", "2027-01-18T10:00:00");
        Assert.Equal(0, await page.Page.Locator("[data-lead-in]:visible").CountAsync());
        Assert.Equal(0, await page.Dialog.CountAsync());
        Assert.StartsWith(
            "These pages were good until Sunday 17 January 2027.",
            await page.Page.Locator("[data-lead-past]").InnerTextAsync(),
            StringComparison.Ordinal
        );
        var last = await GuidedPage.Open(content, context, "session-1.html", "2027-01-17T10:00:00");
        Assert.Equal(1, await last.Page.Locator("[data-lead-in]:visible").CountAsync());
    }

    [Fact]
    public async Task In_the_one_file_another_session_is_led_from_its_own_place()
    {
        await using var context = await GuidedPage.ContextAsync(content);
        var page = await GuidedPage.Open(content, context, "all-pages.html#session-1");
        await page.Page.Locator("#session-1 [data-lead-in]").ClickAsync();
        await page.Answer(worse: "yes");
        await page.Dialog.Locator("[data-take]:visible").ClickAsync();
        Assert.Equal(0, await page.Dialog.CountAsync());
        await page.Page.Locator("#session-5 [data-lead-in]").ClickAsync();
        await page.Press("start");
        await page.Press("in-place");
        Assert.Equal("5", await page.Dialog.GetAttributeAsync("data-guide"));
        Assert.StartsWith("running 0", await page.Stand(), StringComparison.Ordinal);
        Assert.Empty(page.Troubles);
    }

    [Fact]
    public async Task A_log_is_saved_opened_in_another_browser_and_wiped()
    {
        await using var first = await GuidedPage.ContextAsync(content, new() { AcceptDownloads = true });
        var page = await GuidedPage.Open(content, first, "session-5.html");
        await page.Begin();
        await page.PlayOn(20);
        await page.Dialog.Locator("[data-form='log'] [data-effort]").SelectOptionAsync("6");
        await page.Dialog.Locator("[data-note]").FillAsync("=2+2");
        await page.Dialog.Locator("[data-form='log'] [type='submit']").ClickAsync();
        var download = await page.Page.RunAndWaitForDownloadAsync(() =>
            page.Dialog.Locator("[data-log='save']:visible").ClickAsync()
        );
        Assert.Equal("log-2026-12-14.csv", download.SuggestedFilename);
        var path = await download.PathAsync();
        Assert.Matches(
            "2026-12-14,[0-9:]{5},5,2,short,[0-9]+,[0-9a-f]{16},,,,,,([0-9]+),\\1,[0-9.]+,6,0,,,,,,,,,," + "\"'=2\\+2\"\r\n",
            await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)
        );

        await using var second = await GuidedPage.ContextAsync(content);
        var weeks = await GuidedPage.Open(content, second, "weeks.html");
        await weeks.Page.SetInputFilesAsync("[data-log='open']", path);
        await Assertions.Expect(weeks.Page.Locator("[data-log-said]")).ToHaveTextAsync("The log is open.");
        await weeks.Page.SetInputFilesAsync("[data-log='open']", path);
        await Assertions.Expect(weeks.Page.Locator("[data-log-count]")).ToHaveTextAsync("1");
        Assert.Equal("=2+2", await weeks.Page.EvaluateAsync<string>("gradus.log.rows()[0].note"));
        await weeks.Page.SetInputFilesAsync(
            "[data-log='open']",
            new FilePayload
            {
                Name = "x.csv",
                MimeType = "text/csv",
                Buffer = "a,b"u8.ToArray(),
            }
        );
        await Assertions
            .Expect(weeks.Page.Locator("[data-log-said]"))
            .ToHaveTextAsync("This is no log of these pages. Nothing was changed.");
        await weeks.Page.ClickAsync("[data-log='wipe']");
        await weeks.Page.ClickAsync("[data-log='wipe-really']");
        Assert.Equal(0, await weeks.Page.EvaluateAsync<int>("localStorage.length"));
    }

    /// <summary>A phone of 60 mm with digits of 20 mm: at two metres that is more than half a degree.</summary>
    [Theory]
    [InlineData(390, 844)]
    [InlineData(320, 568)]
    [InlineData(844, 390)]
    [InlineData(1280, 800)]
    public async Task The_digits_take_a_quarter_of_the_shorter_side_of_the_screen_or_more(int width, int height)
    {
        await using var context = await GuidedPage.ContextAsync(
            content,
            new()
            {
                ViewportSize = new() { Width = width, Height = height },
            }
        );
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        var size = await page
            .Dialog.Locator(".digits")
            .EvaluateAsync<double>("digits => parseFloat(getComputedStyle(digits).fontSize) * 0.7");
        Assert.InRange(size / Math.Min(width, height), 0.22, 1);
    }

    [Fact]
    public async Task With_reduced_motion_nothing_moves()
    {
        await using var context = await GuidedPage.ContextAsync(content, new() { ReducedMotion = ReducedMotion.Reduce });
        var page = await GuidedPage.Open(content, context, "session-1.html");
        await page.Begin();
        await page.PutForward(6);
        Assert.Equal("breathe in", await page.Text("breath-words"));
        Assert.Equal("[]", await page.Page.EvaluateAsync<string>("JSON.stringify(document.getAnimations().map(String))"));
        await page.PutForward(5);
        Assert.Equal("[]", await page.Page.EvaluateAsync<string>("JSON.stringify(document.getAnimations().map(String))"));
    }
}
