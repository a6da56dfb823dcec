using System.Globalization;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>Plan → what the page of the weeks shows.</summary>
internal static class WeekViews
{
    private const int BarWidth = 1000;

    public static ProgrammeWeeksView Of(Plan plan) =>
        new(
            plan.Words.Say("minutes-you-have", ("n", plan.Programme.Minutes)),
            [.. plan.Weeks.Select(w => Week(plan, w))],
            plan.RetestIn(null) ?? "",
            [.. plan.Sessions.SelectMany(s => s.Weeks.Select(w => Shares(plan, s, w)))],
            [.. plan.Programme.MoveOn.Select(c => new CheckView(c.Heading, c.Conditions))]
        );

    private static WeekView Week(Plan plan, PlannedWeek week) =>
        new(
            PageId.Week(week.Number),
            week.Number.ToString(CultureInfo.InvariantCulture),
            week.Heading,
            [.. week.Pauses.Select(p => p.Sentence)],
            [
                .. week.Sessions.Select(s => new WeekSessionView(
                    new(plan.Sessions[s.Session - 1].Path, s.Name),
                    s.When,
                    TimeView.Roughly(s.Seconds, plan.Words)
                )),
            ],
            TimeView.Roughly(week.Total, plan.Words),
            week.Sessions.Any(s => s.Times is null),
            plan.RetestIn(week.Number) ?? ""
        );

    private static SharesView Shares(Plan plan, PlannedSession session, PlannedWeeks weeks)
    {
        var (words, shares) = (plan.Words, weeks.Shares);
        return new(
            new(session.Path, session.Name),
            weeks.Heading,
            ShareWords.Of(session, weeks, words),
            Time(shares.Work),
            Time(shares.Rest),
            Time(shares.Moving),
            TimeView.Of(weeks.Total, weeks.About, words),
            Bar(("work", shares.Work), ("rest", shares.Rest), ("moving", shares.Moving))
        );

        TimeView Time(Seconds span) => TimeView.Of(span, false, words);
    }

    /// <summary>The parts side by side, as long as their share of all.</summary>
    private static Series<BarView> Bar(params (string Kind, Seconds Span)[] parts)
    {
        var whole = parts.Sum(p => p.Span.Value);
        var (drawn, before) = (new List<BarView>(), 0);
        foreach (var (kind, span) in parts)
        {
            if (span > Seconds.Zero)
                drawn.Add(new(kind, At(before, whole), At(span.Value, whole)));
            before += span.Value;
        }

        return drawn.ToSeries();
    }

    private static string At(int seconds, int whole) =>
        ((decimal)BarWidth * seconds / whole).ToString("0.0", CultureInfo.InvariantCulture);
}
