using System.Text;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading.Logs;

/// <summary>Logs as CSV, whole and as spreadsheets leave them. Each line of what is expected is an entry or a remark.</summary>
public sealed class LogReaderTests
{
    private const string Head = "date,start,session,week,exercise,sets,minutes,effort,pain-during,stopped,stopped-for,alarm,note";

    /// <summary>The first line of every log that pages saved before.</summary>
    private const string OldHead =
        "date,session,week,exercise,sets,repetitions,load,effort,pain,where,side,stopped,note,worse-next-morning";

    [Theory]
    [InlineData(Head + "\n", "")]
    [InlineData(Head + "\n2026-12-07,18:05,1,1,,,,,,,,,\n", "2026-12-07 18:05 1 done")]
    [InlineData("\n\n" + Head + "\n2026-12-07,,1,1,,,,,,,,,\n", "2026-12-07 1 done")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,,yes,,,\n", "2026-12-07 1 stopped")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,,,numb,,\n", "2026-12-07 1 stopped Numb")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,14,,,,,\n", "2026-12-07 1 done|line 2: effort 14 is not 0 to 10; not taken")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,-1,,,,,\n", "2026-12-07 1 done|line 2: effort -1 is not 0 to 10; not taken")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,4.5,,,,,\n", "2026-12-07 1 done|line 2: effort 4.5 is not 0 to 10; not taken")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,4.0,,,,,\n", "2026-12-07 1 done effort 4")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,=1+1,,,,,\n", "2026-12-07 1 done|line 2: effort '=1+1' is not 0 to 10; not taken")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,,,,,'=1+1\n", "2026-12-07 1 done note [=1+1]")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,,,,,=1+1\n", "2026-12-07 1 done note [=1+1]")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,\"17,5\",,,,,,\n", "2026-12-07 1 done 17.5 min")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,17,5,,,,,,\n", "|line 2: it has 14 cells, and its head 13; not taken")]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,11 left knee,,,,\n",
        "2026-12-07 1 done|line 2: pain-during 11 is not 0 to 10; not taken"
    )]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,2 left knee,,,,\n", "2026-12-07 1 done hurts 2 left knee")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,lower-back,,,,\n", "2026-12-07 1 done hurts lower-back")]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,2 left kneecap,,,,\n",
        "2026-12-07 1 done hurts 2|line 2: pain-during: the place 'kneecap' is not known here; not taken"
    )]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,,yes,ouch,,\n",
        "2026-12-07 1 stopped|line 2: stopped-for ouch is none of sharp, dull, numb, giving-way, snap, swollen, no-weight, "
            + "tired, time; not taken"
    )]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,,,,heart,\n",
        "2026-12-07 1 done|line 2: alarm heart is a sign that is not known here: ask the client today"
    )]
    [InlineData(Head + "\nsoon,,1,1,,,,,,,,,\n", "|line 2: the date 'soon' is no day, as 2026-12-07; not taken")]
    [InlineData(Head + "\n,,1,1,,,,,,,,,\n", "|line 2: there is no date; not taken")]
    [InlineData(Head + "\n2026-12-07,,,1,,,,,,,,,\n", "|line 2: there is no number of a session; not taken")]
    [InlineData(Head + "\n2026-12-07,,1,,,,,,,,,,\n", "|line 2: there is no number of a week; not taken")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,,,,,half", "2026-12-07 1 done note [half]")]
    [InlineData(Head + "\n2026-12-07,,1,1,,,,,,,,,\n2026-12-0", "2026-12-07 1 done|line 3: it is cut off; not taken")]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,,,,,\n2026-12-08,,1,1,,,,,,,,,\"never",
        "2026-12-07 1 done|line 3: a quotation mark is never closed, so nothing from here on was taken"
    )]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,,,,,\"two\r\nlines \"\"so\"\"\"\n2026-12-08,,1,1,,,,99,,,,,\n",
        "2026-12-07 1 done note [two\r\nlines \"so\"]|2026-12-08 1 done|line 4: effort 99 is not 0 to 10; not taken"
    )]
    [InlineData(Head + "\n2026-12-07,,1,1,wall-lean,2,,,,,,,\n2026-12-07,,1,1,,,,,,,,,\n", "2026-12-07 1 done wall-lean 2")]
    [InlineData(
        Head + "\n2026-12-07,,1,1,wall-lean,2,,,,,,,\n",
        "|line 2: there is no line of session 1 on 2026-12-07 above it; not taken"
    )]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,,,,,\n2026-12-07,,1,1,Wall lean,2,,,,,,,\n",
        "2026-12-07 1 done|line 3: exercise 'Wall lean' is no id; not taken"
    )]
    [InlineData(
        "my log\n" + Head + ",mood\n2026-12-07,,1,1,,,,,,,,,,glad\n",
        "2026-12-07 1 done|line 1: what stands before the head is no line of a log, and was left out|line 3: the column 'mood' "
            + "is not known here, and was left out"
    )]
    [InlineData(
        Head + "\n2026-12-07,,1,1,,,,,,,,,\nWeek,NOTE,Session,Date\n1,short head,2,2026-12-08\n",
        "2026-12-07 1 done|2026-12-08 2 done note [short head]"
    )]
    [InlineData(
        OldHead + "\n2026-12-07,1,1,,,,,5,2,knee,left,,,yes\n2026-12-07,1,1,wall-lean,2,,band,,,lower-back,,yes,,\n",
        "2026-12-07 1 done effort 5 hurts 2 left knee worse wall-lean 2 band stopped lower-back"
    )]
    [InlineData(OldHead + ",pain-during\n2026-12-07,1,1,,,,,5,2,knee,left,,,,\n", "2026-12-07 1 done effort 5 hurts 2 left knee")]
    [InlineData(
        "a,b\n1,2\n",
        "|this is no log: there is neither a head with the columns date and session in it, nor a line that "
            + "begins with gradus and a date"
    )]
    public void A_log_is_read_as_far_as_it_can_be(string text, string expected) => Assert.Equal(expected, Told(Read(text)));

    [Theory]
    [InlineData(";")]
    [InlineData("\t")]
    public void Other_separators_are_read(string separator)
    {
        var text = (Head + "\n2026-12-07,18:05,1,1,,,,4,,,,,a@ b\n").Replace(",", separator, StringComparison.Ordinal);
        Assert.Equal("2026-12-07 18:05 1 done effort 4 note [a, b]", Told(Read(text.Replace('@', ','))));
    }

    public static TheoryData<string> Encodings => ["utf-8", "utf-16", "utf-16BE"];

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Encodings_with_a_mark_are_read(string name)
    {
        var encoding = Encoding.GetEncoding(name);
        byte[] bytes = [.. encoding.GetPreamble(), .. encoding.GetBytes(Head + "\n2026-12-07,,1,1,,,,,,,,,épée 3 €\n")];
        Assert.Equal("2026-12-07 1 done note [épée 3 €]", Told(LogReader.Read("x", bytes)));
    }

    [Fact]
    public void A_file_in_another_encoding_is_read_and_said() =>
        Assert.Equal(
            "2026-12-07 1 done note [épée]|this is not in UTF-8, so letters other than a to z may have come out wrong",
            Told(LogReader.Read("x", Encoding.Latin1.GetBytes(Head + "\n2026-12-07,,1,1,,,,,,,,,épée\n")))
        );

    [Fact]
    public void A_spreadsheets_own_file_is_named() =>
        Assert.Equal(
            "|this is a spreadsheet's own file, or a zip; save it as CSV",
            Told(LogReader.Read("x", "PK\u0003\u0004..."u8))
        );

    /// <summary>46363 by the day numbers of spreadsheets, in which 1 January 2026 is 46023 (reckoned, and from memory).</summary>
    [Theory]
    [InlineData("2026-12-07", "2026-12-07", false)]
    [InlineData("07.12.2026", "2026-12-07", true)]
    [InlineData("7.12.2026", "2026-12-07", true)]
    [InlineData("2026/12/07", "2026-12-07", true)]
    [InlineData("2026-12-07 00:00:00", "2026-12-07", true)]
    [InlineData("13/12/2026", "2026-12-13", true)]
    [InlineData("12/13/2026", "2026-12-13", true)]
    [InlineData("12-12-2026", "2026-12-12", true)]
    [InlineData("46363", "2026-12-07", true)]
    [InlineData("12/7/2026", "may be 2026-07-12 or 2026-12-07", false)]
    [InlineData("07/12/2026", "may be 2026-12-07 or 2026-07-12", false)]
    [InlineData("07.13.2026", "is no day", false)]
    [InlineData("31.02.2026", "is no day", false)]
    [InlineData("7.12.26", "is no day", false)]
    [InlineData("2026-13-07", "is no day", false)]
    [InlineData("1999-12-31", "is no day", false)]
    [InlineData("99999999", "is no day", false)]
    [InlineData("0", "is no day", false)]
    public void Dates_that_a_spreadsheet_turned_are_read_where_they_can_mean_one_day(string written, string day, bool isSaid)
    {
        var read = Read($"date,session,week\n{written},1,1\n");
        var said = string.Join('|', read.Remarks);
        if (day.Length != 10)
            Assert.Contains($"the date '{written}' {day}", said, StringComparison.Ordinal);
        else
            Assert.Equal(isSaid ? $"line 2: the date '{written}' is read as {day}" : "", said);
        Assert.Equal(day.Length != 10 ? [] : [day], read.Entries.Select(e => e.Day.Iso()));
        Assert.Equal(day.Length == 10, read.IsWhole);
    }

    [Fact]
    public void Turned_dates_are_said_once() =>
        Assert.Equal(
            ["line 2: the date '07.12.2026' is read as 2026-12-07, and so are those of 2 more lines"],
            Read("date;session;week\n07.12.2026;1;1\n08.12.2026;2;1\n09.12.2026;3;1\n").Remarks.Select(r => r.ToString())
        );

    [Theory]
    [InlineData("18:05", "18:05")]
    [InlineData("18:05:00", "18:05")]
    [InlineData("6:05 PM", "18:05")]
    [InlineData("12:05 a.m.", "00:05")]
    [InlineData("12:05 pm", "12:05")]
    [InlineData("24:05", "")]
    [InlineData("13:05 pm", "")]
    [InlineData("0.7534", "")]
    public void Times_are_read_as_spreadsheets_write_them(string written, string time)
    {
        var read = Read($"date,start,session,week\n2026-12-07,{written},1,1\n");
        Assert.Equal(time, read.Entries[0].Start?.ToString("HH:mm", null) ?? "");
        Assert.Equal(
            time.Length > 0
                ? []
                : [$"line 2: start {(written.Contains(' ') ? $"'{written}'" : written)} is no time, as 18:05; not taken"],
            read.Remarks.Select(r => r.ToString())
        );
    }

    internal static LogReading Read(string text) => LogReader.Read("x", Encoding.UTF8.GetBytes(text));

    private static string Told(LogReading read) =>
        string.Join('|', read.Entries.Select(Told).DefaultIfEmpty("").Concat(read.Remarks.Select(r => r.ToString())));

    private static string Told(LogEntry entry)
    {
        string?[] words =
        [
            entry.Day.Iso(),
            entry.Start?.ToString("HH:mm", null),
            $"{entry.Session}",
            entry.Outcome switch
            {
                LogOutcome.Done => "done",
                LogOutcome.EndedEarly early => $"stopped {early.For}".TrimEnd(),
                _ => "not today",
            },
            entry.Minutes is { } minutes ? FormattableString.Invariant($"{minutes} min") : null,
            entry.Effort is { } effort ? $"effort {effort}" : null,
            entry.During is { } pain ? $"hurts {Told(pain)}" : null,
            entry.Worse == true ? "worse" : null,
            entry.Note.Length > 0 ? $"note [{entry.Note}]" : null,
            .. entry.Exercises.Select(Told),
        ];
        return string.Join(' ', words.Where(word => !string.IsNullOrEmpty(word)));
    }

    private static string Told(LoggedExercise line)
    {
        string?[] words =
        [
            line.Exercise.Text,
            line.Side?.Word(),
            $"{line.Sets}",
            line.Load,
            line.IsStopped ? "stopped" : null,
            line.Pain is { } pain ? Told(pain) : null,
        ];
        return string.Join(' ', words.Where(word => !string.IsNullOrEmpty(word)));
    }

    private static string Told(LoggedPain pain) => $"{pain.Level} {pain.Where?.On(pain.Side)}".Trim();
}
