using System.Collections.Concurrent;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>One break of one site, and what was found.</summary>
/// <param name="Rules">Those that found it at the level that it needs; empty where none did.</param>
/// <param name="ByBytes">Whether only the comparison with the sources saw it.</param>
internal sealed record Break(string Kind, Sketch Sketch, string Site, Series<string> Rules, bool ByBytes)
{
    /// <summary>What a file says now, from where it is another on; empty where that does not matter.</summary>
    public string Said { get; init; } = "";

    /// <summary>Every so many a break is tried on a large site first, where an audit takes its time.</summary>
    private const int Large = 8;

    private static readonly Lazy<Series<Break>> Judged = new(() => JudgeAll().ToSeries());

    /// <summary>All of them, judged once for all tests.</summary>
    public static Series<Break> All => Judged.Value;

    public bool IsFound => Rules.Count > 0 || ByBytes;

    public string Name => $"{Kind} | {Sketch.Operator} | {Sketch.Place} | {Site}";

    /// <summary>The sketches that no site has a place for.</summary>
    public static ConcurrentBag<string> WithoutPlace { get; } = [];

    private static IEnumerable<Break> JudgeAll()
    {
        var sketches = ProofKinds
            .Listed.SelectMany(k => ProofKinds.Tried[k.Kind].Select(sketch => (k.Kind, Sketch: sketch)))
            .Index()
            .Where(s => LongProof.Whole || s.Index % 10 == 0)
            .ToArray();
        var judged = new ConcurrentBag<(int, int, Break)>();
        _ = ProofSite.All;
        Parallel.ForEach(sketches, s =>
        {
            foreach (var (number, one) in Of(s.Item.Kind, s.Item.Sketch, s.Index).Index())
                judged.Add((s.Index, number, one));
        });
        return judged.OrderBy(j => (j.Item1, j.Item2)).Select(j => j.Item3);
    }

    /// <summary>On the first site that has the place.</summary>
    private static IEnumerable<Break> Of(string kind, Sketch sketch, int number)
    {
        var seed = (ulong)number + 16;
        foreach (var site in SitesFor(number))
        {
            if (sketch.Make(site, new Chance(seed)) is not { } broken)
                continue;
            var rules = site.Found(broken)
                .Where(f => f.Level == Level.Error || (sketch.Warns && f.Rule.Text == NameBreaks.Rule))
                .Where(f => kind != "names" || f.Rule.Text == NameBreaks.Rule)
                .Select(f => f.Rule.Text)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .ToSeries();
            var byBytes = sketch.Bytes && rules.Count == 0 && site.IsSeenByComparison(broken);
            yield return new(kind, sketch, site.Name, rules, byBytes)
            {
                Said = rules.Count > 0 || byBytes ? "" : Difference.Of(site.Site, broken),
            };
            yield break;
        }

        WithoutPlace.Add($"{kind} | {sketch.Operator} | {sketch.Place}");
    }

    /// <summary>The small ones in turn; the large ones where those have no such place, and once in a while.</summary>
    private static IEnumerable<ProofSite> SitesFor(int number)
    {
        var (small, large) = (ProofSite.All.Take(ProofSite.Small), ProofSite.All.Skip(ProofSite.Small));
        return LongProof.Whole && number % Large == 0
            ? Turned(large, number / Large).Concat(small)
            : Turned(small, number).Concat(large);
    }

    private static IEnumerable<ProofSite> Turned(IEnumerable<ProofSite> sites, int by)
    {
        var all = sites.ToArray();
        return all.Skip(by % all.Length).Concat(all.Take(by % all.Length));
    }
}
