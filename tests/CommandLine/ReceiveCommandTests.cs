using System.Text;
using System.Text.Json;
using Gradus.Domain;
using Gradus.Reading;
using static Gradus.Tests.CommandLine.ReceivingFolder;

namespace Gradus.Tests.CommandLine;

/// <summary>A log comes home: to its own client, whole, once.</summary>
[Trait("Slow", "yes")]
public sealed class ReceiveCommandTests : IDisposable
{
    private readonly ReceivingFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_log_finds_its_client_and_is_read_by_the_practice()
    {
        LogEntry[] sent = [Session(folder.Perrin, 7), Session(folder.Perrin, 10)];
        var file = folder.Sent("sent.csv", sent);
        Assert.Equal((0, $"{file}: perrin, 2 sessions new, 0 known.\n", ""), Told(folder.Receive(file)));
        Assert.Equal(LogWriter.Write(sent), File.ReadAllText(folder.LogOf("perrin")));
        Assert.Equal(sent, folder.Kept("perrin").Select(e => e with { At = Location.Whole("") }));
        Assert.False(File.Exists(folder.LogOf("odo")));
    }

    [Fact]
    public void Received_twice_it_changes_no_byte()
    {
        var file = folder.Sent("sent.csv", Session(folder.Perrin, 7), Session(folder.Perrin, 10));
        folder.Receive(file);
        var before = FolderBytes.Of(folder.Practice);
        Assert.Equal((0, $"{file}: perrin, 0 sessions new, 2 known.\n", ""), Told(folder.Receive(file)));
        Assert.Equal(before, FolderBytes.Of(folder.Practice));
    }

    [Fact]
    public void The_morning_after_is_added_below_and_what_was_said_stays()
    {
        var first = Session(folder.Perrin, 7);
        folder.Receive(folder.Sent("one.csv", first));
        var before = File.ReadAllText(folder.LogOf("perrin"));
        var more = first with { Effort = null, Morning = new(3, Region.Find("knee"), Side.Left), Exercises = [] };
        var file = folder.Sent("two.csv", more, Session(folder.Perrin, 8, 2));
        Assert.Equal((0, $"{file}: perrin, 1 session new, 1 with more than before, 0 known.\n", ""), Told(folder.Receive(file)));
        var after = File.ReadAllText(folder.LogOf("perrin"));
        Assert.StartsWith(before, after, StringComparison.Ordinal);
        Assert.Equal(2, folder.Kept("perrin").Count);
        Assert.Equal(
            (4, 3, 2),
            (folder.Kept("perrin")[0].Effort, folder.Kept("perrin")[0].Morning?.Level, folder.Kept("perrin")[0].Exercises.Count)
        );
        folder.Receive(folder.Sent("one.csv", first));
        Assert.Equal(after, File.ReadAllText(folder.LogOf("perrin")));
    }

    [Fact]
    public void What_contradicts_is_added_once_and_an_older_file_does_not_turn_it_back()
    {
        var one = folder.Sent("one.csv", Session(folder.Perrin, 7));
        var two = folder.Sent("two.csv", Session(folder.Perrin, 7) with { Effort = 6 });
        folder.Receive(one);
        folder.Receive(two);
        var after = File.ReadAllText(folder.LogOf("perrin"));
        folder.Receive(one);
        folder.Receive(two, one);
        Assert.Equal(after, File.ReadAllText(folder.LogOf("perrin")));
        Assert.Equal(6, Assert.Single(folder.Kept("perrin")).Effort);
    }

    [Fact]
    public void A_message_that_is_piped_in_finds_its_client()
    {
        var line =
            $"Mon: well done\n> gradus 2026-12-07 18:05; edition 3f0c2a91; course {folder.Perrin}; week 1; session 1; done; "
            + "sets calf-lean left 2";
        line = line[..line.IndexOf('>', StringComparison.Ordinal)] + "> " + Summed(line.Split("> ")[1]);
        foreach (var words in new[] { [], new[] { "-" } })
        {
            var answer = Gradus.RunPiped(line, ["receive", folder.Practice, .. words, "--today", "2026-12-20"]);
            Assert.Equal((0, ""), (answer.Status, answer.Error));
            Assert.Matches("^what was pasted in: perrin, [01] sessions? new, [01] known\\.\n$", answer.Output);
        }

        Assert.Equal(2, Assert.Single(folder.Kept("perrin")).Exercises[0].Sets);
    }

