namespace Gradus.Tests.Trainings;

/// <summary>"What is loaded, not only what is trained: regions and sides, defaults from the position (hands and knees loads both
/// wrists and both knees)."</summary>
internal sealed class SecondLoads(MadeDone done, ProofSlip slip)
{
    private readonly string[] said =
    [
        .. done.Exercise.Loads ?? Standing(done.Exercise.Position),
        .. slip == ProofSlip.PositionLoadsNothing ? [] : Resting(done.Exercise.Position),
    ];

    /// <summary>Whether the region is loaded by what the exercise says, or by its position.</summary>
    public bool Says(string region) => said.Any(s => s == region || s == "other " + region);

    /// <summary>The sides on which the region is loaded; of one without sides, something where it is loaded.</summary>
    public string[] On(string region)
    {
        var sides = new HashSet<string>(StringComparer.Ordinal);
        if (said.Contains(region))
            sides.UnionWith(done.Sides);
        if (said.Contains("other " + region))
            sides.UnionWith(
                slip == ProofSlip.OtherIsTheWorkingSide ? done.Sides : done.Sides.Select(s => s == "left" ? "right" : "left")
            );
        if (done.Exercise.Part == region && slip != ProofSlip.WhatIsTrainedIsNotLoaded)
            sides.UnionWith(done.Sides);
        return [.. sides];
    }

    /// <summary>Whether somebody stands on it: pain there is loaded whatever else the exercise works.</summary>
    public bool Stands(string region) => Standing(done.Exercise.Position).Contains(region);

    private static string[] Resting(string position) =>
        position switch
        {
            "hands-and-knees" => ["wrist", "other wrist", "knee", "other knee"],
            "kneeling" or "half-kneeling" => ["knee", "other knee"],
            "hanging" => ["shoulder", "other shoulder", "elbow", "other elbow", "wrist", "other wrist", "hand", "other hand"],
            _ => [],
        };

    /// <summary>Who stands loads both legs, where the exercise says nothing.</summary>
    private static string[] Standing(string position) =>
        position is "standing" or "split-stance"
            ? ["hip", "other hip", "knee", "other knee", "ankle", "other ankle", "foot", "other foot"]
            : [];
}
