using System.Collections.Concurrent;
using Gradus.Domain;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>Breaks of finished sites, made from the list of kinds: each is found. A tenth of them in <c>tests/run</c>, the same
/// ones every time.</summary>
[Trait("Slow", "yes")]
public sealed class ProofTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_operator_that_the_list_names_is_tried_and_no_other()
    {
        Assert.True(ProofKinds.Listed.Count >= 16);
        foreach (var (kind, operators) in ProofKinds.Listed)
            Assert.Equal(
                operators.Order(StringComparer.Ordinal),
                ProofKinds.Tried[kind].Select(s => s.Operator).Distinct().Order(StringComparer.Ordinal)
            );
        Assert.Equal(ProofKinds.Listed.Count, ProofKinds.Tried.Count);
    }

    [Fact]
    public void Every_break_is_found()
    {
        var all = Break.All;
        var table = all.GroupBy(b => b.Kind).Select(kind => Row(kind.Key, kind)).Append(Row("all", all));
        output.WriteLine($"{"kind", -28}{"tried", 7}{"found", 7}{"missed", 8}{"by bytes alone", 16}\n{string.Join('\n', table)}");
        ProofRecord.Write();
        foreach (var missed in all.Where(b => !b.IsFound))
            output.WriteLine($"missed: {missed.Name}\n        {missed.Said}");
        foreach (var sketch in Break.WithoutPlace)
            output.WriteLine($"no place: {sketch}");
        Assert.True(all.Count >= LongProof.Cases(400), $"{all.Count} breaks");
        Assert.Equal("", string.Join('\n', Break.WithoutPlace.Order(StringComparer.Ordinal)));
        Assert.Equal("", string.Join('\n', all.Where(b => !b.IsFound).Select(b => b.Name)));
    }

    /// <summary>A proof that cannot fail proves nothing: without the one rule, breaks of its kinds are missed.</summary>
    [Theory]
    [InlineData("text-not-planned", "words added")]
    [InlineData("markup-not-known", "unseen")]
    [InlineData("other-client-named", "names")]
    public void Without_a_rule_breaks_of_its_kind_are_missed(string rule, string kind)
    {
        var missed = Break.All.Where(b => b.Kind == kind && b.IsFound && b.Rules.All(r => r == rule)).ToArray();
        output.WriteLine($"without {rule}: {missed.Length} of {Break.All.Count(b => b.Kind == kind)} of '{kind}' missed");
        Assert.NotEmpty(missed);
    }

    [Fact]
    public void Nothing_is_found_in_a_site_as_it_is_nor_written_anew()
    {
        foreach (var site in LongProof.First(4, ProofSite.All))
        {
            Assert.Equal("", Errors(site, site.Site));
            Assert.False(site.IsSeenByComparison(site.Site));
        }
    }

    [Fact]
    public void No_harmless_change_is_an_error()
    {
        var (tried, wrong) = (new ConcurrentBag<string>(), new ConcurrentBag<string>());
        _ = ProofSite.All;
        Parallel.ForEach(HarmlessChanges.All.Index().Where(s => LongProof.Whole || s.Index % 10 == 0), s =>
        {
            var (number, sketch) = s;
            var on = 0;
            for (var at = 0; at < ProofSite.All.Count && on < 2; at++)
            {
                var site = ProofSite.All[LongProof.Whole && at < ProofSite.Small ? (number + at) % ProofSite.Small : at];
                if (sketch.Make(site, new Chance((ulong)number + 16)) is not { } changed)
                    continue;
                on++;
                tried.Add(sketch.Operator);
                if (Errors(site, changed) is { Length: > 0 } errors)
                    wrong.Add($"{sketch.Operator} | {sketch.Place} | {site.Name}\n{errors}\n{Difference.Of(site.Site, changed)}");
            }

            if (on == 0)
                wrong.Add($"{sketch.Operator} | {sketch.Place}: no site has such a place.");
        });
        output.WriteLine($"{tried.Count} harmless changes, {wrong.Count} of them found\n{string.Join('\n', wrong)}");
        ProofRecord.Write();
        Assert.True(tried.Count >= LongProof.Cases(300), $"{tried.Count} changes");
        Assert.Empty(wrong);
    }

    private static string Errors(ProofSite site, Site changed) =>
        string.Join(
            '\n',
            site.Found(changed).Where(f => f.Level == Level.Error).Select(f => $"{f.At} {f.Rule}: {f.Message}").Take(3)
        );

    private static string Row(string name, IEnumerable<Break> breaks)
    {
        var all = breaks.ToArray();
        var (found, bytes) = (all.Count(b => b.IsFound), all.Count(b => b.ByBytes));
        return FormattableString.Invariant($"{name, -28}{all.Length, 7}{found, 7}{all.Length - found, 8}{bytes, 16}");
    }
}
