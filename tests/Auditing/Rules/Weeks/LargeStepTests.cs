using Gradus.Auditing;

namespace Gradus.Tests.Auditing;

public sealed class LargeStepTests
{
    /// <summary>Every second day is four days in one week and three in the next: 4 after 3 would be a third more, and is none.
    /// Sets from 2 to 3 are 50 per cent; a lighter week is left out of account.</summary>
    [Theory]
    [InlineData("every 2 days", "1: 2 x hold 30 s", "[]", "")]
    [InlineData("[Mon]", "1: 2 x hold 30 s, 2: 3 x hold 30 s", "[]", "2: from 60 to 90, 50")]
    [InlineData("every 2 days", "1: 2 x hold 30 s, 2: 3 x hold 30 s", "[]", "2: from 210 to 315, 50")]
    [InlineData("[Mon]", "1: 3 x hold 30 s", "[2]", "")]
    [InlineData("[Mon]", "1: 2 x hold 30 s, 3: 2 x hold 39 s", "[2]", "")]
    [InlineData("[Mon]", "1: 2 x hold 30 s, 3: 2 x hold 40 s", "[2]", "3: from 60 to 80, 33")]
    [InlineData("[Mon]", "2: 2 x hold 30 s", "[]", "")]
    [InlineData("before play", "1: 2 x hold 30 s, 2: 3 x hold 30 s", "[]", "")]
    public void Only_growth_beyond_the_limit_is_noted(string days, string byWeek, string lighter, string said)
    {
        var practice = Club
            .Empty.Exercise("sway", "1-4 x hold 10-90 s, on left")
            .Member("ansel", [$"- use: sway\n  by-week: {{ {byWeek} }}"], 4, lighter: lighter)
            .Edit("clients/ansel/programme.md", "    days: [Mon]", $"    days: {days}")
            .Read();
        var found = RuleBook
            .Check(practice, Planned.Trainings(practice), new DateOnly(2027, 1, 4))
            .Where(f => f.Rule.Text == "large-step")
            .Select(f => f.Message)
            .ToArray();
        Assert.Equal(said.Length == 0 ? 0 : 1, found.Length);
        if (said.Length > 0)
        {
            var (week, figures) = (said.Split(": ")[0], said.Split(": ")[1].Split(", "));
            Assert.Contains($"week {week}", found[0], StringComparison.Ordinal);
            Assert.Contains($"{figures[0]} stretch seconds a week, {figures[1]} per cent", found[0], StringComparison.Ordinal);
        }
    }

    /// <summary>Two uses that grow are one step; 60 to 90 beside 60 that stay are 25 per cent.</summary>
    [Theory]
    [InlineData("1: 2 x hold 30 s, 2: 3 x hold 30 s", "from 120 to 180 stretch seconds a week, 50 per cent")]
    [InlineData("1: 2 x hold 30 s", "")]
    public void The_step_of_all_uses_together_is_held_against_the_limit(string second, string said)
    {
        var practice = Club
            .Empty.Exercise("sway", "1-4 x hold 10-90 s, on left")
            .Member(
                "ansel",
                [$"- use: sway\n  by-week: {{ 1: 2 x hold 30 s, 2: 3 x hold 30 s }}\n- use: sway\n  by-week: {{ {second} }}"],
                4
            )
            .Read();
        var found = RuleBook
            .Check(practice, Planned.Trainings(practice), new DateOnly(2027, 1, 4))
            .Where(f => f.Rule.Text == "large-step")
            .Select(f => f.Message)
            .ToArray();
        Assert.Equal(said.Length == 0 ? 0 : 1, found.Length);
        Assert.All(found, message => Assert.Contains(said, message, StringComparison.Ordinal));
    }

    [Fact]
    public void Even_growth_is_never_noted()
    {
        var practice = Club.Empty.Exercise("sway", "1-10 x hold 10-120 s, on left").Member("ansel", ["- use: sway"], 3).Read();
        Assert.DoesNotContain(RuleBook.Check(practice, Planned.Trainings(practice), new DateOnly(2027, 1, 4)), f =>
            f.Rule.Text == "large-step"
        );
    }
}
