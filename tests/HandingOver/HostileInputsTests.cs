using System.Diagnostics;
using System.Globalization;
using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Media;
using Gradus.Reading;
using Gradus.Tests.House;
using Gradus.Tests.Media;
using Gradus.Tests.Reading.Logs;

namespace Gradus.Tests.HandingOver;

/// <summary>Damaged and hostile inputs of every kind that is read from outside: the practice, what comes back, what is locked or
/// published, pictures. Each is read to its end or refused in a sentence, none crashes, and none takes more than a second or 300
/// MB.</summary>
[Trait("Slow", "yes")]
public sealed class HostileInputsTests : IDisposable
{
    private const long MostBytes = 300L * 1024 * 1024;

    private static readonly TimeSpan MostTime = TimeSpan.FromSeconds(1);

    private static readonly string[] Paths = [.. LittlePractice.Golden.Files.Select(f => f.Key)];

    private static readonly Passphrase Words = Passphrase.Typed("abandon ability able about above absence");

    private readonly ITestOutputHelper output;
    private readonly TemporaryFolder folder = new(inMemory: true);
    private readonly (string Name, int Whole, byte[][] Seeds, Func<byte[], bool> Read)[] kinds;

    public HostileInputsTests(ITestOutputHelper output)
    {
        this.output = output;
        var page = PublishedPage();
        var locked = LockedText.Lock(page[..2_000], Words);
        var key = LockedText.KeyOf(Words, LockedText.Read(locked).Salt);
        kinds =
        [
            ("practice", 2_000, [.. LittlePractice.Golden.Files.Select(f => f.Value)], ReadPractice),
            (
                "log",
                52_000,
                [
                    Bytes(LogFormatPageTests.Block("csv log") + "\n"),
                    Bytes(LogFormatPageTests.Block("text message") + "\n"),
                    Bytes(LogFormatPageTests.Block("text before") + "\n"),
                ],
                ReadLog
            ),
            ("locked", 50_000, [Bytes(locked)], bytes =>
                Refuses(() => LockedText.Open(LockedText.Read(Encoding.UTF8.GetString(bytes)), key))
            ),
            (
                "locked page",
                16_000,
                [Bytes($"<p>x</p><script type=\"text/plain\" id=\"locked\">\n{locked}\n</script>")],
                ReadLocked
            ),
            ("zip", 20_000, [SiteZip.BytesOf(ExampleSite.Rufus, SiteFile.AllOf(ExampleSite.Edition("first")))], ReadZip),
            ("page", 30_000, [Bytes(PublishedPage())], bytes => PageTree.Of(Encoding.UTF8.GetString(bytes)).IsFlawless),
            (
                "picture",
                30_000,
                [.. ((string[])["jpeg", "png", "webp"]).Select(format => MadePicture.Quarters(24, 16, format))],
                ReadPicture
            ),
        ];
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Whatever_comes_in_is_read_to_its_end_or_refused()
    {
        Assert.Equal(200_000, kinds.Sum(k => k.Whole));
        var chance = new Chance(20261130);
        foreach (var (name, whole, seeds, read) in kinds)
        {
            var (taken, slowest, largest, cases) = (0, TimeSpan.Zero, 0L, LongProof.Cases(whole));
            // What is warmed up by the first is not counted as its time.
            foreach (var seed in seeds)
                Assert.True(read(seed) || name is "practice", $"{name} as it should be is not read.");
            for (var n = 0; n < cases; n++)
            {
                var input = Input(chance.Of(seeds), chance);
                var (watch, before) = (Stopwatch.StartNew(), GC.GetAllocatedBytesForCurrentThread());
                taken += read(input) ? 1 : 0;
                var (time, bytes) = (watch.Elapsed, GC.GetAllocatedBytesForCurrentThread() - before);
                // Where something else held the machine up meanwhile, the same is fast the next time.
                if (time > MostTime)
                {
                    watch.Restart();
                    read(input);
                    time = watch.Elapsed;
                }

                (slowest, largest) = (time > slowest ? time : slowest, Math.Max(bytes, largest));
            }

            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{name, -12} {cases, 7} inputs, {taken, 6} read as they are, "
                        + $"slowest {slowest.TotalMilliseconds:0} ms, most {largest / 1e6:0.0} MB"
                )
            );
            Assert.True(slowest < MostTime, $"{name}: one took {slowest}.");
            Assert.True(largest < MostBytes, $"{name}: one took {largest} bytes.");
            Assert.InRange(taken, 0, cases - 1);
        }
    }

    /// <summary>Small accidents, something long in the middle, or another file altogether.</summary>
    private static byte[] Input(byte[] seed, Chance chance)
    {
        switch (chance.Below(20))
        {
            case 0:
                var noise = new byte[chance.Below(2_000)];
                for (var at = 0; at < noise.Length; at++)
                    noise[at] = (byte)chance.Below(256);
                return noise;
            case 1:
                var (part, at1) = (
                    seed.AsSpan(0, Math.Min(seed.Length, 1 + chance.Below(40))).ToArray(),
                    chance.Below(seed.Length + 1)
                );
                return
                [
                    .. seed.AsSpan(0, at1),
                    .. Enumerable.Repeat(part, 1 + chance.Below(2_000)).SelectMany(p => p),
                    .. seed.AsSpan(at1),
                ];
            default:
                return Mutation.Of(seed, chance);
        }
    }

    private bool ReadPractice(byte[] bytes)
    {
        var findings = new Findings();
        var path = Paths[bytes.Length % Paths.Length];
        PracticeReader.Read(LittlePractice.Golden.With(path, bytes).Folder, findings);
        return findings.Count == 0;
    }

    private static bool ReadLog(byte[] bytes) => LogReader.Read("log.csv", bytes).Entries.Count > 0;

    /// <summary>With a passphrase that opens none: what comes before the key is made is what somebody may send.</summary>
    private bool ReadLocked(byte[] bytes)
    {
        File.WriteAllBytes(folder["tess.locked.html"], bytes);
        return Refuses(
            () => LockedForm.Open(folder["tess.locked.html"], () => throw new HandOverException("Asked.", "")),
            "Asked."
        );
    }

    private bool ReadZip(byte[] bytes)
    {
        File.WriteAllBytes(folder["rufus.zip"], bytes);
        return Refuses(() => new ZipForm().Read(folder["rufus.zip"], ExampleSite.Rufus));
    }

    private static bool ReadPicture(byte[] bytes)
    {
        if (MediaFile.Of(bytes) is not { Trouble: null } media)
            return false;
        return (long)media.Width * media.Height > 0 && media.Bytes.Length > 0 && media.Tells.Count >= 0;
    }

    /// <summary>Whether it is read; anything but a refusal in a sentence is thrown.</summary>
    /// <param name="instead">A refusal that counts as having been read.</param>
    private static bool Refuses(Func<object> read, string? instead = null)
    {
        try
        {
            return read() is not null;
        }
        catch (HandOverException refused)
        {
            Assert.InRange(refused.Sentence.Length, 1, 400);
            return refused.Sentence == instead;
        }
    }

    private static string PublishedPage() => File.ReadAllText(Repository.Path("site-output-sample", "rufus", "weeks.html"));

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
