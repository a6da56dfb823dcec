using System.Text;
using Gradus.Domain;
using Gradus.Rendering;
using Gradus.Tests.Domain;
using Gradus.Tests.House;
using Ical.Net.CalendarComponents;

namespace Gradus.Tests.Rendering;

/// <summary>calendar.ics (RFC 5545) read back by Ical.Net, a library of others.</summary>
public sealed class CalendarFileTests
{
    /// <summary>The instants as the system's own zones have them, which come from another copy of the IANA database than ours.</summary>
    [Theory]
    [InlineData("Europe/London", "18:30")]
    [InlineData("Europe/London", "01:30")]
    [InlineData("Pacific/Auckland", "07:15")]
    [InlineData("Australia/Sydney", "02:30")]
    [InlineData("America/New_York", "23:45")]
    [InlineData("Asia/Kolkata", "06:00")]
    [InlineData("Australia/Lord_Howe", "12:00")]
    [InlineData("UTC", "00:00")]
    public void Every_session_begins_when_the_clocks_of_the_place_show_its_hour(string zone, string hour)
    {
        var plan = Plan(zone, hour);
        var there = TimeZoneInfo.FindSystemTimeZoneById(zone);
        var events = Events(plan);
        Assert.Equal(7 * 60, events.Length);
        foreach (var (seen, index) in events.Select((e, i) => (e, i)))
        {
            var local = new DateOnly(2027, 1, 4).AddDays(index).ToDateTime(TimeOnly.ParseExact(hour, "HH:mm", System.Globalization.CultureInfo.InvariantCulture));
            if (there.IsInvalidTime(local) || there.IsAmbiguousTime(local)) continue;
            Assert.Equal(TimeZoneInfo.ConvertTimeToUtc(local, there), seen.DtStart!.AsUtc);
            Assert.Equal(plan.Dates[index].Length.Value, seen.Duration!.Value.ToTimeSpanUnspecified().TotalSeconds);
        }
    }

