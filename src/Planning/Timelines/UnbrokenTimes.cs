using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>How long somebody stays in one position.</summary>
public static class UnbrokenTimes
{
    /// <summary>For each stretch of steps in one position its length; going from one position to another belongs to
    /// neither.</summary>
    public static IEnumerable<(Position Position, Seconds Seconds)> Of(IEnumerable<Step> steps, Practice practice)
    {
        (Position Position, Seconds Seconds)? run = null;
        foreach (var step in steps)
        {
            if (practice.Find(step.Exercise)?.Position is not { } position)
                continue;
            if (run is { } stayed && stayed.Position == position)
            {
                run = (position, stayed.Seconds + step.Seconds);
                continue;
            }

            if (run is { } ended)
                yield return ended;
            run = (position, step.Kind == StepKind.Transition ? Seconds.Zero : step.Seconds);
        }

        if (run is { } last)
            yield return last;
    }
}
