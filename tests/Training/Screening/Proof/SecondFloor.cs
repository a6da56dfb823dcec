namespace Gradus.Tests.Trainings;

/// <summary>What everybody is asked, a second time: with what of the work each matters.</summary>
internal static class SecondFloor
{
    public const string From65 = "sixty-five-or-older";

    public static readonly string[] Diseases = ["heart-disease", "metabolic-disease", "kidney-disease"];

    private const string AnyStrain = "end-range loaded weight-on-hands balance jumping hard-effort long-contraction";

    private static readonly Dictionary<string, string> With = new(StringComparer.Ordinal)
    {
        ["breathless-at-night"] = "everything",
        ["dizzy-spells"] = "everything",
        ["calf-pain-or-swelling"] = "everything",
        ["blood-clot"] = "everything",
        ["hot-swollen-joint"] = "everything",
        ["fever"] = "everything",
        ["raised-blood-pressure"] = "head-low hard-effort long-contraction",
        ["bone-thinning"] = "trunk-end-range jumping loaded",
        ["joint-replacement"] = AnyStrain,
        ["recent-surgery"] = AnyStrain + " trunk-end-range effort",
        ["recent-injury"] = AnyStrain + " trunk-end-range effort",
        ["back-pain-with-leg-signs"] = "end-range trunk-end-range loaded jumping head-low hard-effort long-contraction",
        ["very-mobile-joints"] = "end-range",
        ["pregnancy-or-birth"] = "prone supine end-range loaded jumping hard-effort long-contraction",
        ["blood-thinners"] = "jumping balance",
        ["eye-pressure-or-retina"] = "head-low hard-effort long-contraction",
        ["hernia"] = "loaded hard-effort long-contraction",
        ["asthma"] = "hard-effort jumping",
        ["insulin"] = "hard-effort jumping",
        ["seizures"] = "balance jumping hanging",
        ["falls"] = "balance jumping",
        ["numb-feet"] = "balance jumping",
        [From65] = "jumping",
    };

    public static string Where(string id) =>
        id switch
        {
            "numb-feet" => "foot",
            "calf-pain-or-swelling" => "calf",
            "back-pain-with-leg-signs" => "lower-back",
            _ => "whole body",
        };

    /// <summary>Whether a yes must be thought of with what is done.</summary>
    public static bool Matters(string id, MadeDone done, ProofSlip slip) =>
        With.TryGetValue(id, out var with) && with.Split(' ').Any(SecondWork.Does(done, slip).Contains);
}
