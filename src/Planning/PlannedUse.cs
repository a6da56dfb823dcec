using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>One exercise in one session.</summary>
/// <param name="Letter">What the page of the session calls it where it says which exercises something is about: "A", "B".</param>
/// <param name="Sides">"left leg, your rear leg", "each leg, left leg first", or empty where there is no side, or not the same in
/// all weeks; the doses say it then.</param>
/// <param name="Notes">Sentences beside the doses: the rounds it belongs to, the exercise it stands in for, or the one that
/// stands in for it.</param>
/// <param name="MoveOn">What must be true before the client goes on to something harder, as the coach wrote it; often
/// nothing.</param>
/// <param name="Text">Filled with the ranges over the weeks of this use.</param>
/// <param name="Rows">What each week asks, a row for each thing that is counted.</param>
/// <param name="Unit">Of what the client measures in it, as "cm"; empty where nothing is measured.</param>
/// <param name="Loads">What it loads, the joint that it trains first: "ankle:work" on the side at work, "knee:other" on the
/// opposite one, "lower-back" where there are no sides.</param>
public sealed record PlannedUse(
    ExerciseId Exercise,
    string Letter,
    string Title,
    int Session,
    string SessionName,
    string Sides,
    Series<string> Notes,
    Series<string> MoveOn,
    ExerciseText Text,
    Series<PlannedDose> Doses,
    Series<PlannedRow> Rows,
    Series<string> Loads,
    string Unit
)
{
    /// <summary>The weeks in which it is done, in rising order.</summary>
    public IEnumerable<int> Weeks => Doses.SelectMany(d => d.Weeks);

    /// <summary>Whether the session is done in some week before it.</summary>
    public bool BeginsLater(PlannedSession session) => session.AllWeeks.First() < Weeks.First();
}

/// <summary>One thing that the doses of a use count, week by week.</summary>
/// <param name="What">"Sets", "Hold", "Effort".</param>
/// <param name="Values">"45 s"; a week that has none of it is not there.</param>
public sealed record PlannedRow(string What, Series<SaidInWeeks> Values);
