namespace Gradus.Domain;

/// <summary>Holds one action against the same action of the exercise.</summary>
internal static class EnvelopeActions
{
    public static IEnumerable<Departure> Compare(DoseAction allowed, DoseAction written)
    {
        var verb = written.Verb.Word();
        var once = new Count(1);
        return
        [
            .. EnvelopeNumbers.Compare(allowed.Times ?? once, written.Times ?? once, n => $"{verb} {Times(n)}", Times),
            .. CompareAmounts(verb, allowed.Amount, written.Amount),
            .. CompareEfforts(verb, allowed.Effort, written.Effort),
        ];
    }

    private static IEnumerable<Departure> CompareAmounts(string verb, Amount allowed, Amount written) =>
        allowed.Unit == written.Unit
            ? EnvelopeNumbers.Compare(allowed.Number, written.Number, _ => $"{verb} {Words(written)}", _ => Words(allowed))
            : [new(DepartureSide.Hard, $"{verb} {Words(written)}, the exercise allows {Words(allowed)}")];

    private static IEnumerable<Departure> CompareEfforts(string verb, Effort? allowed, Effort? written) =>
        (allowed, written) switch
        {
            (null, _) => [],
            (_, null) => [new(DepartureSide.Hard, $"{verb} with no effort named, the exercise allows {Words(allowed)}")],
            (Effort.Steady(var range), Effort.Steady(var percent)) => Percents(range, percent, $"{verb} at"),
            (Effort.Steady(var range), Effort.Ramp ramp) => Percents(range, Hull(ramp), $"{verb} at"),
            (Effort.Ramp range, Effort.Ramp ramp) =>
            [
                .. Percents(range.First, ramp.First, $"{verb} from", "from "),
                .. Percents(range.Last, ramp.Last, $"{verb} to", "to "),
                .. Steps(verb, range.Steps, ramp.Steps),
            ],
            (Effort.Felt(var range), Effort.Felt(var rating)) => EnvelopeNumbers.Compare(
                range,
                rating,
                n => $"{verb} at effort {n}",
                n => $"effort {n}"
            ),
            _ => [new(DepartureSide.Hard, $"{verb} at {Words(written)}, the exercise allows {Words(allowed)}")],
        };

    private static IEnumerable<Departure> Percents(Count allowed, Count written, string own, string range = "") =>
        EnvelopeNumbers.Compare(
            allowed,
            written,
            n => $"{own} {EnvelopeNumbers.Number(n)} %",
            n => $"{range}{EnvelopeNumbers.Number(n)} %"
        );

    private static IEnumerable<Departure> Steps(string verb, int allowed, int written) =>
        allowed == written
            ? []
            : [new(DepartureSide.Easy, $"{verb} in {new Count(written)} steps, the exercise allows {new Count(allowed)} steps")];

    /// <summary>From the lightest to the hardest of a ramp.</summary>
    private static Count Hull(Effort.Ramp ramp) =>
        new(Math.Min(ramp.First.Low, ramp.Last.Low), Math.Max(ramp.First.High, ramp.Last.High));

    private static string Times(Count count) => EnvelopeNumbers.Counted(count, "time", "times");

    private static string Words(Amount amount) =>
        amount.Unit switch
        {
            AmountUnit.Seconds => EnvelopeNumbers.Time(amount.Number),
            AmountUnit.Breaths => EnvelopeNumbers.Counted(amount.Number, "breath", "breaths"),
            AmountUnit.Reps => EnvelopeNumbers.Counted(amount.Number, "rep", "reps"),
            AmountUnit.Metres => $"{EnvelopeNumbers.Number(amount.Number)} m",
        };

    private static string Words(Effort effort) =>
        effort.Match(
            steady => $"{EnvelopeNumbers.Number(steady.Percent)} %",
            ramp =>
                $"a ramp from {EnvelopeNumbers.Number(ramp.First)} % to {EnvelopeNumbers.Number(ramp.Last)} % in "
                + $"{new Count(ramp.Steps)} steps",
            felt => $"effort {felt.Rating}"
        );
}
