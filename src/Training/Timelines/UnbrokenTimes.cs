using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>How long somebody stays in one position.</summary>
public sealed record UnbrokenTime(Position Position, Seconds Seconds);

internal static class UnbrokenTimes
{
    /// <summary>For each run of steps in one position its length; going from one position to another belongs to
    /// neither.</summary>
    public static IEnumerable<UnbrokenTime> Of(IEnumerable<(SessionStep Step, Position Position)> steps)
    {
        UnbrokenTime? run = null;
        foreach (var (step, position) in steps)
        {
            if (run is { } stayed && stayed.Position == position)
            {
                run = stayed with { Seconds = stayed.Seconds + step.Seconds };
                continue;
            }

            if (run is { } ended)
                yield return ended;
            run = new(position, step.Kind == StepKind.Transition ? Seconds.Zero : step.Seconds);
        }

        if (run is { } last)
            yield return last;
    }
}