    /// <summary>Clocks go on by an hour at 01:00 UTC on 28 March 2027 and back at 01:00 UTC on 31 October 2027 in London; in Sydney back on 4 April at 16:00 UTC the day before, and on on 3 October (IANA database).</summary>
    [Theory]
    [InlineData("Europe/London", "01:30", "2027-03-28", "2027-03-28 01:30")]
    [InlineData("Europe/London", "01:30", "2027-03-29", "2027-03-29 00:30")]
    [InlineData("Europe/London", "01:30", "2027-10-31", "2027-10-31 00:30")]
    [InlineData("Europe/London", "01:30", "2027-11-01", "2027-11-01 01:30")]
    [InlineData("Australia/Sydney", "02:30", "2027-04-04", "2027-04-03 15:30")]
    [InlineData("Australia/Sydney", "02:30", "2027-10-03", "2027-10-02 16:30")]
    public void A_skipped_hour_is_as_much_later_and_of_an_hour_that_comes_twice_the_first_is_taken(string zone, string hour, string day, string utc)
    {
        var index = DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture).DayNumber - new DateOnly(2027, 1, 4).DayNumber;
        Assert.Equal(utc, Events(Plan(zone, hour))[index].DtStart!.AsUtc.ToString("yyyy-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Lines_are_folded_at_75_octets_and_end_as_the_standard_asks()
    {
        var plan = Plan("Europe/London", "18:30", "words/en.yaml", "calendar-title: \"Épée; exercises, \\\\ session {number}: žluťoučký kůň pěl ďábelské ódy, und dann noch einmal dasselbe 🤺🤺🤺🤺🤺🤺🤺🤺\"\n");
        var bytes = CalendarOf(plan)!.Bytes.ToArray();
        var text = new UTF8Encoding(false, true).GetString(bytes);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        var lines = text.Split("\r\n");
        Assert.All(lines, line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line));
        Assert.Contains(lines, line => Encoding.UTF8.GetByteCount(line) > 71);
        Assert.Contains("SUMMARY:Épée\\; exercises\\, \\\\ session 1: žluť", text.Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(plan.Dates[0].Title, Events(plan)[0].Summary);
        Assert.Contains("🤺🤺🤺🤺🤺🤺🤺🤺", plan.Dates[0].Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_client_without_an_hour_has_whole_days()
    {
        var events = Events(Plan("Europe/London", null));
        Assert.All(events, e => Assert.True(e.IsAllDay));
        Assert.Equal("2027-01-04", events[0].DtStart!.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Names_for_calendars_stay_when_hour_day_and_dose_change_and_tell_nobodys_name()
    {
        var (before, after) = (Plan("Europe/London", "18:30"), Plan("Asia/Kolkata", "07:00", "exercises/sway.md", null));
        Assert.Equal(before.Dates.Select(d => d.Uid), after.Dates.Select(d => d.Uid));
        Assert.Equal(before.Dates.Count, before.Dates.Select(d => d.Uid).Distinct().Count());
        Assert.All(before.Dates, d => Assert.True(Guid.TryParse(d.Uid, out _)));
        Assert.DoesNotContain("ansel", Encoding.UTF8.GetString(CalendarOf(before)!.Bytes.Span), StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("2 a week, a day between")]
    [InlineData("before play")]
    public void Without_a_fixed_day_there_is_no_calendar(string days) => Assert.Null(CalendarOf(Plan("Europe/London", "18:30", days: days)));

    [Fact]
    public void Every_second_day_begins_with_the_first_day() => Assert.Equal(
        ["20270104", "20270106", "20270108", "20270110", "20270112"],
        Plan("Europe/London", "18:30", days: "every 2 days").Dates.Take(5).Select(d => d.Date.ToString("yyyyMMdd", System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>The sample's own, whose instants were worked out by hand: Rufus trains at 18:30 in London, in winter, when its clocks are at UTC.</summary>
    [Fact]
    public void The_demonstration_practice_has_its_days()
    {
        var events = Read(File.ReadAllText(Repository.Path("site-output-sample", "rufus", "calendar.ics")));
        Assert.Equal(18, events.Length);
        Assert.Equal(new DateTime(2026, 12, 7, 18, 30, 0, DateTimeKind.Utc), events[0].DtStart!.AsUtc);
        Assert.Equal(new DateTime(2027, 1, 16, 18, 30, 0, DateTimeKind.Utc), events[^1].DtStart!.AsUtc);
    }

    private static Asset? CalendarOf(Plan plan) => SiteRenderer.Render(plan, ThemeFolder.Plain(), [])!.Assets.FirstOrDefault(a => a.Path == Gradus.Domain.Plan.CalendarPath);

    private static CalendarEvent[] Events(Plan plan) => Read(Encoding.UTF8.GetString(CalendarOf(plan)!.Bytes.Span));

    private static CalendarEvent[] Read(string text) => [.. Ical.Net.Calendar.Load(text)!.Events.OrderBy(e => e.DtStart!.Value)];

    /// <summary>Sixty weeks with a session every day.</summary>
    /// <param name="path">A file with another text; where the text is null the dose is another.</param>
    private static Plan Plan(string zone, string? hour, string? path = null, string? text = null, string days = "[Mon, Tue, Wed, Thu, Fri, Sat, Sun]")
    {
        var practice = Club.Empty.Exercise("sway", path is not null && text is null ? "3 x hold 45 s, rest 15 s, on left" : "2 x hold 30 s, rest 15 s, on left").Member("ansel", ["- use: sway"], 60)
            .Edit("clients/ansel/programme.md", "    days: [Mon]", $"    days: {days}")
            .Edit("clients/ansel/client.yaml", "zone: Europe/London", $"zone: {zone}{(hour is null ? "" : $"\nhour: \"{hour}\"")}");
        return (text is null ? practice : practice.With(path ?? "", text)).Plan("ansel");
    }
}
