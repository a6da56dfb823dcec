namespace Gradus.Tests.Auditing;

/// <summary>When a first day lies too far back: StartPassed.md. Today is Monday 2026-12-07; Bram trains on Saturdays.</summary>
public sealed class StartPassedTests
{
    [Theory]
    [InlineData("2026-12-01", 2, 0)]
    [InlineData("2026-11-30", 2, 1)] // a week ago
    [InlineData("2026-11-24", 2, 1)] // its last day
    [InlineData("2026-11-23", 2, 0)] // over
    [InlineData("2027-01-04", 2, 0)]
    public void It_is_told_from_a_week_on_until_it_is_over(string start, int weeks, int told) =>
        Assert.Equal(told, OneRule.Says("start-passed", Starting(start, weeks)).Length);

    [Theory]
    [InlineData("days: [Sat]", "2026-12-12")]
    [InlineData("days: [Mon]", "2026-12-07")]
    [InlineData("days: [Sun, Wed]", "2026-12-09")]
    [InlineData("days: 2 times a week", "2026-12-12")] // the days that he has
    public void It_proposes_the_next_day_to_train_on(string days, string start) =>
        Assert.Equal(
            $"If it has not begun, write 'start: {start}', the next day to train on.",
            Assert
                .Single(
                    OneRule.Says(
                        "start-passed",
                        Starting("2026-11-07", 6) + $"\n\nclients/bram/programme.md\n- days: [Sat]\n+ {days}"
                    )
                )
                .Help
        );

    [Fact]
    public void In_a_pause_it_proposes_a_day_behind_it() =>
        Assert.Contains(
            "start: 2026-12-19",
            Assert
                .Single(
                    OneRule.Says(
                        "start-passed",
                        Starting("2026-11-07", 6) + "\n+ pause: { from: 2026-12-01, until: 2026-12-13, because: holidays }"
                    )
                )
                .Help,
            StringComparison.Ordinal
        );

    [Fact]
    public void Who_has_sent_a_log_has_begun() =>
        Assert.Empty(
            OneRule.Says(
                "start-passed",
                Starting("2026-11-07", 6),
                "clients/bram/log.csv\n+ date,start,session,week,edition\n+ 2026-11-14,18:05,1,1,1"
            )
        );

    /// <summary>A record that cannot be read is one.</summary>
    [Fact]
    public void Who_has_a_record_has_pages() =>
        Assert.Empty(OneRule.Says("start-passed", Starting("2026-11-07", 6), "clients/bram/editions/1.yaml\n+ edition: 1"));

    private static string Starting(string start, int weeks) =>
        $"clients/bram/programme.md\n- start: 2026-12-07\n- weeks: 2\n+ start: {start}\n+ weeks: {weeks}";
}
