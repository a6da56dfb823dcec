using System.Text;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Tests.Auditing;

/// <summary>When Tess is measured again stands on the page of the weeks as the plan says it, and in the calendar.</summary>
public sealed class RetestOnPagesTests
{
    private const string Said =
        "Ottoline Marsh measures you again on Friday 18 December 2026. What is measured: ankle dorsiflexion.";

    private const string Start = "title: A longer lunge\nstart: 2026-12-07\nweeks: 2\n";

    private static readonly (Plan Plan, Site Site) InWeek = Made("2026-12-18");

    [Theory]
    [InlineData("2026-12-18")]
    [InlineData("2026-12-21")]
    [InlineData("1")]
    [InlineData("2")]
    public void The_day_or_the_week_is_told_and_nothing_is_found(string retest)
    {
        var (plan, site) = Made(retest);
        Assert.Contains(plan.Retest!.Sentence, Page(site, PagePath.Weeks), StringComparison.Ordinal);
        Assert.Equal(
            plan.Retest.Day is not null,
            Page(site, PagePath.Calendar).Contains("SUMMARY:Measured again", StringComparison.Ordinal)
        );
        Assert.Empty(RuleBook.Audit(plan, site, []));
    }

    [Theory]
    [InlineData(Said, "", "plan-words-altered")]
    [InlineData("Friday 18 December", "Saturday 19 December", "plan-words-altered")]
    [InlineData("measured: ankle dorsiflexion", "measured: knee flexion", "plan-words-altered")]
    [InlineData("measures you again", "sees how much better you are", "plan-words-altered")]
    [InlineData(Said, Said + " It will have helped.", "plan-words-altered")]
    [InlineData(Said, Said + "</p><p>It will have helped.", "text-not-planned")]
    public void A_sentence_that_is_other_on_the_page_is_found(string said, string instead, string rule) =>
        Assert.Contains(rule, Found(PagePath.Weeks, said, instead));

    [Theory]
    [InlineData("DTSTART;VALUE=DATE:20261218", "DTSTART;VALUE=DATE:20261219")]
    [InlineData("DTSTART;VALUE=DATE:20261218", "DTSTART:20261218T183000Z\r\nDURATION:PT1H")]
    [InlineData("DTSTART;VALUE=DATE:20261218", "DTSTART;VALUE=DATE:20261218\r\nRRULE:FREQ=WEEKLY")]
    [InlineData("SUMMARY:Measured again", "SUMMARY:Ankle dorsiflexion measured again")]
    [InlineData("measures you again.", "measures your ankle again.")]
    [InlineData("weeks.html", "session-1.html")]
    public void A_day_that_is_other_in_the_calendar_is_found(string said, string instead) =>
        Assert.Equal(["calendar-against-plan"], Found(PagePath.Calendar, said, instead));

    [Fact]
    public void A_day_that_is_missing_in_the_calendar_is_found()
    {
        var events = Page(InWeek.Site, PagePath.Calendar).Split("BEGIN:VEVENT").Skip(1).Select(e => e.Split("END:VCALENDAR")[0]);
        var measured = "BEGIN:VEVENT" + events.Single(e => e.Contains("SUMMARY:Measured again", StringComparison.Ordinal));
        Assert.Equal(["calendar-against-plan"], Found(PagePath.Calendar, measured, ""));
    }

    /// <summary>Tess trains on days that she chooses, so the day of measuring is the only one that is fixed.</summary>
    [Fact]
    public void Alone_it_makes_a_calendar_too()
    {
        var (plan, site) = Made("2026-12-18", "2 a week, a day between");
        Assert.Equal("Measured again", Assert.Single(plan.Dates).Title);
        Assert.Empty(RuleBook.Audit(plan, site, []));
        var without = new Site(site.Client, site.Pages, site.Assets.Where(a => a.Path != PagePath.Calendar));
        Assert.Contains(RuleBook.Audit(plan, without, []), f => f.Rule.Text == "calendar-against-plan");
    }

    private static string[] Found(string path, string said, string instead)
    {
        Assert.Contains(said, Page(InWeek.Site, path), StringComparison.Ordinal);
        return
        [
            .. RuleBook
                .Audit(InWeek.Plan, FinishedSite.With(InWeek.Site, path, said, instead), [])
                .Select(f => f.Rule.Text)
                .Distinct(),
        ];
    }

    private static string Page(Site site, string path) =>
        site.Pages.Where(p => p.Path == path).Select(p => p.Html).FirstOrDefault()
        ?? Encoding.UTF8.GetString(site.Assets.First(a => a.Path == path).Bytes.Span);

    private static (Plan Plan, Site Site) Made(string retest, string days = "[Mon, Thu]") =>
        FinishedSite.Edited(text =>
            text.Replace("[Mon, Thu]", days, StringComparison.Ordinal)
                .Replace(Start, $"{Start}retest: {retest}\n", StringComparison.Ordinal)
        );
}
