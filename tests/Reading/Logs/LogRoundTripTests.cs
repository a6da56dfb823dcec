using System.Text;
using CsCheck;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;
using nietras.SeparatedValues;

namespace Gradus.Tests.Reading.Logs;

/// <summary>What is written is read again, whatever stands in it.</summary>
public sealed class LogRoundTripTests(ITestOutputHelper output)
{
    private const ulong Seed = 20261209;

    private static readonly int Cases = LongProof.Cases(20_000);

    [Fact]
    public void What_is_written_is_read_again()
    {
        var (entries, noted, hurt) = (0, 0, 0);
        foreach (var made in MadeLogs.Entry.Array[0, 6].Made(Cases, Seed))
        {
            var read = LogReader.Read("x", Encoding.UTF8.GetBytes(LogWriter.Write(made)));
            entries += made.Length;
            noted += made.Count(e => e.Note.Length > 0);
            hurt += made.Count(e => e.During is not null);
            Assert.Empty(read.Remarks);
            Assert.Equal(made, read.Entries.Select(MadeLogs.Anywhere));
        }

        output.WriteLine($"{Cases} logs with {entries} entries, {noted} with a note, {hurt} with pain");
        Assert.True(noted > Cases / 2 && hurt > Cases / 2, "Too few of a kind to prove anything.");
    }

    /// <summary>Every byte of before stays, in whatever dress a spreadsheet saved it.</summary>
    [Theory]
    [InlineData("utf-8", ",")]
    [InlineData("utf-8", ";")]
    [InlineData("utf-16", "\t")]
    [InlineData("utf-16BE", ",")]
    public void What_is_written_behind_a_log_is_read_behind_it(string name, string separator)
    {
        var encoding = Encoding.GetEncoding(name);
        var before =
            "my own words\r\nweek,note,session,date\r\n1,first,1,2026-12-01\r\n2,last and never ended,1,2026-12-08".Replace(
                ",",
                separator,
                StringComparison.Ordinal
            );
        byte[] log = name == "utf-8" ? encoding.GetBytes(before) : [.. encoding.GetPreamble(), .. encoding.GetBytes(before)];
        foreach (var made in MadeLogs.Entry.Array[1, 3].Made(Cases / 20, Seed))
        {
            var once = Assert.IsType<byte[]>(LogWriter.Behind(log, made));
            var twice = Assert.IsType<byte[]>(LogWriter.Behind(once, made));
            Assert.Equal(log, once[..log.Length]);
            Assert.Equal(once, twice[..once.Length]);
            var read = LogReader.Read("x", twice);
            Assert.Equal(["first", "last and never ended"], read.Entries.Take(2).Select(e => e.Note));
            Assert.Equal(made.Concat(made), read.Entries.Skip(2).Select(MadeLogs.Anywhere));
        }
    }

    [Fact]
    public void A_head_comes_again_only_behind_another()
    {
        LogEntry[] made = [.. MadeLogs.Entry.Made(2, Seed)];
        var log = Encoding.UTF8.GetString(LogWriter.Behind(LogWriter.Behind([], made), made) ?? []);
        Assert.Equal(LogWriter.Write([.. made, .. made]), log);
    }

    [Theory]
    [InlineData("no log at all\n")]
    [InlineData("date,session,week,note\n2026-12-07,1,1,\"never closed")]
    public void Nothing_is_written_behind_what_would_swallow_it(string log) =>
        Assert.Null(LogWriter.Behind(Encoding.UTF8.GetBytes(log), [.. MadeLogs.Entry.Made(1, Seed)]));

    /// <summary>Sep read by itself, with no word of ours.</summary>
    [Fact]
    public void No_cell_is_one_that_a_spreadsheet_would_reckon()
    {
        foreach (var made in MadeLogs.Entry.Array[1, 3].Made(Cases / 10, Seed))
        {
            using var rows = Sep.New(',').Reader(o => o with { Unescape = true }).FromText(LogWriter.Write(made));
            foreach (var row in rows)
                for (var i = 0; i < row.ColCount; i++)
                    Assert.False(row[i].Span is ['=' or '+' or '-' or '@' or '\t' or '\r', ..], $"[{row[i].ToString()}]");
        }
    }
}
