using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Where what is planned now stands among what was published.</summary>
public sealed class EditionNowTests
{
    private static readonly LittlePractice Winter = Made("2027-01-04", "2 x hold 30 s, each side");

    [Fact]
    public void Before_anything_is_published_it_is_the_first() =>
        Assert.Equal(new EditionNow(1, false, 0, null, []), Now(Winter));

    [Fact]
    public void What_was_published_last_is_that_edition() =>
        Assert.Equal(new EditionNow(1, true, 0, null, []), Now(Published(Winter, (1, Winter))));

    [Fact]
    public void What_is_other_will_be_the_next_and_says_what_is()
    {
        var next = Made("2027-01-04", "3 x hold 30 s, each side");
        var now = Now(Published(next, (1, Winter)));
        Assert.Equal((2, false, 0, 1), (now.Number, now.IsRecorded, now.ProgrammesBefore, now.Before?.Number));
        Assert.IsType<EditionChange.Doses>(Assert.Single(now.Changes));
    }

    /// <summary>The same again is held against the last that is other; a number that was left out counts.</summary>
    [Fact]
    public void The_last_that_is_other_is_compared()
    {
        var next = Made("2027-01-04", "3 x hold 30 s, each side");
        var now = Now(Published(next, (1, Winter), (2, Made("2027-01-04", "4 x hold 30 s, each side")), (5, next)));
        Assert.Equal((5, true, 2), (now.Number, now.IsRecorded, now.Before?.Number));
        Assert.IsType<EditionChange.Doses>(Assert.Single(now.Changes));
        var back = Now(Published(Winter, (1, Winter), (5, next)));
        Assert.Equal((6, false, 5), (back.Number, back.IsRecorded, back.Before?.Number));
    }

    /// <summary>Of a programme that was over before this one began nothing is compared; one that began before the other's last
    /// day took its place.</summary>
    [Theory]
    [InlineData("2027-01-18", 1)]
    [InlineData("2027-02-01", 1)]
    [InlineData("2027-01-17", 0)]
    [InlineData("2027-01-11", 0)]
    public void Another_programme_counts_where_the_one_before_was_over(string start, int over)
    {
        var now = Now(Published(Made(start, "3 x hold 30 s, each side"), (1, Winter)));
        Assert.Equal((2, false, over), (now.Number, now.IsRecorded, now.ProgrammesBefore));
        Assert.Null(now.Before);
        Assert.Empty(now.Changes);
    }

    private static LittlePractice Made(string start, string dose) =>
        Club
            .Empty.Exercise("sway", dose)
            .Member("ansel", ["- use: sway"], 2)
            .Edit("clients/ansel/programme.md", "start: 2027-01-04", $"start: {start}");

    private static LittlePractice Published(LittlePractice practice, params (int Number, LittlePractice Then)[] editions) =>
        editions.Aggregate(practice, (p, e) => p.With(Edition.PathOf(new("ansel"), e.Number), Printed(e.Number, e.Then)));

    private static string Printed(int number, LittlePractice practice)
    {
        var content = MadeProgramme.Content(practice.Read());
        return EditionText.Print(
            new(number, new(2027, 1, 2), new('0', 64), EditionText.HashOf(content), content, Location.Whole("x"))
        );
    }

    private static EditionNow Now(LittlePractice published)
    {
        var practice = published.Read();
        var client = practice.Clients.Single();
        return EditionNow.Of(Training.Of(practice, client), Texts.Of(practice, client));
    }
}
