using System.Numerics;

namespace Gradus.Tests.Domain;

/// <summary>Which error is used, a second time.</summary>
internal sealed partial class SecondRanges
{
    /// <summary>The figures of the page, in tenths: measure, mode (empty for either), instrument, raters, tries, 90 per cent, for
    /// the change of the sides.</summary>
    private static readonly (
        string Measure,
        string Mode,
        string Instrument,
        int Raters,
        int Tries,
        int Tenths,
        bool At90,
        bool Sides
    )[] Figures =
    [
        ("lunge ankle dorsiflexion", "", "inclinometer", 1, 1, 47, false, false),
        ("lunge ankle dorsiflexion", "", "inclinometer", 2, 1, 46, false, false),
        ("knee to wall", "", "tape", 1, 1, 19, false, false),
        ("knee to wall", "", "tape", 2, 1, 16, false, false),
        ("knee to wall", "", "tape", 1, 1, 15, false, true),
        ("hip internal rotation", "active", "inclinometer", 1, 1, 54, false, false),
        ("thoracic rotation", "active", "inclinometer", 1, 3, 56, false, false),
        ("shoulder internal rotation", "active", "inclinometer", 1, 3, 40, true, false),
        ("shoulder internal rotation", "active", "inclinometer", 2, 2, 80, true, false),
    ];

    /// <summary>The square of the error, in the unit; null where there is none.</summary>
    private Fraction? Error(string[] parts, DayOf[] days, Dictionary<string, List<(int Difference, int Tries)>> own, bool ofSides)
    {
        var raters = slip == RangeSlip.OneRaterForAll || RatersOf(days) == 1 ? 1 : 2;
        var tries = days.Min(d => d.Tries);
        if (
            slip != RangeSlip.OwnPairsNever
            && own.TryGetValue($"{parts[0]}|{parts[2]}|{parts[3]}|{raters}", out var pairs)
            && IsGood(pairs)
        )
        {
            var allowance =
                pairs.Count < 15 ? 127
                : pairs.Count < 20 ? 121
                : pairs.Count < 30 ? 117
                : 113;
            BigInteger factor = new BigInteger(2771859) * allowance;
            var square = pairs.Aggregate(BigInteger.Zero, (sum, p) => sum + ((BigInteger)p.Difference * p.Difference));
            return new Fraction(factor * factor, BigInteger.Pow(10, 16))
                * new Fraction(square, 200 * pairs.Count)
                * More(pairs.Max(p => p.Tries), tries);
        }

        var kind =
            parts[3].Contains("at home", StringComparison.Ordinal) ? ""
            : parts[3].Contains("gonio", StringComparison.Ordinal) ? "goniometer"
            : parts[3].Contains("inclino", StringComparison.Ordinal) || parts[3].Contains("phone", StringComparison.Ordinal)
                ? "inclinometer"
            : parts[3].Contains("tape", StringComparison.Ordinal) ? "tape"
            : "";
        var fit = Figures
            .Where(f => f.Measure == parts[0] && f.Mode is "" || f.Mode == parts[2] && f.Measure == parts[0])
            .Where(f => f.Instrument == kind && f.Raters == raters && f.Sides == ofSides)
            .Select(f =>
                new Fraction(f.Tenths * f.Tenths, 100)
                * (
                    f.At90 && slip != RangeSlip.NinetyAsItStands
                        ? new Fraction(BigInteger.Pow(1191490, 2), BigInteger.Pow(10, 12))
                        : new(1, 1)
                )
                * More(f.Tries, tries)
            )
            .ToArray();
        return fit.Length == 0 ? null : fit.Aggregate((a, b) => a.Over * b.Under >= b.Over * a.Under ? a : b);
    }

    /// <summary>2.771859 · SD · 1.7 of the days at home before the start, three at least; never below 2 cm.</summary>
    private static Fraction? Home(string[] parts, List<DayOf>? baseline, int start)
    {
        int[] tenths = [.. (baseline ?? []).Where(d => d.Day <= start).Select(d => d.Tenths)];
        if (parts[0] != "knee to wall" || !parts[3].Contains("at home", StringComparison.Ordinal) || tenths.Length < 3)
            return null;
        var (n, sum) = (tenths.Length, new BigInteger(tenths.Sum()));
        var scatter = (n * tenths.Aggregate(BigInteger.Zero, (all, t) => all + ((BigInteger)t * t))) - (sum * sum);
        var square = new Fraction(22204448 * scatter, new BigInteger(100_000_000) * n * (n - 1));
        return square.Over < 4 * square.Under ? new(4, 1) : square;
    }

    private Fraction More(int there, int here) =>
        here < there && slip != RangeSlip.TriesDoNotMatter ? new(there, here) : new(1, 1);

    private bool IsGood(List<(int Difference, int Tries)> pairs)
    {
        if (pairs.Count < (slip == RangeSlip.OwnPairsFromTwo ? 2 : 10) || pairs.All(p => p.Difference == 0))
            return false;
        // |mean| > 2 SD/√n, with the sample's SD, times n and squared.
        var mean = pairs.Average(p => (double)p.Difference);
        var deviation = Math.Sqrt(pairs.Sum(p => Math.Pow(p.Difference - mean, 2)) / (pairs.Count - 1));
        return slip == RangeSlip.LeaningPairsCount || Math.Abs(mean) <= 2 * deviation / Math.Sqrt(pairs.Count);
    }

    private Dictionary<string, List<(int Difference, int Tries)>> OwnPairs(SecondClient[] clients, Row[][] rows)
    {
        var pairs = new Dictionary<string, List<(int, int)>>(StringComparer.Ordinal);
        foreach (var (client, measured) in clients.Zip(rows))
        foreach (var series in measured.GroupBy(KeyOf))
        {
            var days = Occasions(series).SelectMany(o => o).ToArray();
            for (var i = 1; i < days.Length; i++)
            {
                var (one, two) = (days[i - 1], days[i]);
                var end = client.Start.DayNumber + (7 * client.Weeks) - 1;
                var isTraining = two.Day > client.Start.DayNumber && one.Day <= end;
                if (two.Day - one.Day > 7 || (isTraining && slip != RangeSlip.OwnPairsInTraining))
                    continue;
                var parts = series.Key.Split('|');
                var key = $"{parts[0]}|{parts[2]}|{parts[3]}|{RatersOf([one, two])}";
                pairs.TryAdd(key, []);
                pairs[key].Add((two.Tenths - one.Tenths, Math.Max(one.Tries, two.Tries)));
                i++;
            }
        }

        return pairs;
    }

    private static int RatersOf(DayOf[] days) => days[0].By.Length > 0 && days.All(d => d.By == days[0].By) ? 1 : 2;
}
