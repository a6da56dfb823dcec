using System.IO.Compression;
using System.Text;
using Gradus.Domain;

namespace Gradus.Tests.Reading.Logs;

/// <summary>What messengers do to a line is undone where its sum then fits, and nothing else is.</summary>
public sealed class LogMessageTests
{
    private static readonly string[] Lines = LogFormatPageTests.Block("text message").Split('\n');

    private static string Line => Lines[0];

    public static TheoryData<string> Whole =>
        new(
            Line,
            "Rufus: hello!\nMon 7 Dec: 12 of 20\n" + Line + "\nsent from my phone",
            "> " + Line,
            "> > " + Line,
            "[7.12.26, 18:40] Rufus: " + Line + " bye",
            Line.Replace(' ', '\u00A0'),
            Line.Replace(' ', '\u202F'),
            Line.Replace(" ", "  ", StringComparison.Ordinal),
            Line.Replace("gradus", "Gradus", StringComparison.Ordinal),
            Line.Replace("; ", ";\n", StringComparison.Ordinal),
            Line.Replace("week", "we\nek", StringComparison.Ordinal),
            Line.Replace("; sum ", ";\r\n> sum\r\n", StringComparison.Ordinal),
            Line.Replace("plank 1; left", "plank 1; \nleft", StringComparison.Ordinal),
            Line.Insert(Line.Length - 3, "\n"),
            Line.Replace("course", "\u200Bcourse", StringComparison.Ordinal),
            Line[..^8] + Line[^8..].ToUpperInvariant()
        );

    [Theory]
    [MemberData(nameof(Whole))]
    public void What_messengers_do_is_undone(string text)
    {
        var read = LogReaderTests.Read(text);
        Assert.Empty(read.Remarks);
        Assert.Equal(LogReaderTests.Read(Line).Entries.Select(Anywhere), read.Entries.Select(Anywhere));
    }

    [Fact]
    public void Curly_quotes_are_straight_again()
    {
        var line = Summed("gradus 2026-12-07; week 1; session 1; done; note it's \"fine\"");
        var read = LogReaderTests.Read(line.Replace("it's \"fine\"", "it\u2019s \u201Cfine\u201D", StringComparison.Ordinal));
        Assert.Equal("it's \"fine\"", Assert.Single(read.Entries).Note);
    }

    [Fact]
    public void Several_lines_of_one_message_are_several_entries()
    {
        Assert.Equal(2, LogReaderTests.Read("Two:\n" + string.Join('\n', Lines)).Entries.Count);
        Assert.Equal(2, LogReaderTests.Read(string.Join(' ', Lines)).Entries.Count);
    }

    [Theory]
    [InlineData("effort 4", "effort 3")]
    [InlineData("sum ", "sum 0")]
    [InlineData("2026-12-07", "2026-12-08")]
    public void A_line_that_was_edited_is_refused_and_shown(string said, string instead)
    {
        var line = Line.Replace(said, instead, StringComparison.Ordinal);
        var read = LogReaderTests.Read("hello\n" + line);
        Assert.Empty(read.Entries);
        var remark = Assert.Single(read.Remarks);
        Assert.Equal((2, Level.Warning), (remark.Line, remark.Level));
        Assert.EndsWith($"not taken: '{line[..200]}…'", remark.Text, StringComparison.Ordinal);
        Assert.False(read.IsWhole);
    }

