using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Browser;

/// <summary>Whole guided sessions in Firefox over file://, in a folder and in the one file that stands at its top,
/// alone.</summary>
public sealed class GuideInFirefoxTests(LedInFirefox led, ITestOutputHelper output) : IClassFixture<LedInFirefox>
{
    public static TheoryData<string> Slips => [.. LedInFirefox.Slips.Select(s => s.Name)];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task It_leads_from_the_cautions_to_the_log_and_asks_for_nothing(bool oneFile)
    {
        foreach (var (playing, seen) in await led.As(oneFile))
        {
            Assert.Empty(Faults(playing, seen, oneFile));
            var loads = seen
                .Asked.Select(a => a.StartsWith("data:", StringComparison.Ordinal) ? "data:" : Path.GetFileName(a))
                .Distinct();
            output.WriteLine(
                $"{playing}: {seen.Played.Drawn.Length} steps, {seen.Played.Drawn.Sum(d => d.Lasts)} s; "
                    + $"loads {string.Join(", ", loads)}"
            );
        }
    }

    /// <summary>Gradus reads what Firefox wrote, whole, the file and the message alike.</summary>
    [Fact]
    public async Task What_it_writes_down_comes_home()
    {
        foreach (var (playing, seen) in await led.As(oneFile: false))
        {
            var (file, message) = (Read(seen.File), Read(seen.Message));
            Assert.Equal((LogForm.File, LogForm.Message), (file.Form, message.Form));
            Assert.Empty(file.Remarks.Concat(message.Remarks));
            var entry = Assert.Single(file.Entries, e => e.Session == playing.Session.Number);
            Assert.Equal(new LogOutcome.Done(), entry.Outcome);
            Assert.Equal(entry.StepsPlanned, entry.StepsDone);
            Assert.Equal(16, entry.Course?.Length);
            var told = Assert.Single(message.Entries, e => e.Session == playing.Session.Number);
            Assert.True(entry.Tells(told with { At = entry.At }));
        }

        static LogReading Read(string text) =>
            LogReader.Read("sent", 0, () => new MemoryStream(System.Text.Encoding.UTF8.GetBytes(text)));
    }

    /// <summary>What the page of a session does besides, or otherwise.</summary>
    [Theory, MemberData(nameof(Slips))]
    public async Task A_fault_is_seen(string name)
    {
        var (playing, seen) = await led.With(name);
        var faults = Faults(playing, seen, oneFile: false);
        output.WriteLine(string.Join('\n', faults.Take(3)));
        Assert.Contains(faults, f => f.Contains(LedInFirefox.Slips.Single(s => s.Name == name).Found, StringComparison.Ordinal));
    }

    private static List<string> Faults(PlayedSession playing, LedInFirefox.Seen seen, bool oneFile) =>
        [
            .. seen.Played.Against(playing, seen.Lists.Single(l => l.Weeks.Split(' ').Contains($"{playing.Week}")).Steps),
            .. Differences
                .Between(seen.Played.Log, [.. seen.Kept.Where(k => k.Session == playing.Session.Number)])
                .Select(d => $"kept: {d}"),
            .. seen.Said.Select(s => $"said {s}"),
            .. seen
                .Asked.Where(url => !url.StartsWith("data:", StringComparison.Ordinal) && !IsOwn(url, seen.Address, oneFile))
                .Select(url => $"asked for {url}"),
        ];

    private static bool IsOwn(string url, string page, bool oneFile) =>
        oneFile ? url == page : url.StartsWith(page[..(page.LastIndexOf('/') + 1)], StringComparison.Ordinal);
}
