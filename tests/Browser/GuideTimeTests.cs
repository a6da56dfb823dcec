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

    private sealed record Asked(string Chromium, string Page, int Cues, int Slower, bool Hidden, bool Planted);

    private sealed record Timed(string Audio, double[] Shown, double[] Heard, bool WasHidden);

    [Theory]
    [InlineData(1, false)]
    [InlineData(6, false)]
    [InlineData(1, true)]
    public async Task A_cue_a_second_is_seen_and_heard_in_its_moment(int slower, bool hidden)
    {
        var timed = await Time(Cues, slower, hidden, planted: false);
        for (
            var again = LongProof.Whole ? 0 : 2;
            again > 0 && (timed.Heard.Max() > Latest || timed.Shown.Max() > LatestSeen);
            again--
        )
        {
            output.WriteLine(
                $"disturbed: seen at worst {timed.Shown.Max():0.0} ms late, heard {timed.Heard.Max():0.0} ms off; measured again"
            );
            timed = await Time(Cues, slower, hidden, planted: false);
        }

        output.WriteLine(
            $"{Cues} cues in {Cues} s, processor slowed {slower} times, {(hidden ? "hidden" : "visible")}, sound "
                + $"{timed.Audio}: seen at worst {timed.Shown.Max():0.0} ms late, on average {timed.Shown.Average():0.0}; "
                + $"heard at worst {timed.Heard.Max():0.0} ms off, on average {timed.Heard.Average():0.0}"
        );
        Assert.Equal(hidden, timed.WasHidden);
        Assert.Equal("running", timed.Audio);
        Assert.All(timed.Heard, late => Assert.InRange(late, 0, Latest));
        if (!hidden)
            Assert.All(timed.Shown, late => Assert.InRange(late, 0, LatestSeen));
    }

    [Fact]
    public async Task A_page_that_looks_seldom_and_sounds_late_would_be_noticed()
    {
        var timed = await Time(5, slower: 1, hidden: false, planted: true);
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

    private Task<Timed> Time(int cues, int slower, bool hidden, bool planted) =>
        Node.Ask<Asked, Timed>(
            "time-cues.mjs",
            new(
                PublishedContent.Chromium(),
                content.PagesOf("rufus").First(p => Path.GetFileName(p) == "session-1.html"),
                cues,
                slower,
                hidden,
                planted
            )
        );

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
