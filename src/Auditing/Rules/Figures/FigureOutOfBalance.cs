using Gradus.Domain;
using Gradus.Figures;

namespace Gradus.Auditing;

public sealed class FigureOutOfBalance : IPracticeRule
{
    public IEnumerable<Finding> Check(Practice practice) =>
        from exercise in practice.Exercises
        let movement = exercise.Pose is { } pose ? Movement.Read(pose, exercise.Cue).Movement : null
        where movement is not null
        let falls = !movement.Start.IsBalanced ? "start"
        : movement.End is { IsBalanced: false } ? "end"
        : null
        where falls is not null
        select this.Found(
            Level.Note,
            null,
            exercise.At,
            $"Nobody could stay as '{exercise.Title}' is drawn at the {falls}: the weight is not above what it rests on.",
            "Look at the figure. Say fewer angles, or what holds the body, such as a hand on a wall."
        );
}
