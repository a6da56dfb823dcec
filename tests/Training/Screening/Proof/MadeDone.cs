namespace Gradus.Tests.Trainings;

/// <summary>One exercise as it is done in one session, with the sides at work and the weeks.</summary>
internal sealed record MadeDone(MadeExercise Exercise, string[] Sides, List<(int Week, MadeLine Line)> Weeks);
