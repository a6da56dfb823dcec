using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class WordsTests
{
    private static readonly Words English = LittlePractice.Golden.Read().Words.In("en")
        ?? throw new InvalidOperationException("No English.");

    [Theory]
    [InlineData(0, "0 seconds")]
    [InlineData(1, "1 second")]
    [InlineData(59, "59 seconds")]
    [InlineData(60, "1 minute")]
    [InlineData(61, "1 min 1 s")]
    [InlineData(119, "1 min 59 s")]
    [InlineData(120, "2 minutes")]
    [InlineData(121, "2 min 1 s")]
    [InlineData(3600, "60 minutes")]
    public void A_span_is_written_in_one_way(int seconds, string said) => Assert.Equal(said, English.Span(new(seconds)));

    [Theory]
    [InlineData(new[] { 3 }, "Week 3")]
    [InlineData(new[] { 1, 2 }, "Weeks 1 and 2")]
    [InlineData(new[] { 1, 2, 3 }, "Weeks 1 to 3")]
    [InlineData(new[] { 9, 10, 11, 12 }, "Weeks 9 to 12")]
    [InlineData(new[] { 1, 2, 4 }, "Weeks 1, 2 and 4")]
    [InlineData(new[] { 1, 3 }, "Weeks 1 and 3")]
    [InlineData(new[] { 1, 2, 3, 5, 6, 7 }, "Weeks 1, 2, 3, 5, 6 and 7")]
    public void Weeks_are_named_together(int[] weeks, string said) => Assert.Equal(said, English.Weeks(weeks.ToSeries()));

    [Fact]
    public void Things_are_joined_with_commas_and_and()
    {
        Assert.Equal("", English.And([]));
        Assert.Equal("mat", English.And(["mat"]));
        Assert.Equal("mat and wall", English.And(["mat", "wall"]));
        Assert.Equal("mat, wall and step", English.And(["mat", "wall", "step"]));
    }

    [Fact]
    public void A_date_has_weekday_and_month_in_words() => Assert.Equal("Monday 7 December 2026", English.Date(new(2026, 12, 7)));

    [Theory]
    [InlineData(2, 2, "2")]
    [InlineData(2, 3, "2 to 3")]
    public void A_number_may_be_a_range(int low, int high, string said) => Assert.Equal(said, English.Number(new(low, high)));

    [Fact]
    public void Braces_in_what_is_filled_in_are_left_alone() =>
        Assert.Equal("{n} and {before}", English.Say("and", ("before", "{n}"), ("after", "{before}")));

    [Fact]
    public void A_missing_word_or_a_missing_fill_is_loud()
    {
        Assert.Throws<KeyNotFoundException>(() => English.Say("no-such-word"));
        Assert.Throws<ArgumentException>(() => English.Say("seconds"));
    }
}
