using System.Text.Json;
using System.Xml;

namespace Gradus.Tests.CommandLine;

public sealed class ExplainAndDoseCommandTests
{
    [Fact]
    public void Explain_lists_every_rule_with_one_line()
    {
        var answer = Gradus.Run("explain");
        Assert.Equal(0, answer.Status);
        var lines = answer.Output.TrimEnd('\n').Split('\n');
        Assert.True(lines.Length > 25);
        Assert.All(lines, line => Assert.Matches("^[a-z]+(-[a-z]+)* +\\S.*\\.$", line));
    }

    [Fact]
    public void Explain_prints_the_page_of_a_rule()
    {
        var answer = Gradus.Run("explain", "dose-outside-envelope");
        Assert.Equal(0, answer.Status);
        Assert.StartsWith("# dose-outside-envelope\n", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dose_is_worked_out_as_json()
    {
        var answer = Gradus.Run("dose", "4 x press 2 min at 30 %, rest 3 min", "--format", "json");
        Assert.Equal(0, answer.Status);
        var low = JsonDocument.Parse(answer.Output).RootElement.GetProperty("low");

        // Clinical Hypertension 2023, 29, Table 4: 4 times 2 minutes with 3 minutes rest are 17 minutes a session.
        Assert.Equal(XmlConvert.ToTimeSpan("PT17M").TotalSeconds, low.GetProperty("seconds").GetInt32());
        Assert.Equal(7, low.GetProperty("steps").GetArrayLength());
    }

    [Fact]
    public void An_unreadable_dose_shows_the_place_and_the_remedy()
    {
        var answer = Gradus.Run("dose", "3 x hold 30 seconds", "--format", "json");
        Assert.Equal(1, answer.Status);
        Assert.Equal("", answer.Output);
        var lines = answer.Error.Split('\n');
        Assert.StartsWith("gradus: ", lines[0], StringComparison.Ordinal);
        Assert.Equal(lines[1].IndexOf("seconds", StringComparison.Ordinal), lines[2].IndexOf('^', StringComparison.Ordinal));
        Assert.True(lines[3].Trim().Length > 0);
    }

    [Fact]
    public void A_line_over_weeks_is_shown_with_its_steps_and_what_cannot_be_walked()
    {
        var answer = Gradus.Run("dose", "2-3 x hold 30-60 s, each side", "--weeks", "4", "--lighter", "3");
        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Contains(
            "week 2              2:30  +17 %  2 x hold 35 s, each side  stretch 140 s\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "week 3   lighter    1:20  -50 %  1 x hold 35 s, each side  stretch 70 s\n",
            answer.Output,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "In its 3 full weeks this line grows from 2 x hold 30 s to 2 x hold 45 s",
            answer.Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_lighter_week_from_which_nothing_can_be_taken_is_named() =>
        Assert.Contains(
            "Nothing can be taken away from this line in week 2, which is a lighter one: its dose is too small.",
            Gradus.Run("dose", "move 1-3 reps", "--weeks", "3", "--lighter", "2").Output,
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("4,x", "--lighter takes weeks with commas between them, as 4,8; '4,x' is something else.")]
    [InlineData("0", "--lighter takes weeks with commas between them, as 4,8; '0' is something else.")]
    [InlineData("7", "--lighter names week 7, which is not among those of --weeks.")]
    public void A_lighter_week_is_one_of_those_that_are_asked_for(string lighter, string said)
    {
        var answer = Gradus.Run("dose", "hold 30 s", "--weeks", "6", "--lighter", lighter);
        Assert.Equal(2, answer.Status);
        Assert.Contains(said, answer.Error, StringComparison.Ordinal);
    }

    /// <summary>Every week lighter, a single one, a year: a dose for each week, and no trouble.</summary>
    [Theory]
    [InlineData("1", "1", 1)]
    [InlineData("1", "", 1)]
    [InlineData("3", "1,2,3", 3)]
    [InlineData("52", "1", 52)]
    public void Any_weeks_have_doses(string weeks, string lighter, int lines)
    {
        var answer = Gradus.Run(
            "dose",
            "2-3 x press 10-20 s at 20-30 to 60-80% in 5 steps",
            "--weeks",
            weeks,
            "--lighter",
            lighter
        );
        Assert.Equal((0, ""), (answer.Status, answer.Error));
        Assert.Equal(lines, answer.Output.Split('\n').Count(l => l.StartsWith("week ", StringComparison.Ordinal)));
    }
}
