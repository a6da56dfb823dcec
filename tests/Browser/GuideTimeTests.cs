using Gradus.Tests.Benchmarks;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>How late each second of a guided session is seen and heard, in a real browser and in real time. Measured alone: what
/// else the machine does would be measured with it.</summary>
[Trait("Alone", "yes")]
public sealed class GuideTimeTests(PublishedContent content, ITestOutputHelper output)
{
    /// <summary>Milliseconds from the moment that was meant.</summary>
    private const double Latest = 50;

    /// <summary>To be seen by then is asked for under <c>--long</c>, on a machine that does nothing else. A short run may share
    /// its processor: it asks for less, up to three times, and still sees a clock that is counted in place of read.</summary>
    private static readonly double LatestSeen = LongProof.Whole ? Latest : 3 * Latest;

    private static readonly int Cues = LongProof.Cases(60);

    /// <param name="Slower">How many times slower the processor is made.</param>
    private sealed record Look(int Slower, bool Hidden);

    private sealed record Asked(string Chromium, string Page, int Cues, Look[] Looks, bool Planted);

    private sealed record Timed(string Audio, double[] Shown, double[] Heard, bool WasHidden);

    /// <summary>In one session, one after the other.</summary>
    private static readonly Look[] Looks = [new(1, false), new(6, false), new(1, true)];

    [Fact]
    public async Task A_cue_a_second_is_seen_and_heard_in_its_moment()
    {
        var timed = await Time(Cues, planted: false, Looks);
        for (var again = LongProof.Whole ? 0 : 2; again > 0 && IsDisturbed(timed); again--)
        {
            Say("disturbed, and measured again", timed);
            timed = await Time(Cues, planted: false, Looks);
        }

        Say($"{Cues} cues in {Cues} s", timed);
        Assert.Equal(Looks.Select(l => l.Hidden), timed.Select(t => t.WasHidden));
        Assert.All(timed, t => Assert.Equal("running", t.Audio));
        Assert.All(timed.SelectMany(t => t.Heard), late => Assert.InRange(late, 0, Latest));
        Assert.All(timed.Where(t => !t.WasHidden).SelectMany(t => t.Shown), late => Assert.InRange(late, 0, LatestSeen));
    }

    [Fact]
    public async Task A_page_that_looks_seldom_and_sounds_late_would_be_noticed()
    {
        var timed = (await Time(3, planted: true, Looks[0]))[0];
        output.WriteLine($"seen at worst {timed.Shown.Max():0} ms late, heard at least {timed.Heard.Min():0} ms off");
        Assert.True(timed.Shown.Max() > LatestSeen);
        Assert.All(timed.Heard, late => Assert.InRange(late, Latest, 200));
    }

    /// <summary>Twenty minutes of a step each second, looked at by chance every 20 to 420 ms: each begins no later than the look
    /// after it, and so does the end.</summary>
    [Fact]
    public async Task After_twenty_minutes_nothing_has_drifted()
    {
        const int steps = 1200;
        var draws = new Draws(20261207);
        var ticks = new List<int> { 0 };
        while (ticks[^1] < (steps + 1) * 1000)
            ticks.Add(ticks[^1] + 20 + draws.Below(400));
        var stand = (
            await GuideScripts.Ask<GuideScripts.Stand>([
                new GuideScripts.Led(
                    [.. Enumerable.Range(0, steps).Select(_ => new GuideScripts.Piece("hold", "a", "", 1, []))],
                    false,
                    null,
                    [.. ticks],
                    [new(0, "start")]
                ),
            ])
        )[0];
        var told = stand
            .Told.Select(t => t.Split(' '))
            .Where(t => t[1] is "step" or "end")
            .Select(t => (Told: Number(t[0]), Due: (Number(t[2]) + (t[1] == "end" ? 1 : 0)) * 1000))
            .ToArray();
        var late = told.Select(t => t.Told - t.Due).ToArray();
        output.WriteLine(
            $"{told.Length} moments in {steps} s: told {late.Min()} to {late.Max()} ms after they were due; the last "
                + $"{late[^1]} ms"
        );
        Assert.Equal(steps + 1, told.Length);
        Assert.All(told, t => Assert.Equal(ticks.First(tick => tick >= t.Due), t.Told));
    }

    private static bool IsDisturbed(Timed[] timed) =>
        timed.Any(t => t.Heard.Max() > Latest || (!t.WasHidden && t.Shown.Max() > LatestSeen));

    private void Say(string what, Timed[] timed)
    {
        foreach (var (look, t) in Looks.Zip(timed))
            output.WriteLine(
                $"{what}, processor slowed {look.Slower} times, {(look.Hidden ? "hidden" : "visible")}, sound {t.Audio}: seen at "
                    + $"worst {t.Shown.Max():0.0} ms late, on average {t.Shown.Average():0.0}; heard at worst "
                    + $"{t.Heard.Max():0.0} ms off, on average {t.Heard.Average():0.0}"
            );
    }

    private Task<Timed[]> Time(int cues, bool planted, params Look[] looks) =>
        Node.Ask<Asked, Timed[]>(
            "time-cues.mjs",
            new(
                PublishedContent.Chromium(),
                content.PagesOf("rufus").First(p => Path.GetFileName(p) == "session-1.html"),
                cues,
                looks,
                planted
            )
        );

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