    [Fact]
    public void A_folder_is_all_its_logs_and_nothing_else()
    {
        var sent = Directory.CreateDirectory(Path.Combine(folder.Root, "sent")).FullName;
        folder.Sent("sent/b.csv", Session(folder.Perrin, 7));
        folder.Sent("sent/a.TXT", Summed($"gradus 2026-12-08; course {folder.Odo}; week 1; session 1; done"));
        folder.Sent("sent/c.md", "no log");
        var answer = folder.Receive(sent);
        Assert.Equal(
            (0, $"{sent}/a.TXT: odo, 1 session new, 0 known.\n{sent}/b.csv: perrin, 1 session new, 0 known.\n", ""),
            Told(answer)
        );
    }

    public static TheoryData<string, string[], string> Refused =>
        new()
        {
            { "perrin", ["--client", "odo"], "this is the log of perrin, not of odo; nothing of it was taken" },
            {
                "both",
                [],
                "the logs of perrin and odo are put together here; nothing of it was taken. Receive the log of each by itself"
            },
            {
                "unknown",
                [],
                "nobody here has the programme that it is of; nothing of it was taken. Say whose it is with --client ID"
            },
            { "none", [], "it does not say whose it is; nothing of it was taken. Say it with --client ID" },
            {
                "strange",
                ["--client", "odo"],
                "1 session has no key that is known here, and nothing of that was taken: the programme of odo does not have "
                    + "handstand, plank"
            },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_is_not_the_clients_is_refused_and_changes_nothing(string kind, string[] words, string why)
    {
        var strange = Session("0123456789abcdef", 7);
        LogEntry[] entries = kind switch
        {
            "perrin" => [Session(folder.Perrin, 7)],
            "both" => [Session(folder.Perrin, 7), Session(folder.Odo, 8)],
            "unknown" => [strange],
            "none" => [strange with { Course = null }],
            _ => [strange with { Exercises = [Line("handstand", null), Line("calf-lean", null), Line("plank", null)] }],
        };
        var file = folder.Sent("sent.csv", entries);
        var before = FolderBytes.Of(folder.Practice);
        var answer = folder.Receive([file, .. words]);
        Assert.Equal((1, ""), (answer.Status, answer.Error));
        Assert.Contains($"  {why}.\n", answer.Output, StringComparison.Ordinal);
        Assert.Equal(
            before.Keys,
            FolderBytes.Of(folder.Practice).Keys.Where(k => !k.EndsWith("-lock", StringComparison.Ordinal))
        );
        Assert.Empty(folder.Kept("perrin").Concat(folder.Kept("odo")));
    }

    [Theory]
    [InlineData("0123456789abcdef")]
    [InlineData(null)]
    public void With_a_client_named_a_log_of_nobody_is_taken_where_its_exercises_are_the_clients(string? key)
    {
        var file = folder.Sent("sent.csv", Session(key, 7));
        Assert.Equal((0, $"{file}: odo, 1 session new, 0 known.\n", ""), Told(folder.Receive(file, "--client", "odo")));
        Assert.Single(folder.Kept("odo"));
    }

    [Fact]
    public void What_is_in_the_future_or_outside_the_programme_is_kept_and_told()
    {
        var file = folder.Sent(
            "sent.csv",
            Session(folder.Perrin, 1),
            Session(folder.Perrin, 7, 99),
            Session(folder.Perrin, 8) with
            {
                Exercises = [Line("plank", null)],
            },
            Session(folder.Perrin, 24),
            Session(folder.Perrin, 7) with
            {
                Day = new(2027, 1, 9),
            }
        );
        Assert.Equal(
            (
                0,
                $"{file}: perrin, 5 sessions new, 0 known.\n"
                    + "  kept, not counted: 1 session before the programme begins on 2026-12-07: it is of another, or the "
                    + "clock of the device is set wrong (2026-12-01).\n"
                    + "  kept, not counted: 1 session of a session that the programme does not have (2026-12-07).\n"
                    + "  kept, not counted: 2 sessions still to come, so the clock of the device may be set wrong (2026-12-24, "
                    + "2027-01-09).\n"
                    + "  kept, not counted: 'plank' is not in the programme (2026-12-08).\n",
                ""
            ),
            Told(folder.Receive(file))
        );
        Assert.Equal(5, folder.Kept("perrin").Count);
    }

    [Fact]
    public void What_cannot_wait_comes_first_also_of_a_log_that_is_not_taken()
    {
        var numb = Line("calf-lean", Side.Left) with { IsStopped = true, For = StopReason.Numb };
        var one = folder.Sent(
            "one.csv",
            Session(folder.Perrin, 7) with
            {
                Alarm = RedFlag.Chest,
                Outcome = new LogOutcome.EndedEarly(StopReason.Snap),
                Exercises = [numb],
            },
            Session(folder.Perrin, 8) with
            {
                Outcome = new LogOutcome.EndedEarly(StopReason.Sharp),
            }
        );
        var two = folder.Sent("two.csv", Session("0123456789abcdef", 7) with { Alarm = RedFlag.Sight });
        var three = folder.Sent("three.csv", "date,session,week,course,alarm\n2026-12-09,1,1," + folder.Odo + ",heart\n");
        var answer = folder.Receive(one, two, three);
        Assert.Equal(1, answer.Status);
        Assert.StartsWith(
            "This cannot wait:\n"
                + "  perrin, 2026-12-07, session 1: pain or pressure in the chest was noted: ask at once whether a doctor has "
                + "seen it, and let nothing be done before a doctor's leave.\n"
                + "  perrin, 2026-12-07, session 1: the session was stopped because something snapped or tore: ask today; "
                + "where it is still so, a clinician should see it today.\n"
                + "  perrin, 2026-12-07, session 1: calf-lean (left) was stopped because something went numb: ask today; where "
                + "it is still so, a clinician should see it today.\n"
                + $"  {two} (not taken), 2026-12-07, session 1: trouble with seeing was noted: ask at once whether a doctor "
                + "has seen it, and let nothing be done before a doctor's leave.\n"
                + $"  odo, {three}, line 2: alarm heart is a sign that is not known here: ask the client today.\n\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("2026-12-08", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("perrin, 2026", folder.Receive(one).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_spreadsheet_turned_is_taken_as_far_as_it_can_be_read()
    {
        var text = LogWriter
            .Write([Session(folder.Perrin, 7), Session(folder.Perrin, 13)])
            .Replace(',', ';')
            .Replace("2026-12-07", "07/12/2026", StringComparison.Ordinal)
            .Replace("2026-12-13", "13.12.2026", StringComparison.Ordinal);
        var file = Path.Combine(folder.Root, "sent.csv");
        File.WriteAllText(file, text, Encoding.Unicode);
        var answer = folder.Receive(file);
        Assert.Equal((1, ""), (answer.Status, answer.Error));
        Assert.StartsWith($"{file}: perrin, 1 session new, 0 known.\n", answer.Output, StringComparison.Ordinal);
        Assert.Contains(
            "  line 2: the date '07/12/2026' may be 2026-12-07 or 2026-07-12; not taken: send the file as the page saved it, "
                + "or write dates as 2026-12-07.\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "  line 5: the date '13.12.2026' is read as 2026-12-13, and so are those of 2 more lines.\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.Equal(2, Assert.Single(folder.Kept("perrin")).Exercises.Count);
    }

    [Fact]
    public void Fifty_megabytes_are_refused_at_once()
    {
        var file = Path.Combine(folder.Root, "large.csv");
        using (var large = File.Create(file))
            large.SetLength(50_000_000);
        var (status, output, _) = Told(folder.Receive(file));
        Assert.Equal(
            (1, $"{file}: not taken.\n  this is larger than 4 MiB, the most that is read; no log is so large.\n"),
            (status, output)
        );
    }

    [Theory]
    [InlineData("There is no file '/no/such.csv'.", "/no/such.csv")]
    [InlineData("There is no client 'perin' in '*'. Did you mean 'perrin'?", "--client", "perin")]
    public void What_cannot_be_carried_out_is_status_2_and_changes_nothing(string error, params string[] words)
    {
        var sent = folder.Sent("sent.csv", Session(folder.Perrin, 7));
        var answer = folder.Receive([sent, .. words]);
        Assert.Equal(
            (2, $"gradus: {error.Replace("*", folder.Practice, StringComparison.Ordinal)}\n"),
            (answer.Status, answer.Error)
        );
        Assert.False(File.Exists(folder.LogOf("perrin")));
    }

    [Fact]
    public void A_log_that_would_swallow_what_is_added_is_left_alone()
    {
        var log = "date,session,week,note\r\n2026-12-07,1,1,\"never closed";
        File.WriteAllText(folder.LogOf("perrin"), log);
        var answer = folder.Receive(folder.Sent("sent.csv", Session(folder.Perrin, 8)));
        Assert.Equal(2, answer.Status);
        Assert.StartsWith("gradus: Nothing can be written behind '", answer.Error, StringComparison.Ordinal);
        Assert.Equal(log, File.ReadAllText(folder.LogOf("perrin")));
    }

    [Fact]
    public void For_other_programs_it_is_json()
    {
        var file = folder.Sent("sent.csv", Session(folder.Perrin, 7) with { Alarm = RedFlag.Chest });
        using var json = JsonDocument.Parse(folder.Receive(file, "--format", "json").Output);
        Assert.Equal(1, json.RootElement.GetProperty("urgent").GetArrayLength());
        var log = Assert.Single(json.RootElement.GetProperty("logs").EnumerateArray());
        Assert.Equal(
            ("perrin", "file", 1),
            (log.GetProperty("client").GetString(), log.GetProperty("form").GetString(), log.GetProperty("new").GetInt32())
        );
    }

    [Fact]
    public void What_cannot_be_read_of_a_kept_log_is_a_warning_to_its_client_alone()
    {
        File.WriteAllText(folder.LogOf("perrin"), "date,session,week,effort\n2026-12-07,1,1,14\n\u202E,\u0000,,\n");
        var answer = Gradus.Run("audit", folder.Practice, "--client", "perrin", "--today", "2026-12-03");
        Assert.Equal(0, answer.Status);
        Assert.Contains(
            "clients/perrin/log.csv:2:1  warning  log-unreadable  The log cannot be read here: effort 14 is not 0 to 10; not "
                + "taken.\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            "log.csv",
            Gradus.Run("audit", folder.Practice, "--client", "odo", "--today", "2026-12-03").Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Receives_at_once_lose_no_line()
    {
        var days = Enumerable.Range(1, 12).ToArray();
        var files = days.Select(d => folder.Sent($"{d}.csv", Session(folder.Perrin, d), Session(folder.Perrin, 30))).ToArray();
        var answers = await Task.WhenAll(
            files.Chunk(3).Select(some => Task.Run(() => some.Select(f => folder.Receive(f).Status).ToArray()))
        );
        Assert.All(answers.SelectMany(a => a), status => Assert.Equal(0, status));
        Assert.Equal([.. days, 30], folder.Kept("perrin").Select(e => e.Day.Day));
        Assert.Equal(13, LogReader.Read("x", File.ReadAllBytes(folder.LogOf("perrin"))).Entries.Count);
    }

    private static (int, string, string) Told(Answer answer) => (answer.Status, answer.Output, answer.Error);

    private static string Summed(string text) => Reading.Logs.LogMessageTests.Summed(text);
}
