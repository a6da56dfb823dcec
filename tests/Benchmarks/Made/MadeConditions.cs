namespace Gradus.Tests.Benchmarks;

/// <summary>Thirty conditions: those that are always asked, and with a hot joint an injury of each region.</summary>
internal static class MadeConditions
{
    public const string ClearedFirst = "raised-blood-pressure";

    public static readonly string[] Regions =
    [
        "neck",
        "upper-back",
        "lower-back",
        "chest",
        "shoulder",
        "elbow",
        "wrist",
        "hand",
        "hip",
        "knee",
        "ankle",
        "foot",
    ];

    /// <summary>What everybody is asked (practice-format.md, Conditions) comes with Gradus, and its questions are not written
    /// again.</summary>
    private static readonly string[] Always =
    [
        "heart-disease",
        "metabolic-disease",
        "kidney-disease",
        "signs-or-symptoms",
        "breathless-at-night",
        "dizzy-spells",
        "calf-pain-or-swelling",
        "blood-clot",
        "hot-swollen-joint",
        "fever",
        ClearedFirst,
        "bone-thinning",
        "joint-replacement",
        "recent-surgery",
        "recent-injury",
        "back-pain-with-leg-signs",
        "very-mobile-joints",
        "pregnancy-or-birth",
        "blood-thinners",
        "eye-pressure-or-retina",
        "hernia",
        "asthma",
        "insulin",
        "seizures",
        "falls",
        "numb-feet",
    ];

    private static readonly string[] Own = [.. Regions.Select(InjuryOf)];

    /// <summary>Those that an exercise may name.</summary>
    public static readonly string[] Ids = [.. Always, .. Own];

    public static string InjuryOf(string region) => region + "-injury";

    public static bool IsSided(string region) => region is not ("neck" or "upper-back" or "lower-back" or "chest");

    public static string Yaml() => string.Concat(Regions.Select(r => Entry(InjuryOf(r), r, IsSided(r))));

    private static string Entry(string id, string where, bool sided)
    {
        var name = id.Replace('-', ' ');
        return $"- id: {id}\n  name: {name}, now or in the last 12 weeks\n  question: Has anything been said to you of "
            + $"{name} in the last 12 weeks?\n  where: {where}\n{(sided ? "  sided: yes\n" : "")}";
    }
}
