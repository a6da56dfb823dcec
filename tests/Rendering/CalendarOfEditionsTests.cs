using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Rendering;

/// <summary>A calendar that has read the file of an edition reads that of the next. Which events take the place of which is said
/// by UID and SEQUENCE (RFC 5545, 3.8.4.7 and 3.8.7.4), read back with a calendar library.</summary>
[Trait("Slow", "yes")]
public sealed class CalendarOfEditionsTests
{
    private static readonly LittlePractice First = Made("2027-01-04");

    private static LittlePractice Made(string start, string dose = "2 x hold 30 s, rest 15 s, on left") =>
        Calendars.Practice("Europe/London", "18:30", start, 2, dose: dose);

    /// <summary>The practice with the first edition recorded in it.</summary>
    private static LittlePractice After(LittlePractice first, LittlePractice next)
    {
        var practice = first.Read();
        var client = practice.Clients[0];
        var content = EditionContents.Of(Training.Of(practice, client), Texts.Of(practice, client));
        var edition = new Edition(1, new(2027, 1, 2), new('0', 64), EditionText.HashOf(content), content, Location.Whole("x"));
        return next.With(Edition.PathOf(client.Id, 1), EditionText.Print(edition));
    }

    private static (string? Uid, int Sequence)[] Read(LittlePractice practice) =>
        [.. Calendars.EventsOf(practice.Plan("ansel")).Select(e => (e.Uid, e.Sequence))];

    [Fact]
    public void The_first_edition_and_the_same_again_say_no_revision()
    {
        Assert.All(Read(First), e => Assert.Equal(0, e.Sequence));
        Assert.Equal(Calendars.Of(First.Plan("ansel")), Calendars.Of(After(First, First).Plan("ansel")));
    }

    [Fact]
    public void The_next_edition_takes_the_place_of_the_first()
    {
        var next = After(First, Made("2027-01-04", "3 x hold 30 s, rest 15 s, on left"));
        Assert.Equal(Read(First).Select(e => (e.Uid, 1)), Read(next));
        Calendars.MustBeWellFormed(Calendars.Of(next.Plan("ansel"))!);
    }

    /// <summary>The first lasts until 17 January 2027.</summary>
    [Theory]
    [InlineData("2027-01-11", true)]
    [InlineData("2027-01-17", true)]
    [InlineData("2027-01-18", false)]
    [InlineData("2027-03-01", false)]
    public void A_programme_that_is_moved_takes_the_place_and_a_next_one_does_not(string start, bool isMoved)
    {
        var (before, after) = (Read(First).Select(e => e.Uid).ToArray(), Read(After(First, Made(start))).Select(e => e.Uid));
        Assert.Equal(isMoved ? before.Length : 0, before.Intersect(after).Count());
    }
}
