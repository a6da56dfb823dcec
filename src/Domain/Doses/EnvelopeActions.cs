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
        allowed.GetType() == written.GetType()
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
                new(range),
                new(rating),
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
        amount switch
        {
            Amount.Span(var seconds) => EnvelopeNumbers.Time(seconds),
            Amount.Breaths(var breaths) => EnvelopeNumbers.Counted(breaths, "breath", "breaths"),
            Amount.Reps(var reps) => EnvelopeNumbers.Counted(reps, "rep", "reps"),
            Amount.Metres(var metres) => $"{EnvelopeNumbers.Number(metres)} m",
            _ => throw new ArgumentOutOfRangeException(nameof(amount)),
        };

    private static string Words(Effort effort) =>
        effort switch
        {
            Effort.Steady(var percent) => $"{EnvelopeNumbers.Number(percent)} %",
            Effort.Ramp(var first, var last, var steps) =>
                $"a ramp from {EnvelopeNumbers.Number(first)} % to {EnvelopeNumbers.Number(last)} % in {new Count(steps)} steps",
            Effort.Felt(var rating) => $"effort {new Count(rating)}",
            _ => throw new ArgumentOutOfRangeException(nameof(effort)),
        };
}
