using System.Globalization;
using System.Numerics;

namespace Gradus.Tests.Domain;

/// <summary>What may be said of readings, written a second time from the page of the rules alone: whole
/// tenths and fractions of whole numbers, no root anywhere.</summary>
internal sealed partial class SecondRanges(RangeSlip slip = RangeSlip.None)
{
    private static readonly string[] Ankle = ["lying ankle dorsiflexion", "lunge ankle dorsiflexion", "knee to wall"];

    private sealed record Row(
        int Day,
        string Motion,
        string Side,
        string Mode,
        int Tenths,
        string Tool,
        string By,
        int Tries,
        bool After
    );

    private sealed record DayOf(int Day, int Tenths, int Tries, string By);

    private sealed record Fraction(BigInteger Over, BigInteger Under)
    {
        public static Fraction operator *(Fraction a, Fraction b) => new(a.Over * b.Over, a.Under * b.Under);

        /// <summary>Whether a number of tenths, squared, is at least this.</summary>
        public bool IsReachedBy(BigInteger tenths) => tenths * tenths * Under >= 100 * Over;
    }

    /// <summary>Lines that say everything about everybody.</summary>
    public string[][] Of(SecondClient[] clients, (string Motion, string Role, string Mode, int Least)[] demands, DateOnly today)
    {
        var all = clients.Select(c => Rows(c.Csv, today)).ToArray();
        var own = OwnPairs(clients, clients.Select(c => Rows(c.Csv, DateOnly.MaxValue)).ToArray());
        return [.. clients.Select((c, i) => Lines(c, all[i], own, demands, today).Order(StringComparer.Ordinal).ToArray())];
    }

    private IEnumerable<string> Lines(
        SecondClient client,
        Row[] rows,
        Dictionary<string, List<(int Difference, int Tries)>> own,
        (string Motion, string Role, string Mode, int Least)[] demands,
        DateOnly today
    )
    {
        var start = client.Start.DayNumber;
        var series = rows.GroupBy(KeyOf).ToDictionary(g => g.Key, g => Occasions(g), StringComparer.Ordinal);
        foreach (var (key, occasions) in series.Where(s => s.Value.Count > 0))
        {
            var parts = key.Split('|');
            var latest = occasions[^1];
            var before = slip switch
            {
                RangeSlip.BaselineIsTheFirst => occasions.FirstOrDefault(o => o[0].Day <= start),
                RangeSlip.BaselineIsTheLatest => occasions.LastOrDefault(),
                _ => occasions.LastOrDefault(o => o[0].Day <= start),
            };
            var home = Home(parts, occasions.LastOrDefault(o => o[0].Day <= start), start);
            var since = before is null || before == latest ? "none" : Word(client, parts, before, latest, own, home);
            var last = occasions.Count < 2 ? null : occasions[^2];
            var other = last is null || last == before ? "none" : Word(client, parts, last, latest, own, home);
            var sudden = latest.Count > 1 && Word(client, parts, [latest[^2]], [latest[^1]], own, home) == "Less" ? "sudden" : "";
            yield return $"{key}: {(before is null ? "none" : Mean(before))} {Mean(latest)} {since} {other} {sudden}".TrimEnd();
        }

        foreach (var (key, left) in series.Where(s => s.Key.Contains("|left|", StringComparison.Ordinal)))
        {
            if (!series.TryGetValue(key.Replace("|left|", "|right|", StringComparison.Ordinal), out var right))
                continue;
            var pairs = left.Select(l => (Left: l, Right: right.LastOrDefault(r => AreOne(l, r))))
                .Where(p => p.Right is not null)
                .Select(p => (p.Left, Right: p.Right ?? []))
                .ToArray();
            if (pairs.Length == 0)
                continue;
            var now = pairs[^1];
            var then = pairs.LastOrDefault(p => Math.Min(p.Left[0].Day, p.Right[0].Day) <= start);
            var error = Error(key.Split('|'), [.. now.Left, .. now.Right], own, false);
            var difference = Mean(now.Left) - Mean(now.Right);
            var word =
                error is null ? "NotJudged"
                : error.IsReachedBy(difference) ? "Differ"
                : "NotShown";
            var change = "none";
            if (then.Left is not null && (then.Left != now.Left || then.Right != now.Right))
            {
                DayOf[] days = [.. now.Left, .. now.Right, .. then.Left, .. then.Right];
                var twice = Error(key.Split('|'), days, [], true);
                var margin = twice ?? (Error(key.Split('|'), days, own, false) is { } one ? one * new Fraction(2, 1) : null);
                var by = difference - (Mean(then.Left) - Mean(then.Right));
                change =
                    margin is null ? "no error"
                    : margin.IsReachedBy(by) ? "changed"
                    : "not shown";
            }

            yield return $"sides {key}: {difference} {word} {change}";
        }

        foreach (var demand in demands)
        {
            var isRight = client.IsRightHanded || slip == RangeSlip.RoleIsRightHanded;
            var side = demand.Role is "rear leg" or "free arm" == isRight ? "left" : "right";
            var found = series
                .Where(s => s.Value.Count > 0)
                .Select(s => (Parts: s.Key.Split('|'), Latest: s.Value[^1]))
                .Where(s =>
                    s.Parts[0] == demand.Motion
                    && s.Parts[1] == side
                    && (s.Parts[2] == demand.Mode || slip == RangeSlip.ModesTogether)
                )
                .OrderByDescending(s => s.Latest[^1].Day)
                .ThenBy(s => Mean(s.Latest))
                .ToArray();
            yield return $"demand {demand.Motion} {side}: {DemandWord(demand, found, own, today)}";
        }
    }

