using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Reading;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

public sealed class CalendarAgainstPlanTests
{
    /// <summary>Tess begins at 18:30 in London in winter, whose clocks are at UTC then.</summary>
    private const string First = "DTSTART:20261207T183000Z";

    private const string Stamp = "DTSTAMP:20261207T000000Z";

    private const string Title = "SUMMARY:Exercises\\, session 1";

    private static readonly string[] Events =
    [
        .. Text(FinishedSite.Site)
            .Split("BEGIN:VEVENT\r\n")
            .Skip(1)
            .Select(e => "BEGIN:VEVENT\r\n" + e.Split("END:VCALENDAR")[0]),
    ];

    public static readonly Series<PlantedFault> Faults =
    [
        Plant("a session moved by a day", First, "DTSTART:20261208T183000Z"),
        Plant("a session moved by an hour", First, "DTSTART:20261207T193000Z"),
        Plant("a session at the hour of wherever it is opened", First, "DTSTART:20261207T183000"),
        Plant("a session at the hour of another zone", First, "DTSTART;TZID=Pacific/Auckland:20261207T183000Z"),
        Plant("a session for the whole day", First, "DTSTART;VALUE=DATE:20261207"),
        Plant("a longer session", "DURATION:PT", "DURATION:PT1H"),
        Plant("a session without a length", "DURATION:", "X-LENGTH:"),
        Plant("a title that tells what for", Title, "SUMMARY:Sore ankle\\, session 1"),
        Plant("a second title that tells what for", Title, Title + "\r\nSUMMARY:Sore ankle"),
        Plant("what it is for beside the title", "SUMMARY:", "SUMMARY;X-FOR=\"sore ankle\":"),
        Plant("a line that is no property", Title, Title + "\r\nSore ankle"),
        Plant("another page", "session-1.html", "session-9.html"),
        Plant("a place that tells a condition", "DTSTAMP", "LOCATION:At the clinic for ankle injuries\r\nDTSTAMP"),
        Plant("an alarm", Title, Title + "\r\nBEGIN:VALARM\r\nACTION:AUDIO\r\nTRIGGER:-PT15M\r\nEND:VALARM"),
        Plant("a session that comes again and again", Title, Title + "\r\nRRULE:FREQ=DAILY"),
        Plant("a session without its stamp", Stamp + "\r\n", ""),
        Plant("a session that is something to do instead", "BEGIN:VEVENT\r\nUID", "BEGIN:VTODO\r\nUID"),
        Plant("the first session removed", Events[0], ""),
        Plant("the last session removed", Events[^1], ""),
        Plant("a session twice", Events[0], Events[0] + Events[0]),
        Plant("the last session twice", Events[^1], Events[^1] + Events[^1]),
        Plant("sessions in another order", Events[0] + Events[1], Events[1] + Events[0]),
        Plant(
            "a session too many",
            "END:VCALENDAR",
            "BEGIN:VEVENT\r\nDTSTART;VALUE=DATE:20270101\r\nEND:VEVENT\r\nEND:VCALENDAR"
        ),
        Plant(
            "something to do beside the sessions",
            "END:VCALENDAR",
            "BEGIN:VTODO\r\nSUMMARY:Show the ankle\r\nEND:VTODO\r\nEND:VCALENDAR"
        ),
        Plant("a calendar with a name", "VERSION:2.0", "VERSION:2.0\r\nX-WR-CALNAME:Tess and her ankle"),
        Plant("a name for calendars that is somebody's", "UID:", "UID:tess-"),
        Plant("a line torn in two", Title, "SUMMARY:Exercises\\, se\r\nssion 1"),
        Plant("a comma escaped too little and a stroke too much", "Exercises\\,", "Exercises\\\\,"),
        Plant("an empty file", Text(FinishedSite.Site), ""),
    ];

