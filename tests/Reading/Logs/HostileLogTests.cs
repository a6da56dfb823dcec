using System.Diagnostics;
using System.Text;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading.Logs;

/// <summary>Nothing that somebody sends throws, takes long, or comes out in a sentence as it is.</summary>
[Trait("Slow", "yes")]
public sealed class HostileLogTests(ITestOutputHelper output)
{
    private const int MiB = 1024 * 1024;

    /// <summary>A second where nothing else runs, and this much where everything else does.</summary>
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(5);

    private static readonly int Rounds = LongProof.Cases(20_000);

    /// <summary>Seed 20261208, on every run the same.</summary>
    [Fact]
    public void Damaged_logs_are_read_to_the_end()
    {
        var chance = new Chance(20261208);
        string[] golden =
        [
            LogFormatPageTests.Block("csv log") + "\n",
            LogFormatPageTests.Block("text message") + "\n",
            LogFormatPageTests.Block("text before") + "\n",
        ];
        var (whole, remarked, refused) = (0, 0, 0);
        var slowest = TimeSpan.Zero;
        for (var round = 0; round < Rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            var read = LogReader.Read("x", Damaged(Encoding.UTF8.GetBytes(chance.Of(golden)), chance));
            slowest = watch.Elapsed > slowest ? watch.Elapsed : slowest;
            whole += read.IsWhole ? 1 : 0;
            refused += read.Form is null ? 1 : 0;
            remarked += read.Form is not null && !read.IsWhole ? 1 : 0;
            Assert.All(read.Remarks, r => Assert.DoesNotContain(r.Text, char.IsControl));
        }

        output.WriteLine($"{Rounds} rounds: {whole} whole, {remarked} in part, {refused} refused; slowest {slowest}");
        Assert.True(whole > Rounds / 20 && remarked > Rounds / 4 && refused > Rounds / 200, "One kind hardly ever came.");
        Assert.True(slowest < Limit, $"One took {slowest}.");
    }

    public static TheoryData<string, string> Large =>
        new()
        {
            { "commas", new(',', 3 * MiB) },
            { "a head of commas", "date,session" + new string(',', 3 * MiB) },
            { "quotation marks", "date,session,week\n" + new string('"', 3 * MiB) },
            { "one open quotation mark", "date,session,week\n\"" + new string('a', 3 * MiB) },
            { "open lines", string.Concat(Enumerable.Repeat("gradus 2026-12-07\n", MiB / 6)) },
            { "one open line", "gradus 2026-12-07" + new string('x', 3 * MiB) },
            { "a line in pieces", "gradus 2026-12-07\n" + string.Concat(Enumerable.Repeat("; sum 0000000\n", MiB / 5)) },
            { "wrong sums", string.Concat(Enumerable.Repeat("gradus 2026-12-07\na\nb\nc\nd\ne\nf; sum 00000000\n", MiB / 20)) },
            { "heads", string.Concat(Enumerable.Repeat("date,session,week\n", MiB / 6)) },
            {
                "lines without a session",
                "date,session,week,exercise\n" + string.Concat(Enumerable.Repeat("2026-12-07,1,1,a\n", MiB / 6))
            },
            { "one session", "date,session,week\n" + string.Concat(Enumerable.Repeat("2026-12-07,1,1\n", MiB / 6)) },
            { "marks of quoting", new('>', 3 * MiB) },
            { "blanks and marks", string.Concat(Enumerable.Repeat(" >", MiB)) + "x gradus 2026-12-07" },
            { "blanks", "gradus" + new string(' ', 3 * MiB) },
            { "sums", "gradus 2026-12-07" + string.Concat(Enumerable.Repeat("; sum 00000000", MiB / 5)) },
        };

