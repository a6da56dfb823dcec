using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>One timed piece of a session.</summary>
/// <param name="Exercise">The exercise it belongs to; of a transition the one it leads to.</param>
/// <param name="Side">The side at work; of a switch or a transition the one it leads to; null for both or none.</param>
/// <param name="Work">What is done in it; null where it stands between.</param>
/// <param name="Source">The entry of the programme that it comes from.</param>
public sealed record SessionStep(
    StepKind Kind,
    ExerciseId Exercise,
    Side? Side,
    Seconds Seconds,
    StepWork? Work,
    Aside<ProgrammeUse> Source
);

/// <param name="Piece">The piece of the dose; in rounds its set is the round.</param>
/// <param name="Dose">The dose of the week that it is from.</param>
public sealed record StepWork(TimelineStep.Work Piece, SettledDose Dose);
