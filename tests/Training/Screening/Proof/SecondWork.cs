namespace Gradus.Tests.Trainings;

/// <summary>What an exercise does to a body, a second time: "by what the work does, never by stage alone".</summary>
internal static class SecondWork
{
    private static readonly string[] Spine = ["neck", "upper-back", "lower-back"];

    /// <summary>In the words of matters-for, by the doses that this client does.</summary>
    public static HashSet<string> Does(MadeDone done, ProofSlip slip)
    {
        var (exercise, lines) = (done.Exercise, done.Weeks.Select(w => w.Line).ToArray());
        HashSet<string> does =
        [
            .. exercise.Properties.Where(p =>
                p is "head-low" or "balance" or "jumping" or "weight-on-hands" or "trunk-end-range"
            ),
            exercise.Position,
        ];
        if (slip != ProofSlip.EverythingForgotten)
            does.Add("everything");
        if (IsEndRange(exercise, slip))
            does.Add("end-range");
        if (IsLoaded(exercise) && slip != ProofSlip.LoadedForgotten)
            does.Add("loaded");
        if (exercise.Position is "hands-and-knees" or "hanging" && slip != ProofSlip.WeightOnHandsOnlyWhereWritten)
            does.Add("weight-on-hands");
        if (IsEndRange(exercise, slip) && Spine.Contains(exercise.Part) && slip != ProofSlip.TrunkEndRangeOnlyWhereWritten)
            does.Add("trunk-end-range");
        if (exercise.Properties.Contains("jumping") || lines.Any(l => IsHard(exercise, l, slip)))
            does.Add("hard-effort");
        if (lines.Any(l => l.Contraction > 10 && (exercise.Dose.Verb != "carry" || slip != ProofSlip.CarryIsNoContraction)))
            does.Add("long-contraction");
        if (
            slip != ProofSlip.GentleEffortIsNone
            && (exercise.Dose.Verb == "carry" || IsHeldByMuscles(exercise) || lines.Any(l => l.Contraction > 0))
        )
            does.Add("effort");
        if (IsHeldByMuscles(exercise) && slip != ProofSlip.HoldIsNeverWork && lines.Any(l => l.Hold > 10))
            does.Add("long-contraction");
        return does;
    }

    /// <summary>Nothing but a hold in what is there for force, control or a load.</summary>
    private static bool IsHeldByMuscles(MadeExercise exercise) =>
        exercise.Stage is "strengthen" or "control" or "load"
        && exercise.Dose.Verb == "hold"
        && !exercise.Dose.Envelope.Contains("then", StringComparison.Ordinal);

    /// <summary>At or above 70 %, or work that states no effort and could be as hard.</summary>
    public static bool IsHard(MadeExercise exercise, MadeLine line, ProofSlip slip) =>
        line.Effort >= 70 || (line.Effort is null && (exercise.Dose.Verb != "carry" || slip != ProofSlip.UnstatedCarryIsLight));

    /// <summary>The dose names a load, it is a carry, or the exercise is there to load.</summary>
    public static bool IsLoaded(MadeExercise exercise) =>
        exercise.Stage == "load" || exercise.Dose.Verb == "carry" || exercise.Dose.NamesLoad;

    public static bool IsEndRange(MadeExercise exercise, ProofSlip slip)
    {
        if (exercise.Properties.Contains("mid-range") && slip != ProofSlip.MidRangeForgotten)
            return false;
        var byStage = exercise.Stage is "gain" or "control" && exercise.Dose.Verb != "breathe";
        return byStage
            || exercise.Properties.Contains("sits-on-heels")
            || (exercise.Dose.Verb is "hold" or "raise" or "move" && slip != ProofSlip.EndRangeByStageAlone);
    }
}
