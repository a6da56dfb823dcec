using System.Text;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading.Logs;

/// <summary><c>log-format.md</c> held against reader and writer. The sums on it were reckoned by zlib.</summary>
public sealed class LogFormatPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.Path("src", "Reading", "Logs", "log-format.md"));

    private static readonly LoggedExercise Plank = new(
        new("plank"),
        null,
        1,
        null,
        "",
        new(null, Region.Find("knee"), Side.Left),
        true,
        StopReason.Sharp,
        []
    );

    private static readonly LogEntry Stopped = new(
        new(2026, 12, 7),
        new(18, 5),
        1,
        1,
        null,
        "9b1e5c07aa41d2f8",
        "3f0c2a91",
        new LogOutcome.EndedEarly(StopReason.Sharp),
        12,
        20,
        17.5m,
        4,
        new(0, null, null),
        new(2, Region.Find("knee"), Side.Left),
        null,
        null,
        null,
        [Rock(Side.Left), Rock(Side.Right), Plank],
        "slept badly",
        Location.Whole("")
    );

    private static readonly LogEntry Ill = new(
        new(2026, 12, 8),
        new(7, 30),
        2,
        1,
        null,
        "9b1e5c07aa41d2f8",
        "3f0c2a91",
        new LogOutcome.NotToday(NotTodayReason.Ill),
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        [],
        "",
        Location.Whole("")
    );

    private static LoggedExercise Rock(Side side) => new(new("ankle-rock"), side, 2, null, "", null, false, null, []);

    internal static string Block(string name) => FencedBlock.On(Page).Single(b => b.Name == name).Text;

    [Theory]
    [InlineData("csv log", LogForm.File)]
    [InlineData("text message", LogForm.Message)]
    public void The_file_and_the_message_of_the_page_tell_the_same(string block, LogForm form)
    {
        var read = LogReader.Read("x", Encoding.UTF8.GetBytes(Block(block) + "\n"));
        Assert.Equal(form, read.Form);
        Assert.Empty(read.Remarks);
        Assert.Equal([Stopped, Ill], read.Entries.Select(e => e with { At = Location.Whole("") }));
    }

    [Fact]
    public void The_line_of_before_is_read()
    {
        var read = LogReader.Read("x", Encoding.UTF8.GetBytes(Block("text before")));
        Assert.Empty(read.Remarks);
        var entry = Assert.Single(read.Entries);
        Assert.Equal((new DateOnly(2026, 12, 10), null, 2, 1), (entry.Day, entry.Start, entry.Session, entry.Week));
        Assert.Equal((12, 20, RedFlag.Chest), (entry.StepsDone, entry.StepsPlanned, entry.Alarm));
        Assert.Equal(new LogOutcome.EndedEarly(null), entry.Outcome);
        Assert.Equal(new LoggedPain(3, Region.Find("knee"), Side.Left), entry.During);
        Assert.Equal(
            ("plank", true, null),
            (entry.Exercises[0].Exercise.Text, entry.Exercises[0].IsStopped, entry.Exercises[0].For)
        );
    }

    [Fact]
    public void The_table_has_every_column_that_is_written_and_no_other()
    {
        var rows = Regex.Matches(Page, @"(?m)^\| (`[^|]*`) \|").SelectMany(m => Regex.Matches(m.Groups[1].Value, "`([a-z-]+)`"));
        Assert.Equal(
            LogWriter.Write([]).TrimEnd().Split(',').Order(StringComparer.Ordinal),
            rows.Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData("stopped-for", typeof(StopReason))]
    [InlineData("not-today", typeof(NotTodayReason))]
    [InlineData("alarm", typeof(RedFlag))]
    public void The_table_has_every_word_that_is_read(string column, Type words) =>
        Assert.Contains(
            $"| `{column}` | {(column == "stopped-for" ? "both" : "session")} | "
                + string.Join(", ", Enum.GetNames(words).Select(Kebab.Of)),
            Page,
            StringComparison.Ordinal
        );
}
