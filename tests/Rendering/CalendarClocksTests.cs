using System.Globalization;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Rendering;

/// <summary>The instants of calendar.ics, right across the changes of clocks.</summary>
[Trait("Slow", "yes")]
public sealed class CalendarClocksTests(ITestOutputHelper output)
{
    /// <summary>Sixty weeks with a session every day, so that each change comes once at least.</summary>
    [Theory]
    [InlineData("Europe/London", "18:30", 2)]
    [InlineData("Europe/London", "01:30", 2)]
    [InlineData("Pacific/Auckland", "07:15", 2)]
    [InlineData("Pacific/Auckland", "02:00", 2)]
    [InlineData("Australia/Sydney", "02:30", 2)]
    [InlineData("America/New_York", "23:45", 2)]
    [InlineData("Australia/Lord_Howe", "01:45", 2)]
    [InlineData("Australia/Lord_Howe", "12:00", 2)]
    [InlineData("America/St_Johns", "06:30", 2)]
    [InlineData("Asia/Kolkata", "06:00", 1)]
    [InlineData("Asia/Kathmandu", "00:00", 1)]
    [InlineData("Pacific/Kiritimati", "00:00", 1)]
    [InlineData("Pacific/Marquesas", "23:59", 1)]
    [InlineData("UTC", "00:00", 1)]
    public void Every_session_begins_when_the_clocks_of_the_place_show_its_hour(string zone, string hour, int offsets)
    {
        var plan = Calendars.Practice(zone, hour, "2027-01-04", 60).Plan("ansel");
        var at = TimeOnly.ParseExact(hour, "HH:mm", CultureInfo.InvariantCulture);
        var days = Enumerable.Range(0, 7 * 60).Select(new DateOnly(2027, 1, 4).AddDays).ToArray();
        var instants = Calendars.EventsOf(plan).Select(e => e.DtStart!.AsUtc).ToArray();
        Assert.Equal(days.Select(day => Calendars.Instant(zone, day, at)), instants);
        Assert.Equal(offsets, days.Zip(instants, (day, instant) => day.ToDateTime(at) - instant).Distinct().Count());
    }

