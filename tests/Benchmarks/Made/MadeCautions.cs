namespace Gradus.Tests.Benchmarks;

internal sealed record MadeCaution(string Id, string Kind, string Region, string Text);

/// <summary>Forty cautions: for each region one to stop for, one to ease off for and one to expect, and four that attach by
/// themselves.</summary>
internal static class MadeCautions
{
    public static readonly IReadOnlyList<MadeCaution> All = [.. MadeConditions.Regions.SelectMany(OfRegion), .. Attached()];

    public static string Stop(string region) => "sharp-pain-" + region;

    public static string EaseOff(string region) => "pinch-" + region;

    public static string Expect(string region) => "broad-stretch-" + region;

    private static IEnumerable<MadeCaution> OfRegion(string region)
    {
        var words = region.Replace('-', ' ');
        yield return Made(
            Stop(region),
            "stop",
            region,
            $"A sharp pain in the {words}",
            $"Stop this exercise for today. If the {words} is *no better* next morning, leave the exercise out and write to me."
        );
        yield return Made(
            EaseOff(region),
            "ease-off",
            region,
            $"A pinch in the {words}",
            $"Come back a little until the {words} is free of it, and stay there. If it comes again, do one set less today."
        );
        yield return Made(
            Expect(region),
            "expect",
            region,
            $"A broad stretch around the {words}",
            $"A dull pull over a hand's breadth of the {words} is what this exercise is for. It goes when you come out."
        );
    }

    private static IEnumerable<MadeCaution> Attached()
    {
        yield return Made(
            "keep-breathing",
            "take-care",
            "",
            "Keep breathing while you push",
            "Count aloud: who counts cannot hold the breath.",
            "{ property: hard-effort }"
        );
        yield return Made(
            "long-push",
            "take-care",
            "",
            "A push that grows long",
            "Let go for a moment rather than strain through the last seconds.",
            "{ property: long-contraction }"
        );
        yield return Made(
            "no-hurry-into-the-end",
            "take-care",
            "",
            "No hurry into the end of the range",
            "Take three breaths to arrive there.",
            "{ stage: gain }"
        );
        yield return Made(
            "tired-next-day",
            "expect",
            "",
            "Tired muscles the next day",
            "That passes within two days, and less of it comes each week.",
            "{ stage: strengthen }"
        );
    }

    private static MadeCaution Made(string id, string kind, string region, string title, string body, string? attaches = null) =>
        new(
            id,
            kind,
            region,
            $"---\ntitle: {title}\nkind: {kind}\n{(attaches is null ? "" : $"attaches-to: {attaches}\n")}---\n{body}\n"
        );
}
