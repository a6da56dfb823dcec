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

    /// <summary>On how many sites each sketch is tried.</summary>
    private const int Sites = 2;

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

    /// <summary>On the first sites that have the place, from a chosen one on.</summary>
    private static IEnumerable<Break> Of(string kind, Sketch sketch, int number)
    {
        var wanted = LongProof.Whole ? Sites : 1;
        var sites = LongProof.Whole ? ProofSite.All : ProofSite.All.Take(4).ToSeries();
        var seed = (ulong)number + 16;
        var tried = 0;
        for (var at = 0; at < ProofSite.All.Count && tried < wanted; at++)
        {
            var site = at < sites.Count ? sites[(number + at) % sites.Count] : ProofSite.All[at];
            Site? broken;
            try
            {
                broken = sketch.Make(site, new Chance(seed));
            }
            catch (NullReferenceException e)
            {
                WithoutPlace.Add($"{kind} | {sketch.Operator} | {sketch.Place} | {site.Name}: {e}");
                continue;
            }

            if (broken is null)
                continue;
            tried++;
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
        }

        if (tried == 0)
            WithoutPlace.Add($"{kind} | {sketch.Operator} | {sketch.Place}");
    }
}
