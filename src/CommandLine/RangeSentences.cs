using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>What may be said of measured ranges, to the coach. What must never be said cannot be said here: no per cent, no
/// cause, no ranking, no change below the error.</summary>
internal static class RangeSentences
{
    public const string NoError = "no published error for this measure; the numbers stand side by side and are not judged";

    /// <summary>Where many lines say it.</summary>
    private const string NoErrorBriefly = "no published error for this measure, not judged";

    public const string TrainedPeople = "Published errors are those of trained people; yours may be larger.";

    public const string SetByCoach = "A demand is a mark set by the coach; no study stands behind it.";

    public const string SidesDiffer = "Sides differ in healthy people too; in a one-sided sport it may be the sport.";

    public const string NoCause =
        "No cause is named: a motion is mostly chosen because it read low, and part of a later rise comes from that alone.";

    public const string NotTheAim = "Answered yes to very mobile joints: more range is not the aim here.";

    public static string Comparisons(int comparisons) =>
        comparisons == 0
            ? "No change and no difference of sides here can be judged by an error."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"Of {comparisons} {(comparisons == 1 ? "comparison" : "comparisons")} about one in twenty goes beyond its "
                    + $"error by chance."
            );

    /// <summary>"hip rotation, left, active, inclinometer".</summary>
    public static string NameOf(SeriesKey key) =>
        $"{key.Motion.Name}{SideOf(key.Side)}, {RangeErrorText.WordOf(key.Mode)}, {key.Instrument}";

    public static string SideOf(Side? side) => side is { } one ? $", {one.Word()}" : "";

    public static string Of(RangeChange change, Motion motion) =>
        (change.Error?.Home is null ? "" : "provisional, measured at home: ") + Judged(change, motion);

    private static string Judged(RangeChange change, Motion motion)
    {
        var from = $"than on {DaysOf(change.From)}";
        var amount = Amount(change.Difference, motion);
        return change switch
        {
            { Word: ChangeWord.Gain or ChangeWord.More, Margin: { } margin } =>
                $"{amount} more {from}; the error of this measure is {Error(margin, motion)}, so the true change lies "
                    + $"somewhere between {Low(change.Difference - margin, motion)} and "
                    + $"{High(change.Difference + margin, motion)}{(change.Word == ChangeWord.Gain ? ": a gain" : "")}.",
            { Word: ChangeWord.Less, Margin: { } margin } =>
                $"{amount} less {from}, beyond the error of {Error(margin, motion)}. Measure again; ask about pain, swelling, "
                    + "a new injury.",
            { Word: ChangeWord.NotShown, Margin: { } margin } =>
                $"{Direction(change.Difference, amount)} {from}; a difference below {Error(margin, motion)} is within the "
                    + "error: no change that this measure can show.",
            { Error: null } => $"{Direction(change.Difference, amount)} {from}; {NoError}.",
            _ => $"{Direction(change.Difference, amount)} {from}; less than {Occasion.DaysApart} days apart, not judged.",
        };
    }

    /// <summary>Of three occasions or more, up to the last of them and not beyond it.</summary>
    public static string Of(RangeLine line, RangeSeries read)
    {
        var (motion, occasions) = (read.Key.Motion, read.Occasions);
        var said = string.Create(
            CultureInfo.InvariantCulture,
            $"along a straight line through {occasions.Count} occasions from {occasions[0].First.Iso()} to "
                + $"{occasions[^1].Last.Iso()}: {Direction(line.Change, Amount(line.Change, motion))}"
        );
        return line.Margin switch
        {
            null => $"{said}; {NoErrorBriefly}.",
            { } margin when Math.Abs(line.Change) >= margin => $"{said}, beyond the error of {Error(margin, motion)}.",
            { } margin => $"{said}; a difference below {Error(margin, motion)} is within the error.",
        };
    }

    public static string Of(JudgedDemand demand)
    {
        var motion = demand.Measure.Motion;
        var read = demand.Mark is { } mark ? $"{Value(mark.Read.Value, motion)} on {DaysOf(mark.Read)}: " : "";
        return demand.Open switch
        {
            DemandOpen.NotMeasured => "never measured in that way.",
            DemandOpen.Old => $"{read}old, measure again.",
            DemandOpen.ModeNotWritten => "not judged: the sport does not say whether an active or a passive reading counts.",
            DemandOpen.MethodNotWritten => $"{read}not judged: nobody has written down how it is measured.",
            null => read + WordOf(demand),
        };
    }

    private static string WordOf(JudgedDemand demand) =>
        demand.Mark switch
        {
            { Word: MarkWord.Enough } => "enough.",
            { Word: MarkWord.Short } mark => $"short of it by about {Value(mark.Missing, demand.Measure.Motion)}.",
            { Word: MarkWord.NotTold, HalfWidth: { } half } =>
                $"cannot be told apart from the demand; one reading is good to {Error(half, demand.Measure.Motion)} either way.",
            _ => $"{NoErrorBriefly}.",
        };

    public static string Of(RangeSides sides, Motion motion)
    {
        var both = $"left {Value(sides.Left.Value, motion)}, right {Value(sides.Right.Value, motion)}";
        return sides switch
        {
            { Word: SidesWord.Differ, Margin: { } margin } =>
                $"{both}: the sides differ by {Amount(sides.Difference, motion)}, beyond the error of {Error(margin, motion)}.",
            { Word: SidesWord.NotShown, Margin: { } margin } =>
                $"{both}: no difference that this measure can show; one below {Error(margin, motion)} is within the error.",
            _ => $"{both}: {NoErrorBriefly}.",
        };
    }

    public static string Of(SidesChange change, Motion motion) =>
        $"On {change.From.Last.Iso()} left {Value(change.From.Left.Value, motion)}, right "
        + $"{Value(change.From.Right.Value, motion)}: the difference is another by {Amount(change.Change, motion)}; "
        + (
            change switch
            {
                { IsShown: true, Margin: { } margin } => $"beyond the error of {Error(margin, motion)}.",
                { IsShown: false, Margin: { } margin } => $"below {Error(margin, motion)} it is within the error.",
                _ => $"{NoError}.",
            }
        );

    /// <summary>"2026-11-20", or "2026-11-20 to 2026-11-23, the mean of 2 days".</summary>
    public static string DaysOf(Occasion occasion) =>
        occasion.Days.Count == 1
            ? occasion.First.Iso()
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{occasion.First.Iso()} to {occasion.Last.Iso()}, the mean of {occasion.Days.Count} days"
            );

    /// <summary>"11.5°", "9 cm".</summary>
    public static string Value(decimal value, Motion motion) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.#}{(motion.Unit == MotionUnit.Centimetres ? " cm" : "°")}");

    /// <summary>Rounded up to what a reading has: a difference that is printed below it is below it.</summary>
    public static string Error(decimal margin, Motion motion) => Value(RangeRounding.Error(margin), motion);

    private static string Amount(decimal difference, Motion motion) => Value(Math.Abs(difference), motion);

    private static string Direction(decimal difference, string amount) => difference < 0 ? $"{amount} less" : $"{amount} more";

    /// <summary>Outwards, to whole degrees or millimetres.</summary>
    private static string Low(decimal value, Motion motion) =>
        RangeRounding.Low(value, motion.Unit).ToString("0.#", CultureInfo.InvariantCulture);

    private static string High(decimal value, Motion motion) => Value(RangeRounding.High(value, motion.Unit), motion);
}
