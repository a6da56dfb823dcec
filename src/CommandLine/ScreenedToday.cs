using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>What a client may do of one exercise, as an audit would say today.</summary>
/// <param name="Stops">What of today stops it beside its reasons: a range that is too small, an effort for youth, a
/// restriction.</param>
internal sealed record ScreenedExercise(Allowance Allowance, Verdict Verdict, Series<Finding> Stops)
{
    public Exercise Exercise => Allowance.Exercise;
}

/// <summary>What a client may do of the library, so that what is allowed here is stopped by nothing there.</summary>
/// <param name="Everything">What stops whatever is done: an agreement, old answers, an age.</param>
internal sealed record ScreenedToday(Series<Finding> Everything, Series<ScreenedExercise> Exercises)
{
    public static ScreenedToday Of(Practice practice, Client client, Training training, DateOnly today)
    {
        var everything = RuleBook.StopsToday(practice, client, training with { Uses = [] }, today).ToSeries();
        return new(
            everything,
            Allowance
                .Of(practice, client)
                .Select(allowance =>
                {
                    var stops = RuleBook
                        .StopsToday(practice, client, training with { Uses = allowance.Tried }, today)
                        .Except(everything)
                        .DistinctBy(f => f.Message)
                        .ToSeries();
                    var verdict = everything.Count > 0 || stops.Count > 0 ? Verdict.Forbidden : allowance.Verdict;
                    return new ScreenedExercise(allowance, verdict, stops);
                })
                .ToSeries()
        );
    }
}