    public static readonly Series<PlantedFault> Fine =
    [
        Plant("folded at another place", Title, "SUMMARY:Exerc\r\n ises\\, session 1") with
        {
            Rules = "",
        },
        Plant("folded with a tab", Title, "SUMMARY:Exerc\r\n\tises\\, session 1") with
        {
            Rules = "",
        },
        Plant("folded twice, in a name too", Title, "SUMM\r\n ARY:Exerc\r\n ises\\, session 1") with
        {
            Rules = "",
        },
        Plant("names in small letters", "SUMMARY:", "summary:") with
        {
            Rules = "",
        },
        Plant("beginnings in small letters", "BEGIN:VEVENT", "begin:vevent") with
        {
            Rules = "",
        },
        Plant("another line end", "\r\nSUMMARY", "\nSUMMARY") with
        {
            Rules = "",
        },
        Plant(
            "another order within a session",
            $"UID:{FinishedSite.Plan.Dates[0].Uid}\r\n{Stamp}\r\n",
            $"{Stamp}\r\nUID:{FinishedSite.Plan.Dates[0].Uid}\r\n"
        ) with
        {
            Rules = "",
        },
    ];

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_read_back_as_a_calendar_reads_it(PlantedFault fault) => fault.MustBeFound();

    [Fact]
    public void A_site_without_its_calendar_is_not_whole()
    {
        var site = new Site(
            FinishedSite.Site.Client,
            FinishedSite.Site.Pages,
            FinishedSite.Site.Assets.Where(a => a.Path != PagePath.Calendar)
        );
        Assert.Contains(FinishedSite.Audit(site), f => f.Rule.Text == "calendar-against-plan");
    }

    /// <summary>A place in a file has a line and a column, from 1 on; a line of a calendar is told as a whole.</summary>
    [Theory]
    [InlineData(First, "DTSTART:20261208T183000Z")]
    [InlineData("VERSION:2.0", "VERSION:2.0\r\nX-WR-CALNAME:Tess")]
    public void It_is_told_from_the_beginning_of_a_line(string said, string instead) =>
        Assert.Equal(
            [1],
            FinishedSite
                .Audit(FinishedSite.With(PagePath.Calendar, said, instead))
                .Where(f => f.Rule.Text == "calendar-against-plan")
                .Select(f => f.At.Column)
        );

    /// <summary>Bram has no hour.</summary>
    [Theory]
    [InlineData("DTSTART;VALUE=DATE:20261212", "dtstart;value=date:20261212", false)]
    [InlineData("DTSTART;VALUE=DATE:20261212", "DTSTART;VALUE=DATE:20261213", true)]
    [InlineData("DTSTART;VALUE=DATE:20261212", "DTSTART:20261212T183000Z", true)]
    [InlineData("DTSTART;VALUE=DATE:20261212", "DTSTART:20261212", true)]
    [InlineData("DTSTART;VALUE=DATE:20261212", "DTSTART;VALUE=DATE:20261212\r\nDURATION:P3D", true)]
    [InlineData("DTSTART;VALUE=DATE:20261212", "DTSTART;VALUE=DATE:20261212\r\nDTEND;VALUE=DATE:20261219", true)]
    public void Whole_days_stay_whole_and_single_days(string said, string instead, bool found)
    {
        var practice = PracticeReader.Read(SourceFolder.Of(LittlePractice.Files.Select(Bytes)), []).Practice!;
        var plan = Planned.For(practice, practice.Find(new ClientId("bram"))!);
        var site = SiteRenderer.Render(plan, new Theme("little", LittlePractice.Theme.Select(Bytes)), [])!;
        Assert.Contains(said, Text(site), StringComparison.Ordinal);
        var faulty = new Site(
            site.Client,
            site.Pages,
            site.Assets.Select(a =>
                a.Path == PagePath.Calendar
                    ? a with
                    {
                        Bytes = Encoding.UTF8.GetBytes(Text(site).Replace(said, instead, StringComparison.Ordinal)),
                    }
                    : a
            )
        );
        Assert.Equal(found ? ["calendar-against-plan"] : [], RuleBook.Audit(plan, faulty, []).Select(f => f.Rule.Text));
    }

    private static PlantedFault Plant(string kind, string said, string instead) =>
        new(kind, PagePath.Calendar, said, instead, "calendar-against-plan");

    private static string Text(Site site) =>
        Encoding.UTF8.GetString(site.Assets.First(a => a.Path == PagePath.Calendar).Bytes.Span);

    private static KeyValuePair<string, byte[]> Bytes(KeyValuePair<string, string> file) =>
        KeyValuePair.Create(file.Key, Encoding.UTF8.GetBytes(file.Value));
}
