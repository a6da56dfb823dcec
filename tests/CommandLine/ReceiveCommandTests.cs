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

    /// <summary>As a coach copies what came in a group.</summary>
    [Fact]
    public void What_several_sent_goes_to_each_by_the_key_of_each_session()
    {
        var file = folder.Sent(
            "sent.csv",
            Session(folder.Perrin, 7),
            Session(folder.Odo, 8),
            Session(folder.Perrin, 9),
            Session(null, 10)
        );
        Assert.Equal(
            (
                1,
                $"{file}: perrin, 2 sessions new, 0 known.\n{file}: odo, 1 session new, 0 known.\n{file}: not taken.\n"
                    + "  1 session does not say whose, among those of perrin and odo, and nothing of that was taken. Receive it "
                    + "by itself, with --client ID.\n",
                ""
            ),
            Told(folder.Receive(file))
        );
        Assert.Equal([7, 9], folder.Kept("perrin").Select(e => e.Day.Day));
        Assert.Equal([8], folder.Kept("odo").Select(e => e.Day.Day));
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