    [Fact]
    public void Half_a_line_is_refused_and_the_next_is_read()
    {
        var read = LogReaderTests.Read(Line[..60] + "\n" + Lines[1]);
        Assert.Equal(new DateOnly(2026, 12, 8), Assert.Single(read.Entries).Day);
        Assert.StartsWith(
            "line 1: its end with the sum is missing; not taken: 'gradus",
            $"{read.Remarks[0]}",
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("pain none", "0 ")]
    [InlineData("pain not said", "")]
    [InlineData("pain 3 of 10", "3 ")]
    [InlineData("pain 3 of 10, left knee", "3 left knee")]
    [InlineData("pain 3 of 10, lower-back", "3 lower-back")]
    [InlineData("pain-during 2 lower-back", "2 lower-back")]
    public void Pain_of_before_and_now_is_read(string part, string pain)
    {
        var read = LogReaderTests.Read(Summed($"gradus 2026-12-07; edition unknown; week 1; session 1; done; {part}"));
        Assert.Empty(read.Remarks);
        var entry = Assert.Single(read.Entries);
        Assert.Null(entry.Edition);
        Assert.Equal(pain, entry.During is { } p ? $"{p.Level} {p.Where?.On(p.Side)}" : "");
    }

    [Theory]
    [InlineData("left out plank", "plank -  ")]
    [InlineData("left out plank sharp", "plank - Sharp ")]
    [InlineData("left out plank left", "plank Left  ")]
    [InlineData("left out plank left knee", "plank -  left knee")]
    [InlineData("left out plank sharp left knee", "plank - Sharp left knee")]
    [InlineData("left out plank left sharp right knee, rock", "plank Left Sharp right knee|rock -  ")]
    [InlineData("left out plank left right knee", "plank Left  right knee")]
    [InlineData("left out plank giving-way lower-back", "plank - GivingWay lower-back")]
    public void What_was_left_out_is_read_with_why_and_where(string part, string expected)
    {
        var read = LogReaderTests.Read(Summed($"gradus 2026-12-07; week 1; session 1; stopped; {part}"));
        Assert.Empty(read.Remarks);
        Assert.Equal(
            expected,
            string.Join(
                '|',
                read.Entries[0]
                    .Exercises.Select(e => $"{e.Exercise} {e.Side?.ToString() ?? "-"} {e.For} {e.Pain?.Where?.On(e.Pain.Side)}")
            )
        );
        Assert.All(read.Entries[0].Exercises, e => Assert.True(e.IsStopped));
    }

    [Fact]
    public void Further_parts_are_read()
    {
        var line = Summed(
            "gradus 2026-12-07; week 1; session 1; kind travel; done; pain-morning 3 left knee; worse yes; alarm chest; sets "
                + "ankle-test left 1; measured ankle-test left 9.5 10 10, ankle-test right 8 8.5 8.5; mood glad"
        );
        var read = LogReaderTests.Read(line);
        Assert.Equal(["line 1: 'mood glad' is not known here, and was left out"], read.Remarks.Select(r => $"{r}"));
        Assert.True(read.IsWhole);
        var entry = Assert.Single(read.Entries);
        Assert.Equal((AlternateKind.Travel, true, RedFlag.Chest), (entry.Kind, entry.Worse, entry.Alarm));
        Assert.Equal(new LoggedPain(3, Region.Find("knee"), Side.Left), entry.Morning);
        Assert.Equal([(1, 3), (null, 3)], entry.Exercises.Select(e => (e.Sets, e.Measured.Count)));
    }

    /// <summary>The sum of "123456789" is the check value of CRC-32 (ISO 3309) in the catalogue of parametrised CRC algorithms.
    /// The line with it is what a reader must take.</summary>
    [Fact]
    public void The_sum_is_the_published_one()
    {
        Assert.Equal("cbf43926", SumOf("123456789"));
        Assert.Single(LogReaderTests.Read(Summed("gradus 2026-12-07; week 1; session 1; done; note épée, 3 €")).Entries);
    }

    /// <summary>By zlib, which a zip has, not by what reads the line.</summary>
    internal static string Summed(string text) => $"{text}; sum {SumOf(text)}";

    private static string SumOf(string text)
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var entry = archive.CreateEntry("text").Open();
            entry.Write(Encoding.UTF8.GetBytes(text));
        }

        using var read = new ZipArchive(zip);
        return read.Entries[0].Crc32.ToString("x8", null);
    }

    private static LogEntry Anywhere(LogEntry entry) => entry with { At = Location.Whole("") };
}
