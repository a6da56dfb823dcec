namespace Gradus.Tests.Trainings;

/// <summary>"What is loaded, not only what is trained": regions and sides; what is not written follows from position, equipment
/// and verb.</summary>
internal sealed class SecondLoads(MadeDone done, ProofSlip slip)
{
    private readonly string[] said =
    [
        .. done.Exercise.Loads ?? Both(Standing(done.Exercise.Position)),
        .. slip == ProofSlip.PositionLoadsNothing ? [] : Both(Resting(done.Exercise, slip)),
        .. Handed(done.Exercise, slip),
    ];

    /// <summary>Whether the region, or one that is loaded along with it, is loaded by what the exercise says or by how it is
    /// done.</summary>
    public bool Says(string region) => Along(region).Any(r => said.Contains(r) || said.Contains("other " + r));

    /// <summary>Whether the exercise moves the region, or one that is loaded along with it.</summary>
    public bool Moves(string region) => Along(region).Contains(done.Exercise.Part);

    /// <summary>The sides on which the region is loaded; of one without sides, something where it is loaded.</summary>
    public string[] On(string region)
    {
        var sides = new HashSet<string>(StringComparer.Ordinal);
        foreach (var part in Along(region))
        {
            if (said.Contains(part))
                sides.UnionWith(done.Sides);
            if (said.Contains("other " + part))
                sides.UnionWith(
                    slip == ProofSlip.OtherIsTheWorkingSide ? done.Sides : done.Sides.Select(s => s == "left" ? "right" : "left")
                );
            if (done.Exercise.Part == part && slip != ProofSlip.WhatIsTrainedIsNotLoaded)
                sides.UnionWith(done.Sides);
        }

        return [.. sides];
    }

    /// <summary>Whether the body rests on that region with both its sides, whichever is at work.</summary>
    public bool Bears(string region) =>
        slip != ProofSlip.SideLiftsWhatThePositionBears
        && Along(region)
            .Any(r =>
                Standing(done.Exercise.Position).Concat(Resting(done.Exercise, slip)).Contains(r)
                || Handed(done.Exercise, slip).Count(h => h == r || h == "other " + r) == 2
            );

    /// <summary>Whether somebody stands on it: pain there is loaded whatever else the exercise works.</summary>
    public bool Stands(string region) =>
        slip != ProofSlip.StandingLoadsNothing && Along(region).Any(Standing(done.Exercise.Position).Contains);

    /// <summary>The region, and what cannot be loaded without loading it too.</summary>
    private string[] Along(string region) =>
        slip == ProofSlip.RegionsAlongForgotten
            ? [region]
            : region switch
            {
                "head" => ["head", "neck"],
                "ribs" => ["ribs", "upper-back", "chest"],
                "belly" => ["belly", "lower-back"],
                "groin" => ["groin", "hip"],
                "thigh" => ["thigh", "hip", "knee"],
                "calf" => ["calf", "ankle", "foot"],
                _ => [region],
            };

    /// <summary>Written or not, these are loaded on both sides.</summary>
    private static string[] Resting(MadeExercise exercise, ProofSlip slip)
    {
        var regions = new List<string>();
        regions.AddRange(
            exercise.Position switch
            {
                "hands-and-knees" => ["knee", "shoulder", "elbow", "wrist", "hand"],
                "kneeling" or "half-kneeling" => ["knee"],
                "hanging" => ["shoulder", "elbow", "wrist", "hand"],
                "split-stance" when slip != ProofSlip.RearFootForgotten => ["knee", "ankle", "foot"],
                _ => [],
            }
        );
        if (exercise.Position is "hands-and-knees" or "kneeling" or "half-kneeling" && slip != ProofSlip.TopOfTheFootForgotten)
            regions.Add("foot");
        if (exercise.Properties.Contains("sits-on-heels") && slip != ProofSlip.HeelSittingForgotten)
            regions.AddRange(["knee", "ankle", "foot"]);
        return [.. regions];
    }

    /// <summary>What is held, or leant on, loads the arms; the one whose wrist or hand is written, else both.</summary>
    private static IEnumerable<string> Handed(MadeExercise exercise, ProofSlip slip)
    {
        var carries = exercise.Dose.Verb == "carry" && slip != ProofSlip.CarryLoadsNoHand;
        var held =
            exercise.Dose.NamesLoad
            && (!exercise.Properties.Contains("worn-load") || slip == ProofSlip.WornLoadIsHeld)
            && slip != ProofSlip.HeldLoadForgotten;
        var leant = exercise.Properties.Contains("weight-on-hands");
        string[] arm =
            leant ? ["shoulder", "elbow", "wrist", "hand"]
            : carries || held ? ["elbow", "wrist", "hand"]
            : [];
        string[] written = exercise.Loads ?? Standing(exercise.Position);
        var (own, other) = (written.Any(w => w is "wrist" or "hand"), written.Any(w => w is "other wrist" or "other hand"));
        return arm.Where(_ => own || !other).Concat(arm.Where(_ => other || !own).Select(r => "other " + r));
    }

    /// <summary>Who stands loads both legs, where the exercise says nothing.</summary>
    private static string[] Standing(string position) =>
        position is "standing" or "split-stance" or "squat" ? ["hip", "knee", "ankle", "foot"] : [];

    private static IEnumerable<string> Both(IEnumerable<string> regions) => regions.SelectMany(r => new[] { r, "other " + r });
}