    /// <summary>Clocks go on by an hour at 01:00 UTC on 28 March 2027 and back at 01:00 UTC on 25 October 2026 and 31 October
    /// 2027 in London; in Sydney back at 03:00 on 4 April 2027 and on at 02:00 on 3 October; in Auckland back at 03:00 on 4 April
    /// and on at 02:00 on 26 September; on Lord Howe, where it is half an hour, back at 02:00 on 4 April and on at 02:00 on 3
    /// October (IANA database).</summary>
    [Theory]
    [InlineData("Europe/London", "01:30", "2027-03-27", "2027-03-27 01:30")]
    [InlineData("Europe/London", "00:59", "2027-03-28", "2027-03-28 00:59")]
    [InlineData("Europe/London", "01:00", "2027-03-28", "2027-03-28 01:00")]
    [InlineData("Europe/London", "01:30", "2027-03-28", "2027-03-28 01:30")]
    [InlineData("Europe/London", "02:00", "2027-03-28", "2027-03-28 01:00")]
    [InlineData("Europe/London", "01:30", "2027-03-29", "2027-03-29 00:30")]
    [InlineData("Europe/London", "01:30", "2026-10-25", "2026-10-25 00:30")]
    [InlineData("Europe/London", "01:00", "2026-10-25", "2026-10-25 00:00")]
    [InlineData("Europe/London", "02:00", "2026-10-25", "2026-10-25 02:00")]
    [InlineData("Europe/London", "18:30", "2026-10-24", "2026-10-24 17:30")]
    [InlineData("Europe/London", "18:30", "2026-10-25", "2026-10-25 18:30")]
    [InlineData("Europe/London", "01:30", "2027-10-31", "2027-10-31 00:30")]
    [InlineData("Europe/London", "01:30", "2027-11-01", "2027-11-01 01:30")]
    [InlineData("Australia/Sydney", "02:30", "2027-04-04", "2027-04-03 15:30")]
    [InlineData("Australia/Sydney", "02:30", "2027-04-05", "2027-04-04 16:30")]
    [InlineData("Australia/Sydney", "02:30", "2027-10-03", "2027-10-02 16:30")]
    [InlineData("Australia/Sydney", "02:30", "2027-10-04", "2027-10-03 15:30")]
    [InlineData("Pacific/Auckland", "02:30", "2027-04-04", "2027-04-03 13:30")]
    [InlineData("Pacific/Auckland", "02:30", "2027-09-26", "2027-09-25 14:30")]
    [InlineData("Pacific/Auckland", "07:15", "2027-09-26", "2027-09-25 18:15")]
    [InlineData("Australia/Lord_Howe", "01:45", "2027-04-04", "2027-04-03 14:45")]
    [InlineData("Australia/Lord_Howe", "02:00", "2027-04-04", "2027-04-03 15:30")]
    [InlineData("Australia/Lord_Howe", "02:15", "2027-10-03", "2027-10-02 15:45")]
    [InlineData("Asia/Kolkata", "00:15", "2027-04-04", "2027-04-03 18:45")]
    public void A_skipped_hour_is_as_much_later_and_of_an_hour_that_comes_twice_the_first_is_taken(
        string zone,
        string hour,
        string day,
        string utc
    )
    {
        // The day in question is the last of the first week, so that the clocks have changed within the programme; and then its
        // very first.
        var date = DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        Assert.Equal(
            utc,
            Utc(
                Calendars
                    .Practice(zone, hour, date.AddDays(-6).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), 1)
                    .Plan("ansel"),
                6
            )
        );
        Assert.Equal(utc, Utc(Calendars.Practice(zone, hour, day, 1).Plan("ansel"), 0));
    }

    /// <summary>Programmes of three weeks around every change of clocks of two years, with every kind of fixed days.</summary>
    [Fact]
    public void Every_calendar_of_made_programmes_is_read_back_whole()
    {
        var (programmes, sessions) = (0, 0);
        foreach (var zone in (string[])["Europe/London", "Australia/Sydney", "Pacific/Auckland", "Asia/Kolkata"])
        foreach (var start in (string[])["2026-10-19", "2027-03-08", "2027-03-22", "2027-09-20", "2027-12-27", "2028-02-21"])
        foreach (
            var (days, hour) in ((string, string?)[])
                [("[Sun]", "02:30"), ("[Tue, Fri, Sat]", "18:30"), ("every 2 days", "07:00"), ("every 5 days", null)]
        )
        {
            var plan = Calendars.Practice(zone, hour, start, 3, days, "[2]").Plan("ansel");
            sessions += ReadBack(
                plan,
                Expected(start, days),
                zone,
                hour is null ? null : TimeOnly.ParseExact(hour, "HH:mm", CultureInfo.InvariantCulture)
            );
            programmes++;
        }

        output.WriteLine($"{sessions} sessions of {programmes} programmes");
        Assert.Equal((4 * 6 * 4, 4 * 6 * (3 + 9 + 11 + 5)), (programmes, sessions));
    }

    [Fact]
    public void Every_calendar_of_the_demonstration_practice_is_read_back_whole()
    {
        var practice = PracticeReader.Read(SourceFolder.Open(Repository.Path("content")), []).Practice!;
        var sessions = 0;
        foreach (var client in practice.Clients)
        {
            var plan = Planned.For(practice, client);
            sessions += ReadBack(plan, plan.Dates.Select(d => d.Date), client.Zone.Text, client.Hour);
        }

        output.WriteLine($"{sessions} sessions of {practice.Clients.Count} clients");
        Assert.True(sessions > 50);
    }

    /// <summary>The sample's own, whose instants were worked out by hand: Rufus trains at 18:30 in London, in winter, when its
    /// clocks are at UTC.</summary>
    [Fact]
    public void The_sample_has_its_days()
    {
        var events = Calendars
            .Read(File.ReadAllBytes(Repository.Path("site-output-sample", "rufus", "calendar.ics")))
            .Where(e => !e.IsAllDay)
            .ToArray();
        Assert.Equal(18, events.Length);
        Assert.Equal(new DateTime(2026, 12, 7, 18, 30, 0, DateTimeKind.Utc), events[0].DtStart!.AsUtc);
        Assert.Equal(new DateTime(2027, 1, 16, 18, 30, 0, DateTimeKind.Utc), events[^1].DtStart!.AsUtc);
    }

    private static int ReadBack(Plan plan, IEnumerable<DateOnly> days, string zone, TimeOnly? hour)
    {
        var bytes = Calendars.Of(plan)!;
        Calendars.MustBeWellFormed(bytes);
        var events = Calendars.Read(bytes);
        bool[] whole = [.. plan.Dates.Select(d => hour is null || d.Title == "Measured again")];
        Assert.Equal(
            days.Zip(whole, (day, isWhole) =>
                isWhole || hour is not { } at ? day.ToDateTime(TimeOnly.MinValue) : Calendars.Instant(zone, day, at)
            ),
            events.Zip(whole, (e, isWhole) => isWhole ? e.DtStart!.Value : e.DtStart!.AsUtc)
        );
        Assert.Equal(whole, events.Select(e => e.IsAllDay));
        Assert.Equal(
            plan.Dates.Zip(whole, (d, isWhole) => (d.Uid, d.Title, d.Note, isWhole ? (double?)null : d.Length.Value)),
            events.Select(e => (e.Uid!, e.Summary!, e.Description!, e.Duration?.ToTimeSpanUnspecified().TotalSeconds))
        );
        return events.Length;
    }

    private static IEnumerable<DateOnly> Expected(string start, string days)
    {
        var first = DateOnly.ParseExact(start, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        return Enumerable
            .Range(0, 21)
            .Where(n =>
                days.StartsWith("every ", StringComparison.Ordinal)
                    ? n % (days[6] - '0') == 0
                    : days.Contains($"{first.AddDays(n):ddd}", StringComparison.Ordinal)
            )
            .Select(first.AddDays);
    }

    private static string Utc(Plan plan, int session) =>
        Calendars.EventsOf(plan)[session].DtStart!.AsUtc.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
