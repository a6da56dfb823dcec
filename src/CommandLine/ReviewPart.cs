using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>A line of a review.</summary>
/// <param name="Share">Of a bar that is drawn beside it, 0 to 1; null where none is.</param>
internal sealed record ReviewLine(string Text, decimal? Share = null);

/// <summary>One heading of a client's review, for text and page alike.</summary>
/// <param name="Note">What stands below the heading; null for nothing.</param>
internal sealed record ReviewPart(string Title, string? Note, Series<ReviewLine> Lines)
{
    /// <summary>Those that have something to say.</summary>
    public static IEnumerable<ReviewPart> Of(Practice practice, ClientReview review) =>
        All(practice, review).Where(p => p.Lines.Count > 0);

    private static IEnumerable<ReviewPart> All(Practice practice, ClientReview review)
    {
        var came = review.Came;
        yield return new("Done against planned", null, Weeks(came).ToSeries());
        yield return new("Sets of the sessions done", null, Sets(came).ToSeries());
        yield return new("Session load, home exercises only", ReviewSentences.HomeOnly, Loads(came).ToSeries());
        yield return new("Pain by place", ReviewSentences.Bands, Pains(practice, came).ToSeries());
        yield return new("Measured", null, Readings(review).ToSeries());
        yield return new(
            "Going on",
            "Nothing goes on by itself.",
            came.MoveOn.Select(m => new ReviewLine(ReviewSentences.Of(practice, m, review.IsUnsettled))).ToSeries()
        );
        yield return new(
            "Shown and not counted",
            null,
            came.Log.Others.Select(o => new ReviewLine($"{o.Entry.Day.Iso()}: {ReviewSentences.Of(o.Why)}")).ToSeries()
        );
        yield return new(
            "In the client's own words",
            null,
            LogBook
                .Joined(review.Client.Log)
                .Where(e => e.Note.Length > 0)
                .Select(e => new ReviewLine($"{e.Day.Iso()}: {e.Note}"))
                .ToSeries()
        );
    }

    private static IEnumerable<ReviewLine> Weeks(ClientReturn came)
    {
        foreach (var week in came.Weeks)
            yield return new(
                $"week {N(week.Number)}: {ReviewSentences.Of(week)}",
                week.Planned is > 0 and { } planned ? (decimal)week.Done / planned : null
            );
        if (came.Share is { } share)
            yield return new($"in all: {N(came.Done)} of {N(came.Planned)}, {N(share)} %");
        if (came.Gap is { } gap)
            yield return new(ReviewSentences.Of(gap));
        foreach (var entry in came.Log.Entries)
            if (entry.Outcome is LogOutcome.NotToday not)
                yield return new($"{entry.Day.Iso()}: not today{(not.For is { } why ? $", {WordFor(why)}" : "")}");
        if (ReviewSentences.Of(came.Effort) is { } effort)
            yield return new(effort);
    }

    private static IEnumerable<ReviewLine> Sets(ClientReturn came) =>
        from sets in came.Sets
        group sets by (sets.Motion, sets.Side) into same
        let all = same.First() with
        {
            Done = same.Sum(s => s.Done),
            Planned = same.Sum(s => s.Planned),
        }
        select new ReviewLine(
            $"{ReviewSentences.MotionOf(all.Motion, all.Side)}: {ReviewSentences.Of(all)}",
            all.Planned > 0 ? Math.Min(1, (decimal)all.Done / all.Planned) : null
        );

    private static IEnumerable<ReviewLine> Loads(ClientReturn came)
    {
        var most = came.Loads.Select(l => l.Total).DefaultIfEmpty(0).Max();
        var isCompared = came.Loads.Count(l => l.Monotony is not null) > 1;
        foreach (var week in came.Loads)
        {
            yield return new(
                $"week {N(week.Number)}: {ReviewSentences.Of(week, isCompared)}",
                most > 0 ? week.Total / most : null
            );
        }
    }

    private static IEnumerable<ReviewLine> Pains(Practice practice, ClientReturn came)
    {
        foreach (var place in came.Pains.GroupBy(p => p.Place))
            yield return new($"{place.Key}: {string.Join("; ", place.Select(p => ReviewSentences.Of(practice, p)))}");
        if (came.Log.Done.Any())
            yield return new($"otherwise: {ReviewSentences.Of(came.Quiet)}");
    }

    private static IEnumerable<ReviewLine> Readings(ClientReview review)
    {
        foreach (var series in review.Ranges.Series)
            if (series.SinceBaseline is { } since)
                yield return new($"{RangeSentences.NameOf(series.Key)}: {RangeSentences.Of(since, series.Key.Motion)}");
        foreach (var due in review.Came.Retests)
            yield return new($"to be measured again: {ReviewSentences.Of(due)}");
    }

    private static string WordFor(NotTodayReason why) =>
        why switch
        {
            NotTodayReason.Ill => "ill",
            NotTodayReason.Pain => "pain",
            NotTodayReason.Health => "a new medicine or diagnosis, or a fall",
            NotTodayReason.Time => "no time",
            NotTodayReason.Other => "for another reason",
        };

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