    private string DemandWord(
        (string Motion, string Role, string Mode, int Least) demand,
        (string[] Parts, List<DayOf> Latest)[] found,
        Dictionary<string, List<(int, int)>> own,
        DateOnly today
    )
    {
        if (demand.Mode.Length == 0)
            return "ModeNotWritten";
        if (found.Length == 0)
            return "NotMeasured";
        var (parts, latest) = found[0];
        if (today.DayNumber - latest[^1].Day > 180 && slip != RangeSlip.OldIsGood)
            return "Old";
        if (Error(parts, [.. latest], own, false) is not { } error)
            return "NotJudged";
        var half = error * new Fraction(1, 2 * latest.Count);
        var above = Mean(latest) - demand.Least;
        return above >= 0 && half.IsReachedBy(above) ? "Enough"
            // Below the mark by more than the half width: as wide as it is no longer below.
            : above < 0 && half.IsReachedBy(above) && 100 * half.Over != (BigInteger)above * above * half.Under ? "Short"
            : "NotTold";
    }

    private string Word(
        SecondClient client,
        string[] parts,
        List<DayOf> from,
        List<DayOf> to,
        Dictionary<string, List<(int, int)>> own,
        Fraction? home
    )
    {
        var (n, m) = slip == RangeSlip.DaysDoNotMatter ? (1, 1) : (from.Count, to.Count);
        var square = Error(parts, [.. from, .. to], own, false);
        if ((square is null ? home : square * new Fraction(n + m, 2 * n * m)) is not { } error)
            return "NotJudged";
        var difference = Mean(to) - Mean(from);
        var apart = to[0].Day - from[^1].Day;
        var isBeyond = error.IsReachedBy(difference);
        if (slip == RangeSlip.ErrorIsLeftOut)
            isBeyond = difference != 0;
        if (isBeyond && difference <= 0 && slip != RangeSlip.LessIsNotSaid)
            return "Less";
        if (apart < 7)
            return "NotJudged";
        if (!isBeyond || difference < 0)
            return "NotShown";
        var trained = Ankle.Contains(parts[0]) ? "ankle dorsiflexion" : parts[0];
        var isGained =
            !client.IsVeryMobile
            && apart >= 14
            && client.Work.Any(w =>
                w.Motion == trained
                && (w.Side.Length == 0 || w.Side == parts[1])
                && client.Start.DayNumber + (7 * (w.From - 1)) < to[0].Day
                && client.Start.DayNumber + (7 * w.Until) - 1 >= from[^1].Day
            );
        return isGained || slip == RangeSlip.EveryMoreIsGain ? "Gain" : "More";
    }

    private bool AreOne(List<DayOf> a, List<DayOf> b) =>
        slip == RangeSlip.SidesOfOtherDays || Math.Max(a[^1].Day, b[^1].Day) - Math.Min(a[0].Day, b[0].Day) < 7;

    private string KeyOf(Row row) =>
        $"{row.Motion}|{row.Side}|{row.Mode}|{(slip == RangeSlip.InstrumentsTogether ? "inclinometer" : row.Tool)}";

    private List<List<DayOf>> Occasions(IEnumerable<Row> rows)
    {
        var occasions = new List<List<DayOf>>();
        var days = rows.Where(r => !r.After || slip == RangeSlip.AfterTrainingCounts)
            .GroupBy(r => r.Day)
            .OrderBy(g => g.Key)
            .Select(g => new DayOf(
                g.Key,
                Rounded(g.Sum(r => r.Tenths * r.Tries), g.Sum(r => r.Tries)),
                g.Sum(r => r.Tries),
                g.Select(r => r.By).Distinct().Count() == 1 ? g.First().By : ""
            ));
        foreach (var day in days)
        {
            if (occasions.Count > 0 && day.Day - occasions[^1][0].Day < 7 && slip != RangeSlip.DaysOfAWeekStayApart)
                occasions[^1].Add(day);
            else
                occasions.Add([day]);
        }

        return occasions;
    }

    private static int Mean(List<DayOf> days) => Rounded(days.Sum(d => d.Tenths), days.Count);

    /// <summary>The half away from zero.</summary>
    private static int Rounded(int sum, int count) => Math.Sign(sum) * (((2 * Math.Abs(sum)) + count) / (2 * count));

    private static Row[] Rows(string csv, DateOnly today)
    {
        var lines = csv.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var names = lines[0].Split(',');
        return
        [
            .. lines[1..]
                .Select(line =>
                {
                    var cells = line.Split(',');
                    string Cell(string name) => Array.IndexOf(names, name) is >= 0 and var at ? cells[at] : "";
                    var tries = Cell("trials");
                    return new Row(
                        DateOnly.ParseExact(Cell("date"), "yyyy-MM-dd", CultureInfo.InvariantCulture).DayNumber,
                        Cell("motion"),
                        Cell("side"),
                        Cell("mode"),
                        (int)(decimal.Parse(Cell("value"), CultureInfo.InvariantCulture) * 10),
                        Cell("instrument"),
                        Cell("by"),
                        tries.Length == 0 ? 1 : int.Parse(tries, CultureInfo.InvariantCulture),
                        Cell("after") == "training"
                    );
                })
                .Where(r => r.Day <= today.DayNumber),
        ];
    }
}
