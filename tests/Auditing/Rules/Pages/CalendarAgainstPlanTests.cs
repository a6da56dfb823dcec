using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class CalendarAgainstPlanTests
{
    private const string First = "DTSTART;VALUE=DATE:20261207";

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("a session moved by a day", First, "DTSTART;VALUE=DATE:20261208"),
        Plant("a session at an hour nobody named", First, "DTSTART:20261207T183000Z"),
        Plant("a title that tells what for", "SUMMARY:Exercises\\, session 1", "SUMMARY:Sore ankle\\, session 1"),
        Plant("another page", "session-1.html", "session-9.html"),
        Plant("a place", "DTSTAMP", "LOCATION:At the clinic\r\nDTSTAMP"),
        Plant("a session removed", "BEGIN:VEVENT\r\nUID", "BEGIN:VTODO\r\nUID"),
        Plant("a session too many", "END:VCALENDAR", "BEGIN:VEVENT\r\nDTSTART;VALUE=DATE:20270101\r\nEND:VEVENT\r\nEND:VCALENDAR"),
        Plant("a name for calendars that is somebody's", "UID:", "UID:tess-"),
        Plant("a line torn in two", "SUMMARY:Exercises\\, session 1", "SUMMARY:Exercises\\, se\r\nssion 1"),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Plant("folded at another place", "SUMMARY:Exercises\\, session 1", "SUMMARY:Exerc\r\n ises\\, session 1") with { Rules = "" },
        Plant("names in small letters", "SUMMARY:", "summary:") with { Rules = "" },
        Plant("another line end", "\r\nSUMMARY", "\nSUMMARY") with { Rules = "" },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_read_back_as_a_calendar_reads_it(PlantedFault fault) => fault.MustBeFound();

    [Fact]
    public void A_site_without_its_calendar_is_not_whole()
    {
        var site = new Site(FinishedSite.Site.Client, FinishedSite.Site.Pages, FinishedSite.Site.Assets.Where(a => a.Path != Plan.CalendarPath));
        Assert.Contains(FinishedSite.Audit(site), f => f.Rule.Text == "calendar-against-plan");
    }

    private static PlantedFault Plant(string kind, string said, string instead) => new(kind, Plan.CalendarPath, said, instead, "calendar-against-plan");
}
