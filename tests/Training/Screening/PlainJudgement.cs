namespace Gradus.Tests.Trainings;

/// <summary>One question of screening, in the coach's own words.</summary>
/// <param name="List">not-with or clear-first</param>
/// <param name="Answer">What the client answered, or "" where the condition was not asked.</param>
/// <param name="Loads">What the exercise loads; the condition is one of the ankle.</param>
/// <param name="Position">side-lying, which bears no ankle, or standing, which bears both</param>
/// <param name="Side">left, right or each side</param>
public sealed record ScreeningCase(string List, string Answer, string Loads, string Position, string Side, string Clearance);

/// <summary>A mistake that a screening could make.</summary>
public enum ScreeningSlip
{
    None,
    OtherIsTheWorkingSide,
    NotAskedIsNo,
    ClearanceFreesNotWith,
    ClearanceHeldAgainstToday,
    ClearanceNotNeeded,
    UnnamedRegionIsSafe,
    SideOfTheAnswerForgotten,
    YesWithoutSideIsLeft,
    LimitForgotten,
    OnlyTheFirstSideLooked,
    SideLiftsWhatIsStoodOn,
}

/// <summary>The judgement a second time, sentence by sentence from practice-format.md, What comes of an answer. The use lasts
/// from 11 to 24 January 2027 and presses at 50 %.</summary>
internal static class PlainJudgement
{
    public static string Of(ScreeningCase asked, ScreeningSlip slip)
    {
        // Not asked is not no: it stops the client.
        if (asked.Answer == "" && slip != ScreeningSlip.NotAskedIsNo)
            return "not asked";
        if (asked.Answer is "" or "no")
            return "allowed";
        if (!Meets(asked, slip))
            return "allowed";

        // not-with: a yes forbids, whatever was cleared.
        var frees = slip == ScreeningSlip.ClearanceFreesNotWith && asked.Clearance != "none";
        if (asked.List == "not-with" && !frees)
            return "forbidden";

        // clear-first: a yes forbids until a clearance covers every day; a page does not outlive it.
        return asked.Clearance switch
        {
            "none" => slip == ScreeningSlip.ClearanceNotNeeded ? "allowed" : "not cleared",
            "starts a day late" or "ends a day early" => slip == ScreeningSlip.ClearanceHeldAgainstToday
                ? "allowed"
                : "clearance short",
            "limit broken" => slip == ScreeningSlip.LimitForgotten ? "allowed" : "beyond limit",
            _ => "allowed",
        };
    }

    /// <summary>A yes for one side concerns what loads the region on that side, and every use where the exercise does not say
    /// that it loads the region; a yes without a side is for both. ankle is the side at work, other ankle the opposite one. A
    /// side at work lifts nothing from somebody who stands on both.</summary>
    private static bool Meets(ScreeningCase asked, ScreeningSlip slip)
    {
        if (slip == ScreeningSlip.SideOfTheAnswerForgotten)
            return true;
        if (asked.Position == "standing" && slip != ScreeningSlip.SideLiftsWhatIsStoodOn)
            return true;
        string[] hurt = asked.Answer switch
        {
            "yes, left" => ["left"],
            "yes, right" => ["right"],
            _ => slip == ScreeningSlip.YesWithoutSideIsLeft ? ["left"] : ["left", "right"],
        };
        string[] working =
            asked.Side == "each side"
                ? slip == ScreeningSlip.OnlyTheFirstSideLooked
                    ? ["left"]
                    : ["left", "right"]
                : [asked.Side];
        var parts = asked.Loads.Split(", ");
        // What it trains it loads on the side at work, whether or not that is written.
        if (!parts.Any(part => part is "ankle" or "other ankle") && slip == ScreeningSlip.UnnamedRegionIsSafe)
            return false;

        // What is loaded counts, not only what is trained: the ankle that an exercise trains is loaded too.
        var loaded = working.ToList();
        foreach (var side in working)
        {
            if (parts.Contains("ankle"))
                loaded.Add(side);
            if (parts.Contains("other ankle"))
                loaded.Add(
                    slip == ScreeningSlip.OtherIsTheWorkingSide ? side
                    : side == "right" ? "left"
                    : "right"
                );
        }

        return loaded.Intersect(hurt).Any();
    }
}
