namespace Gradus.Domain;

/// <summary>Every dose that lies on the way from the low end of an envelope to its high end, in the order in which a body can
/// follow: longer; then once more but shorter again; then one set more but shorter again; then harder but shorter again. No
/// measure of the work ever falls, and never do two kinds of number rise in one rung. It does not depend on the weeks.
/// <c>dose-line.md</c>, How it grows.</summary>
public sealed class Ladder
{
    /// <summary>So many choices of times are looked through at most where a set is added; of more, those with the highest
    /// numbers.</summary>
    private const int MostChoices = 4096;

    private readonly GrowthWheels wheels;

    private Ladder(GrowthWheels wheels)
    {
        this.wheels = wheels;
        var rungs = new List<Rung>();
        for (WheelPlaces? at = Lowest(); at is not null; at = Next(at))
            rungs.Add(new(at, wheels.DoseAt(at), wheels.WorkAt(at)));
        Rungs = rungs.ToSeries();
    }

    /// <summary>The first is the low end, the last the high end.</summary>
    public Series<Rung> Rungs { get; }

    /// <param name="envelope">With its ranges; at its high end no longer than 4 h.</param>
    public static Ladder Of(Dose envelope, DoseSettings settings) => new(new(envelope, settings));

    private WheelPlaces Lowest() => new(wheels.Sets.Low, [.. wheels.Times.Select(t => t.Low)], 0, new int[wheels.Efforts.Length]);

    /// <summary>Where the innermost wheel that is not at its high end has turned one notch; null at the high end.</summary>
    private WheelPlaces? Next(WheelPlaces at)
    {
        if (at.Time < wheels.Positions)
            return at with { Time = at.Time + 1 };
        var before = wheels.WorkAt(at);
        return Turned(at)
            .Select(place => Shortest(place, before))
            .OfType<WheelPlaces>()
            .Select(place => (Place: place, Growth: wheels.WorkAt(place).Since(before)))
            .OrderBy(turned => turned.Growth)
            .ThenByDescending(turned => wheels.TimesInAll(turned.Place))
            .ThenBy(turned => turned.Place.Time)
            .Select(turned => turned.Place)
            .FirstOrDefault();
    }

    /// <summary>The choices of the wheels outside time; which time goes with each is another matter.</summary>
    private IEnumerable<WheelPlaces> Turned(WheelPlaces at)
    {
        var times = Enumerable.Range(0, at.Times.Length).Where(i => at.Times[i] < wheels.Times[i].High).ToArray();
        if (times.Length > 0)
            return times.Select(i => at with { Times = OneUp(at.Times, i) });
        if (at.Sets < wheels.Sets.High)
            return EveryTimes().Select(chosen => at with { Sets = at.Sets + 1, Times = chosen });
        return Enumerable
            .Range(0, at.Effort.Length)
            .Where(i => at.Effort[i] < wheels.Efforts[i])
            .Select(i => at with { Effort = OneUp(at.Effort, i) });
    }

    /// <summary>The same choice with the shortest time at which no measure is less than before, which is also the least growth:
    /// every measure rises with time. Null where even the longest is less.</summary>
    private WheelPlaces? Shortest(WheelPlaces place, SideWork before)
    {
        var (low, high) = (0, wheels.Positions);
        if (!IsEnough(high))
            return null;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = IsEnough(middle) ? (low, middle) : (middle + 1, high);
        }

        return place with
        {
            Time = low,
        };

        bool IsEnough(int time) => wheels.WorkAt(place with { Time = time }).IsNoLessThan(before);
    }

    /// <summary>Every choice of one number from each count, the first varying slowest, each from high to low.</summary>
    private IEnumerable<int[]> EveryTimes()
    {
        var open = wheels.Times.Count(t => !t.IsSingle);
        var most = open == 0 ? 1 : Math.Max(2, (int)Math.Floor(Math.Pow(MostChoices, 1.0 / open)));
        IEnumerable<int[]> all =
        [
            [],
        ];
        foreach (var range in wheels.Times)
        {
            var numbers = Enumerable.Range(0, Math.Min(most, range.High - range.Low + 1)).Select(down => range.High - down);
            all = from head in all from number in numbers select (int[])[.. head, number];
        }

        return all;
    }

    private static int[] OneUp(int[] numbers, int at) => [.. numbers.Select((n, i) => i == at ? n + 1 : n)];
}

/// <summary>A dose on the way.</summary>
public sealed class Rung
{
    internal Rung(WheelPlaces at, Dose dose, SideWork work) => (At, Dose, Work) = (at, dose, work);

    /// <summary>Every number single.</summary>
    public Dose Dose { get; }

    /// <summary>In one session, of one side.</summary>
    public SideWork Work { get; }

    internal WheelPlaces At { get; }
}
