using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What was measured of one client, what changed, what the sport asks and what is missing. A value without a word; it is
/// no part of a <see cref="Training"/>, because it hangs on the day.</summary>
/// <param name="Series">By motion, side, mode and instrument.</param>
/// <param name="Demands">Each demand of each sport on each side that it concerns, in the order of the files.</param>
/// <param name="Sides">Each measure that was read on both sides on one occasion.</param>
/// <param name="Never">What is demanded or trained and has no reading.</param>
/// <param name="Due">What ought to be measured again.</param>
/// <param name="Gained">The motions that the programme's own sessions gain range of, and that can be measured, in the order of
/// the sessions; none where more range is not the aim.</param>
/// <param name="IsVeryMobile">Whether the client answered yes to very mobile joints: more range is not the aim then.</param>
public sealed record ClientRanges(
    ClientId Client,
    DateOnly Today,
    Series<MeasuredSeries> Series,
    Series<JudgedDemand> Demands,
    Series<ComparedSides> Sides,
    Series<NeverMeasured> Never,
    Series<DueMeasure> Due,
    Series<Motion> Gained,
    bool IsVeryMobile
)
{
    /// <summary>How many changes and differences of sides are judged by an error: about one in twenty of them goes beyond it by
    /// chance.</summary>
    public int Comparisons =>
        Series.Sum(s => s.Changes.Count(c => c.Word != ChangeWord.NotJudged))
        + Sides.Count(s => s.Latest.Word != SidesWord.NotJudged)
        + Sides.Count(s => s.Change?.IsShown is not null);

    /// <summary>As the client's pages tell it, which are the same on any day: as of the day on which the programme begins, or of
    /// the last reading if that is later.</summary>
    public static ClientRanges ForPages(Practice practice, Client client, Training training) =>
        Of(practice, client, training, client.Readings.Select(r => r.Date).Append(client.Programme.Start).Max());

    /// <summary>Whether a client answered yes to very mobile joints.</summary>
    public static bool AreVeryMobile(Client client) => client.AnswerTo(new("very-mobile-joints"))?.Reply is Reply.Yes;

    /// <param name="training">The client's own.</param>
    /// <param name="today">A reading of a later day does not count yet.</param>
    public static ClientRanges Of(Practice practice, Client client, Training training, DateOnly today)
    {
        var work = PlannedWork.Of(client, training);
        var isVeryMobile = AreVeryMobile(client);
        var series = RangeSeries
            .Of(client.Readings, today)
            .Select(s => MeasuredSeries.Of(practice, client.Programme, work, s, !isVeryMobile))
            .ToSeries();
        var demands = JudgedDemand.Of(practice, training, series, today).ToSeries();
        return new(
            client.Id,
            today,
            series,
            demands,
            ComparedSides.Of(practice, client.Programme, series).ToSeries(),
            NeverMeasured.Of(practice, work, series, demands).ToSeries(),
            DueMeasure.Of(client.Programme, work, series, today).ToSeries(),
            isVeryMobile ? [] : PlannedWork.Gained(work, practice).ToSeries(),
            isVeryMobile
        );
    }
}
