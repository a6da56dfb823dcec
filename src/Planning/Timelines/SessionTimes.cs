using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>How long a session takes, before there is a plan: counted from the very steps that the client will see, without their
/// words.</summary>
public static class SessionTimes
{
    /// <summary>Weeks with the same steps together, get ready and transitions among them, in the order of their first
    /// week.</summary>
    /// <param name="uses">Those of one session, in order.</param>
    /// <param name="weeks">How many the programme has.</param>
    /// <exception cref="ArgumentException">A dose takes longer than 4 h.</exception>
    public static Series<PlannedWeeks> Of(IReadOnlyList<Use> uses, int weeks, PracticeSettings settings) =>
        SessionPlanning.WeeksOf(uses, weeks, settings, null);
}
