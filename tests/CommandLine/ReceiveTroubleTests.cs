using System.Text;
using Gradus.Domain;
using Gradus.Reading;
using static Gradus.Tests.CommandLine.ReceivingFolder;

namespace Gradus.Tests.CommandLine;

/// <summary>What is urgent in a log, wrong with it, or in its way.</summary>
[Trait("Slow", "yes")]
public sealed class ReceiveTroubleTests : IDisposable
{
    private readonly ReceivingFolder folder = new();

    public void Dispose() => folder.Dispose();

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
                + "  odo, 2026-12-09, session 1: a sign that is not known here was noted: ask at once whether a doctor has seen "
                + "it, and let nothing be done before a doctor's leave.\n"
                + $"  odo, {three}, line 2: alarm heart is a sign that is not known here: ask the client today.\n\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("2026-12-08", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("perrin, 2026", folder.Receive(one).Output, StringComparison.Ordinal);
    }

    /// <summary>A slip of the pen elsewhere in a line must not hide a sign in it.</summary>
    [Theory]
    [InlineData("date,session,week,alarm\n07/12/2026,1,1,speech\n", "speech")]
    [InlineData("date,session,week,stopped-for\n2026-12-07,1,,snap\n", "snap")]
    [InlineData("date,session,week,pain-during\n2026-12-07,,1,7 chest\n", "7 chest")]
    [InlineData("date,session,week,alarm\n2026-12-07,1,1,sight,more\n", "sight")]
    [InlineData("gradus 2026-12-07; week 1; session 1; stopped; alarm chest; sum 00000000\n", "chest")]
    public void What_cannot_wait_is_said_of_a_line_that_is_refused(string text, string sign)
    {
        var answer = folder.Receive(folder.Sent("sent.txt", text), "--client", "perrin");
        Assert.StartsWith("This cannot wait:\n", answer.Output, StringComparison.Ordinal);
        Assert.Contains($"it was not taken, and it says '{sign}': ask the client today", answer.Output, StringComparison.Ordinal);
        Assert.Equal(1, answer.Status);
    }

    [Fact]
    public void Pain_in_the_chest_and_severe_pain_cannot_wait()
    {
        var chest = Session(folder.Perrin, 7) with { During = new(1, Region.Find("chest"), null) };
        var back = Session(folder.Perrin, 8) with { During = new(9, Region.Find("lower-back"), null) };
        var knee = Session(folder.Perrin, 9) with { During = new(7, Region.Find("knee"), Side.Left) };
        var output = folder.Receive(folder.Sent("sent.csv", chest, back, knee)).Output;
        Assert.Contains("2026-12-07, session 1: pain in the chest was noted", output, StringComparison.Ordinal);
        Assert.Contains("2026-12-08, session 1: pain of 9 out of 10 was noted", output, StringComparison.Ordinal);
        Assert.DoesNotContain("2026-12-09, session 1: pain", output, StringComparison.Ordinal);
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
        var answer = folder.Receive(file);
        Assert.Equal(
            (1, $"{file}: not taken.\n  this is larger than 4 MiB, the most that is read; no log is so large.\n"),
            (answer.Status, answer.Output)
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

    /// <summary>What is written freely is read by nobody but the coach, who may have thirty of them.</summary>
    [Theory]
    [InlineData("felt tightness in my chest while drawing", "chest")]
    [InlineData("My arm went NUMB for an hour", "NUMB")]
    [InlineData("danach war der Fuß geschwollen", "geschwollen")]
    [InlineData("my calf is hot and thick since the flight", "hot and thick")]
    [InlineData("could not pee this morning", "not pee")]
    [InlineData("my face drooped for a minute, then it was fine", "face drooped")]
    [InlineData("heart was skipping beats for ten minutes", "heart was skipping")]
    [InlineData("my knee swelled up overnight", "swelled")]
    [InlineData("seeing double since breakfast", "seeing double")]
    [InlineData("started warfarin last week", "warfarin")]
    [InlineData("lost 6 kg without trying", "without trying")]
    [InlineData("slipped on the ice and hit my head", "hit my head")]
    [InlineData("mir war schwarz vor Augen", "schwarz vor Augen")]
    [InlineData("Knie ist dick und heiss", "dick und heiss")]
    [InlineData("a wee bit stiff, popcorn and a film after", null)]
    [InlineData("the calf lean went well, my children were chesty", null)]
    [InlineData("a snapshot of it, and taubes Gefühl keines", null)]
    public void A_note_with_a_word_that_cannot_wait_is_told_first(string note, string? word)
    {
        var file = folder.Sent("sent.csv", Session(folder.Perrin, 7) with { Note = note });
        var answer = folder.Receive(file);
        Assert.Equal(0, answer.Status);
        Assert.StartsWith(
            word is null
                ? $"{file}: perrin"
                : "This cannot wait:\n"
                    + $"  perrin, 2026-12-07, session 1: the note has the word '{word}' in it: \"{note}\": read it, and "
                    + "ask today.\n",
            answer.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_message_that_is_no_log_is_read_for_what_cannot_wait()
    {
        var file = Path.Combine(folder.Root, "message.txt");
        File.WriteAllText(file, "hi coach, left shoulder 7/10, and my chest felt tight");
        var answer = folder.Receive(file);
        Assert.Equal(1, answer.Status);
        Assert.StartsWith(
            $"This cannot wait:\n  {file}, it was not taken, and it says 'chest': ask the client today.\n",
            answer.Output,
            StringComparison.Ordinal
        );
    }
}
