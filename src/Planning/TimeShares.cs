using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>Where the time of a session goes.</summary>
/// <param name="Work">Holding, breathing, pressing, pulling, raising, moving, carrying.</param>
/// <param name="Rest">Rests and pauses.</param>
/// <param name="Moving">Getting ready, changing sides, going from one exercise to the next.</param>
public sealed record TimeShares(Seconds Work, Seconds Rest, Seconds Moving)
{
    public Seconds Total => Work + Rest + Moving;

    public static TimeShares Of(IEnumerable<Step> steps)
    {
        int work = 0,
            rest = 0,
            moving = 0;
        foreach (var step in steps)
        {
            if (step.Kind is StepKind.Rest or StepKind.Pause)
                rest += step.Seconds.Value;
            else if (step.Kind is StepKind.GetReady or StepKind.Switch or StepKind.Transition)
                moving += step.Seconds.Value;
            else
                work += step.Seconds.Value;
        }

        return new(new(work), new(rest), new(moving));
    }
}
