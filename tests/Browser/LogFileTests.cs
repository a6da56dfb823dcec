using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using nietras.SeparatedValues;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>The log as a file: what is written is read again, also by another reader of CSV, and nothing in it is a
/// formula.</summary>
public sealed class LogFileTests
{
    /// <summary>The first line of every log that was saved before December 2026.</summary>
    private const string Columns =
        "date,session,week,exercise,sets,repetitions,load,effort,pain,where,side,stopped,note,worse-next-morning";

    private static readonly string[] Nasty =
    [
        "=1+1",
        "+44",
        "-5 kg",
        "@SUM(A1)",
        "'=x",
        "''",
        "a, b",
        "a \"quoted\" word",
        "two\nlines",
        "two\r\nlines",
        "\t=1",
        "épée, 3 €",
        "plain",
        "",
        "\"",
        ",",
        "'",
    ];

    private static JsonArray Rows() =>
        new([
            .. Nasty.Select(
                (text, i) =>
                    (JsonNode)
                        new JsonObject
                        {
                            ["day"] = $"2026-12-{i + 1:00}",
                            ["week"] = (i / 7) + 1,
                            ["session"] = 1,
                            ["effort"] = i % 11,
                            ["pain"] = i % 3,
                            ["note"] = text,
                            ["done"] = i % 4 != 0,
                            ["exercises"] = new JsonArray(
                                new JsonObject
                                {
                                    ["exercise"] = "wall-lean",
                                    ["sets"] = i,
                                    ["load"] = text,
                                    ["stopped"] = i % 4 == 0,
                                }
                            ),
                        }
            ),
        ]);

    [Fact]
    public async Task What_is_written_is_read_again_to_the_letter() =>
        Assert.Equal("0 true", await Ask(new JsonObject { ["kind"] = "again", ["rows"] = Rows() }));

    /// <summary>Sep, which Gradus itself reads CSV with, knows nothing of our script.</summary>
    [Fact]
    public async Task Another_reader_finds_the_same_cells_and_none_that_a_spreadsheet_would_reckon()
    {
        var text = await Ask(new JsonObject { ["kind"] = "write", ["rows"] = Rows() });
        var notes = new List<string>();
        using var reader = Sep.Reader(o => o with { Sep = new Sep(','), Unescape = true }).FromText(text);
        foreach (var line in reader)
        {
            for (var i = 0; i < line.ColCount; i++)
                Assert.False(
                    "=+-@\t\r".Contains(line[i].Span is [var first, ..] ? first : 'x', StringComparison.Ordinal),
                    line[i].ToString()
                );
            if (line["exercise"].Span.IsEmpty)
                notes.Add(line["note"].ToString());
        }

        Assert.Equal(Nasty.Select(n => n.TrimStart('\'') is ['=' or '+' or '-' or '@' or '\t' or '\r', ..] ? "'" + n : n), notes);
    }

    [Theory]
    [InlineData("", "none")]
    [InlineData("a,b\n1,2\n", "none")]
    [InlineData(Columns + "\n", "0 0")]
    [InlineData(Columns + "\n2026-12-07,1,1,,,,,5,2,knee,left,,,\n2026-12-07,1,1,wall-lean,2,,,,,,,,,", "1 0")]
    [InlineData(
        Columns + "\r\nsoon,1,1,,,,,,,,,,,\r\n2026-12-07,one,1,,,,,,,,,,,\r\n2026-12-07,1,1,wall-lean,2,,,,,,,,,\r\n",
        "0 3"
    )]
    [InlineData("\uFEFF" + Columns + ",more\n2026-12-07,1,1,,,,,99,2,,,,,,x\n", "1 1")]
    [InlineData(Columns + "\n2026-12-07,1,1,,,,,,,,,,\"never closed", "1 0")]
    public async Task What_is_no_log_is_said_to_be_none_and_what_cannot_be_read_is_counted(string text, string expected) =>
        Assert.Equal(expected, await Ask(new JsonObject { ["kind"] = "read", ["text"] = text }));

    /// <summary>The sum of "123456789" is the check value of CRC-32 (ISO 3309, also in the catalogue of parametrised CRC
    /// algorithms); of any other text a zip file has it.</summary>
    [Theory]
    [InlineData("123456789", "cbf43926")]
    [InlineData("", "00000000")]
    [InlineData("épée 3 €\n", null)]
    public async Task The_check_sum_is_that_of_a_zip_file(string text, string? published)
    {
        var sum = await Ask(new JsonObject { ["kind"] = "sum", ["text"] = text });
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            await using var entry = await archive.CreateEntry("text").OpenAsync(TestContext.Current.CancellationToken);
            await entry.WriteAsync(Encoding.UTF8.GetBytes(text), TestContext.Current.CancellationToken);
        }

        using var read = new ZipArchive(zip);
        Assert.Equal(read.Entries[0].Crc32.ToString("x8", System.Globalization.CultureInfo.InvariantCulture), sum);
        if (published is not null)
            Assert.Equal(published, sum);
    }
}
