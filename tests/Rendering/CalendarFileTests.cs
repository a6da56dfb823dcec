using System.Globalization;
using Gradus.Planning;

namespace Gradus.Tests.Rendering;

/// <summary>The lines of calendar.ics (RFC 5545), and what is read from them.</summary>
[Trait("Slow", "yes")]
public sealed class CalendarFileTests
{
    /// <summary>The two texts as the file has them with its folds undone, by section 3.3.11: strokes, semicolons and commas are
    /// escaped, a colon and quotes never. A line end in the words of the practice is a blank already.</summary>
    [Theory]
    [InlineData("Épée; exercises, session {number}", @"SUMMARY:Épée\; exercises\, session 1")]
    [InlineData(@"A \\ stroke {number}", @"SUMMARY:A \\ stroke 1")]
    [InlineData(@"A stroke and n: \\n {number}", @"SUMMARY:A stroke and n: \\n 1")]
    [InlineData(@"Time: 10:30, \""now\"" {number}", @"SUMMARY:Time: 10:30\, ""now"" 1")]
    [InlineData(@"\\;\\,;;,, {number}", @"SUMMARY:\\\;\\\,\;\;\,\, 1")]
    [InlineData("BEGIN:VEVENT {number}", "SUMMARY:BEGIN:VEVENT 1")]
    [InlineData(@"one\ntwo {number}", "SUMMARY:one two 1")]
    [InlineData(@"one\r\ntwo {number}", "SUMMARY:one two 1")]
    public void Texts_are_escaped_and_read_back(string title, string line)
    {
        var plan = Titled(title);
        var bytes = Calendars.Of(plan)!;
        Calendars.MustBeWellFormed(bytes);
        Assert.Contains("\r\n" + line + "\r\n", Unfolded(bytes), StringComparison.Ordinal);
        Assert.Equal(plan.Dates[0].Title, Calendars.Read(bytes)[0].Summary);
    }

    /// <summary>Characters of one to four octets, moved along octet by octet, so that each place of a fold is met.</summary>
    [Theory]
    [InlineData("a")]
    [InlineData("ž")]
    [InlineData("€")]
    [InlineData("🤺")]
    [InlineData("e\u0301")]
    [InlineData(",")]
    [InlineData("aé€🤺")]
    public void No_line_is_too_long_and_no_character_torn(string text)
    {
        for (var before = 0; before < 8; before++)
        {
            var title = new string('x', before) + string.Concat(Enumerable.Repeat(text, 90));
            var bytes = Calendars.Of(Titled(title + " {number}"))!;
            Calendars.MustBeWellFormed(bytes);
            Assert.Contains("\r\n ", Calendars.Text(bytes), StringComparison.Ordinal);
            Assert.Equal(title + " 1", Calendars.Read(bytes)[0].Summary);
        }
    }

    /// <summary>With the eight octets of <c>SUMMARY:</c>, 67 more fill a line to its last octet, and 68 begin another.</summary>
    [Theory]
    [InlineData(66, 74, false)]
    [InlineData(67, 75, false)]
    [InlineData(68, 75, true)]
    public void The_last_octet_of_a_line_is_used(int octets, int first, bool folded)
    {
        var lines = Calendars.TextOf(Titled(new string('x', octets - 2) + " {number}")).Split("\r\n");
        var at = Array.FindIndex(lines, l => l.StartsWith("SUMMARY:", StringComparison.Ordinal));
        Assert.Equal((first, folded), (lines[at].Length, lines[at + 1][0] == ' '));
    }

    [Fact]
    public void A_client_without_an_hour_has_whole_days()
    {
        var bytes = Calendars.Of(Made(null))!;
        var events = Calendars.Read(bytes);
        Assert.Equal(70, events.Length);
        Assert.All(events, e => Assert.True(e.IsAllDay));
        Assert.Equal("2027-01-04", events[0].DtStart!.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        Assert.DoesNotContain("DURATION", Calendars.Text(bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_for_calendars_stay_when_hour_zone_start_and_dose_change()
    {
        var before = Made("18:30").Dates.Select(d => d.Uid).ToArray();
        Assert.Equal(before, Uids(Calendars.Practice("Europe/London", "07:00", "2027-01-04", 10)));
        Assert.Equal(before, Uids(Calendars.Practice("Europe/London", null, "2027-01-04", 10)));
        Assert.Equal(before, Uids(Calendars.Practice("Asia/Kolkata", "18:30", "2027-01-04", 10)));
        Assert.Equal(before, Uids(Calendars.Practice("Europe/London", "18:30", "2027-03-01", 10)));
        Assert.Equal(before, Uids(Calendars.Practice("Europe/London", "18:30", "2027-01-06", 10)));
        Assert.Equal(
            before,
            Uids(Calendars.Practice("Europe/London", "18:30", "2027-01-04", 10, dose: "3 x hold 45 s, rest 15 s, on left"))
        );
        Assert.Equal(before, Uids(Calendars.Practice("Europe/London", "18:30", "2027-01-04", 12)).Take(before.Length));
    }

    [Fact]
    public void Names_for_calendars_are_each_one_session_s_alone_and_nobody_s_name_is_in_the_file()
    {
        var plan = Made("18:30");
        var bytes = Calendars.Of(plan)!;
        Assert.Equal(70, Calendars.Read(bytes).Select(e => e.Uid).Distinct(StringComparer.Ordinal).Count());
        Assert.All(plan.Dates, d =>
            Assert.Matches("^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", d.Uid)
        );
        foreach (var name in (string[])["ansel", "Wherry", "Hesper", "Quill", "Sluice", "Footwork", "sway"])
            Assert.DoesNotContain(name, Unfolded(bytes), StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("2 a week, a day between")]
    [InlineData("before play")]
    public void Without_a_fixed_day_there_is_no_calendar(string days) =>
        Assert.Null(Calendars.Of(Calendars.Practice("Europe/London", "18:30", "2027-01-04", 2, days).Plan("ansel")));

    private static string Unfolded(byte[] bytes) => Calendars.Text(bytes).Replace("\r\n ", "", StringComparison.Ordinal);

    private static IEnumerable<string> Uids(LittlePractice practice) => practice.Plan("ansel").Dates.Select(d => d.Uid);

    private static Plan Made(string? hour) => Calendars.Practice("Europe/London", hour, "2027-01-04", 10).Plan("ansel");

    private static Plan Titled(string title) =>
        Calendars
            .Practice("Europe/London", "18:30", "2027-01-04", 1)
            .With("words/en.yaml", $"calendar-title: \"{title}\"\n")
            .Plan("ansel");
}
