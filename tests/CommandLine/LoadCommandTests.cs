using System.Text.Json;
using Gradus.Tests.House;

namespace Gradus.Tests.CommandLine;

[Trait("Slow", "yes")]
public sealed class LoadCommandTests
{
    private static readonly string Content = Repository.Path("content");

    /// <summary>By hand from content/clients/rufus/programme.md, two sessions a week on the rear leg, which is his right one:
    /// week 1 2 x 30 s of hold, so 120 s; week 2 2 x 45 s, so 180 s and 50 % more, and 2 x 20 s of press at 20 to 80 %, which is
    /// 50 % on average: 80 s, 40 effort-seconds.</summary>
    [Fact]
    public void Each_motion_and_side_has_its_weeks_with_the_change()
    {
        var answer = Gradus.Run("load", Content, "--client", "rufus");
        Assert.Equal((0, ""), (answer.Status, answer.Error));
        var lines = answer.Output.Split('\n');
        var at = Array.IndexOf(lines, "ankle dorsiflexion, right");
        Assert.True(at > 0);
        Assert.Equal(["1", "120", "0", "0", "0", "2", "2", "below", "5", "min", "a", "week"], Words(lines[at + 2]));
        Assert.Equal(
            ["2", "140", "(+17", "%)", "80", "(new)", "40", "(new)", "0", "2", "2", "below", "5", "min", "a", "week"],
            Words(lines[at + 3])
        );
        Assert.Contains("Rufus Elphick has 25 min for a session", answer.Output, StringComparison.Ordinal);
        Assert.Contains("second-hand: in a text that quotes it.", answer.Output, StringComparison.Ordinal);
        Assert.Contains("effort-weighted s", answer.Output, StringComparison.Ordinal);
        Assert.Contains("seconds times the effort, so that 10 s at 50 % count 5.", answer.Output, StringComparison.Ordinal);
    }

    /// <summary>Nuala's wrist is trained before play alone, so its week has no number of times.</summary>
    [Fact]
    public void A_motion_that_is_trained_before_play_alone_has_no_table_of_zeros()
    {
        var lines = Gradus.Run("load", Content, "--client", "nuala").Output.Split('\n');
        var at = Array.IndexOf(lines, "wrist extension, right: only before play");
        Assert.True(at > 0, string.Join('\n', lines));
        Assert.Equal("", lines[at + 1]);
    }

    [Fact]
    public void Programs_get_the_same_figures()
    {
        var answer = Gradus.Run("load", Content, "--client", "rufus", "--format", "json");
        var client = Assert.Single(JsonDocument.Parse(answer.Output).RootElement.GetProperty("clients").EnumerateArray());
        Assert.Equal("rufus", client.GetProperty("client").GetString());
        var week = client
            .GetProperty("weeks")
            .EnumerateArray()
            .Single(w =>
                w.GetProperty("motion").GetString() == "ankle dorsiflexion"
                && w.GetProperty("side").GetString() == "right"
                && w.GetProperty("week").GetInt32() == 2
            );
        Assert.Equal(
            (140, 80, 40m, 2),
            (
                week.GetProperty("stretchSeconds").GetInt32(),
                week.GetProperty("contractionSeconds").GetInt32(),
                week.GetProperty("effortSeconds").GetDecimal(),
                week.GetProperty("days").GetInt32()
            )
        );
    }

    [Fact]
    public void A_client_who_is_blocked_is_named()
    {
        var folder = Directory.CreateTempSubdirectory("gradus-load-").FullName;
        try
        {
            var practice = Path.Combine(folder, "practice");
            Gradus.Run("begin", practice);
            var programme = Path.Combine(practice, "clients", "perrin", "programme.md");
            File.WriteAllText(
                programme,
                File.ReadAllText(programme).Replace("use: calf-lean", "use: calf-leen", StringComparison.Ordinal)
            );
            var answer = Gradus.Run("load", practice);
            Assert.Equal(1, answer.Status);
            Assert.Contains("an error stands in the way of perrin", answer.Error, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string[] Words(string line) => line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
