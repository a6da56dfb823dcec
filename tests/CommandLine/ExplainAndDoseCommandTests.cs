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
}
