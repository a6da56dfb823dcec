using System.Globalization;
using Gradus.Media;
using Gradus.Tests.House;

namespace Gradus.Tests.Media;

/// <summary>Damaged files of every kind, the same on every run: a tenth of them always, all in a long proof.</summary>
public sealed class MediaFuzzTests(ITestOutputHelper output)
{
    private static readonly int Each = LongProof.Cases(3000);

    /// <summary>The smallest picture in one look takes microseconds; this is for a machine that is busy with all else.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    /// <summary>What may be put in place of what is left out: the list of tags with the orientation alone, in its head.</summary>
    private const int MostLonger = 64;

    public static TheoryData<string> Files => [.. WholeFile.All.Select(file => file.Kind)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Whatever_becomes_of_a_file_it_is_refused_or_taken_apart_whole(string kind)
    {
        var file = WholeFile.All.Single(f => f.Kind == kind);
        output.WriteLine(
            $"{kind, -24}{"cases", 8}{"nothing", 9}{"damaged", 9}{"whole", 7}{"telling", 9}{"most memory for a byte", 24}"
        );
        foreach (var (name, damage) in Damage.Kinds)
        {
            var chance = new Chance(31);
            var seen = new List<Taken>();
            for (var n = 0; n < Each; n++)
            {
                var bytes = damage(file, chance);
                var taken = Taken.From(bytes, MediaFile.Of, Patience);
                Assert.True(taken.Fault is null, $"{kind}, {name}, case {n}: {taken.Fault}");
                seen.Add(taken);
            }

            output.WriteLine(
                $"{name, -24}{seen.Count, 8}{seen.Count(t => t.File is null), 9}"
                    + $"{seen.Count(t => t.File?.Trouble is not null), 9}{seen.Count(t => t.IsWhole), 7}"
                    + $"{seen.Count(t => t.IsWhole && t.File?.Tells.Count > 0), 9}"
                    + seen.Max(t => t.MemoryForAByte).ToString("F1", CultureInfo.InvariantCulture).PadLeft(24)
            );
        }
    }

    /// <summary>Too many that are refused at once, or none, would prove little.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void The_damages_leave_some_whole_and_others_not(string kind)
    {
        var file = WholeFile.All.Single(f => f.Kind == kind);
        var chance = new Chance(32);
        var seen = Damage
            .Kinds.SelectMany(damage => Enumerable.Range(0, 100).Select(_ => MediaFile.Of(damage.Do(file, chance))))
            .ToArray();
        Assert.InRange(seen.Count(f => f is { Trouble: null, Tells.Count: > 0 }), 60, 800);
        Assert.InRange(seen.Count(f => f is null or { Trouble: not null }), 100, 840);
        Assert.InRange(file.Parts.Count(), 4, 60);
        Assert.InRange(file.Lengths.Count(), 4, 60);
    }

    /// <summary>What a walker might do wrong, each by hand, and the sentence that says so.</summary>
    [Fact]
    public void Every_planted_fault_is_found()
    {
        var bytes = MediaFileTests.Bytes("upright.jpg");
        var good = MediaFile.Of(bytes) ?? throw new InvalidOperationException("It is a picture.");
        (string Says, Func<ReadOnlyMemory<byte>, MediaFile?> Of)[] planted =
        [
            ("throws InvalidOperationException", _ => throw new InvalidOperationException("a slip")),
            ("does not end", Endless),
            ("takes too much memory", read =>
            {
                GC.KeepAlive(new byte[10_000_000]);
                return MediaFile.Of(read);
            }),
            ("gives more than it got", _ => good with { Bytes = new byte[bytes.Length + MostLonger + 1] }),
            ("gives something of a damaged file", _ => good with { Trouble = "is cut off" }),
            ("says a size that no picture has", _ => good with { Width = 0 }),
            ("says a size that no picture has", _ => good with { Height = 65_536 }),
            ("leaves what it tells", _ => good with { Bytes = bytes }),
            ("is another file when it is read again", read =>
                MediaFile.Of(read) is { } f ? f with { Width = f.Width + f.Tells.Count } : null
            ),
            ("is another file when it is read again", Shorter),
            ("cannot be read again", read => read.Length < bytes.Length ? null : MediaFile.Of(read)),
        ];
        foreach (var (says, of) in planted)
            Assert.Equal(says, Taken.From(bytes, of, TimeSpan.FromMilliseconds(says == "does not end" ? 200 : 30_000)).Fault);
        Assert.Null(Taken.From(bytes, MediaFile.Of, Patience).Fault);

        MediaFile? Shorter(ReadOnlyMemory<byte> read) =>
            MediaFile.Of(read) is { } f ? f with { Bytes = f.Tells.Count > 0 ? f.Bytes : f.Bytes[..^1] } : null;
    }

    private static MediaFile? Endless(ReadOnlyMemory<byte> file)
    {
        // Not for ever, so that the thread is given back.
        Thread.Sleep(TimeSpan.FromSeconds(2));
        return null;
    }

    /// <summary>One file taken apart, and what was wrong with that.</summary>
    /// <param name="Fault">Null where nothing was.</param>
    private sealed record Taken(MediaFile? File, double MemoryForAByte, string? Fault)
    {
        /// <summary>In bytes of memory for a byte of the file, and beside that.</summary>
        private const int MostMemory = 40,
            AndMemory = 64 * 1024;

        public bool IsWhole => File is { Trouble: null };

        public static Taken From(byte[] bytes, Func<ReadOnlyMemory<byte>, MediaFile?> of, TimeSpan patience)
        {
            var reading = Task.Run(() =>
            {
                var before = GC.GetAllocatedBytesForCurrentThread();
                try
                {
                    var file = of(bytes);
                    var memory = GC.GetAllocatedBytesForCurrentThread() - before;
                    return new Taken(
                        file,
                        memory / Math.Max(1.0, bytes.Length),
                        memory > ((long)MostMemory * bytes.Length) + AndMemory ? "takes too much memory" : Wrong(file, bytes, of)
                    );
                }
                catch (Exception thrown)
                {
                    return new Taken(null, 0, $"throws {thrown.GetType().Name}");
                }
            });
            return reading.Wait(patience) ? reading.Result : new Taken(null, 0, "does not end");
        }

        private static string? Wrong(MediaFile? file, byte[] bytes, Func<ReadOnlyMemory<byte>, MediaFile?> of)
        {
            if (file is null)
                return null;
            if (file.Trouble is not null)
                return file.Bytes.Length + file.Width + file.Height + file.Tells.Count > 0
                    ? "gives something of a damaged file"
                    : null;
            if (file.Width is < 1 or > ushort.MaxValue || file.Height is < 1 or > ushort.MaxValue)
                return "says a size that no picture has";
            if (file.Bytes.Length > bytes.Length + MostLonger)
                return "gives more than it got";
            if (of(file.Bytes) is not { Trouble: null } again)
                return "cannot be read again";
            if (again.Tells.Count > 0)
                return "leaves what it tells";
            return
                (again.Kind, again.Width, again.Height, again.Sounds) == Kept(file)
                && again.Bytes.Span.SequenceEqual(file.Bytes.Span)
                ? null
                : "is another file when it is read again";
        }

        /// <summary>Which way up a WebP is stored is not kept: no browser asks, and pictures of a practice are turned.</summary>
        private static (MediaKind, int, int, bool) Kept(MediaFile file) =>
            file is { Kind: MediaKind.WebP, Orientation: >= 5 }
                ? (file.Kind, file.Height, file.Width, file.Sounds)
                : (file.Kind, file.Width, file.Height, file.Sounds);
    }
}