    [Theory]
    [MemberData(nameof(Large))]
    public void What_is_large_and_mean_takes_no_long_time(string kind, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var took = Quickest(Limit, () =>
        {
            var read = LogReader.Read("x", bytes);
            output.WriteLine($"{kind}: {LogBook.Joined(read.Entries).Count} sessions, {read.Remarks.Count} remarks");
        });
        output.WriteLine($"{took.TotalMilliseconds:0} ms");
        Assert.True(took < Limit, $"{kind} took {took}.");
    }

    [Fact]
    public void Fifty_megabytes_are_refused_unopened()
    {
        var read = LogReader.Read("x", 50 * MiB, () => throw new InvalidOperationException("It was opened."));
        Assert.Null(read.Form);
        Assert.Equal(
            "this is larger than 4 MiB, the most that is read; no log is so large",
            Assert.Single(read.Remarks).ToString()
        );
    }

    [Fact]
    public void What_hides_its_size_is_read_no_further_than_a_log_can_be()
    {
        using var endless = new Endless();
        Assert.Null(LogReader.Read("x", 0, () => endless).Form);
        Assert.InRange(endless.Taken, 4 * MiB, 5 * MiB);
    }

    [Fact]
    public void Ten_thousand_lines_are_read_in_well_under_a_second()
    {
        var lines = Enumerable
            .Range(0, 10_000)
            .Select(i =>
                FormattableString.Invariant(
                    $"{new DateOnly(2026, 1, 1).AddDays(i / 30):yyyy-MM-dd},18:0{i / 10 % 3},{(i / 10 % 3) + 1},1,"
                ) + (i % 10 == 0 ? ",,4,2 left knee,slept badly" : $"exercise-{i % 10},2,,,")
            );
        var log = Encoding.UTF8.GetBytes(
            "date,start,session,week,exercise,sets,effort,pain-during,note\n" + string.Join('\n', lines) + "\n"
        );
        var read = LogReader.Read("x", log);
        Assert.Equal((1000, 0), (read.Entries.Count, read.Remarks.Count));
        Assert.All(read.Entries, e => Assert.Equal(9, e.Exercises.Count));
        var took = Quickest(TimeSpan.FromMilliseconds(500), () =>
            Assert.Equal(1000, LogBook.Joined(LogReader.Read("x", log).Entries).Count)
        );
        output.WriteLine($"{log.Length} bytes in {took.TotalMilliseconds:0} ms");
        Assert.True(took < TimeSpan.FromMilliseconds(500), $"It took {took}.");
    }

    /// <summary>How long it takes; tried again where something else may have had the machine.</summary>
    private static TimeSpan Quickest(TimeSpan limit, Action work)
    {
        var quickest = TimeSpan.MaxValue;
        for (var i = 0; i < 5 && quickest >= limit; i++)
        {
            var watch = Stopwatch.StartNew();
            work();
            quickest = watch.Elapsed < quickest ? watch.Elapsed : quickest;
        }

        return quickest;
    }

    private static byte[] Damaged(byte[] text, Chance chance)
    {
        var bytes = text.ToList();
        for (var times = chance.Below(4); times >= 0; times--)
        {
            var at = chance.Below(bytes.Count);
            switch (chance.Below(6))
            {
                case 0:
                    bytes[at] = (byte)chance.Below(256);
                    break;
                case 1:
                    bytes.RemoveRange(at, Math.Min(chance.Below(40), bytes.Count - at));
                    break;
                case 2:
                    bytes.Insert(at, chance.Of("\",;\n\r\t=' 0"u8.ToArray()));
                    break;
                case 3:
                    bytes.InsertRange(at, bytes[..chance.Below(bytes.Count)]);
                    break;
                case 4:
                    bytes.RemoveRange(at, bytes.Count - at);
                    break;
                default:
                    break;
            }

            if (bytes.Count == 0)
                bytes.Add((byte)'x');
        }

        return [.. bytes];
    }

    /// <summary>A stream that never ends.</summary>
    private sealed class Endless : MemoryStream
    {
        public int Taken { get; private set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            Taken += count;
            return count;
        }
    }
}
