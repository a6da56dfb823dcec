using Gradus.CommandLine;
using Gradus.Domain;
using Gradus.Tests.House;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Made programmes with one known difference: the comparison names it, and nothing else. What is expected is written
/// beside each difference, in the words of the command.</summary>
[Trait("Slow", "yes")]
public sealed class EditionProofTests(ITestOutputHelper output)
{
    private static readonly int Pairs = LongProof.Cases(2000);

    private static readonly Lazy<(MadeDifference Made, EditionContent Before, EditionContent After)[]> Cases = new(() =>
        [
            .. Enumerable
                .Range(0, Pairs)
                .Select(i => MadeDifference.Of((ulong)i))
                .Select(made => (made, made.Before.Content(), made.After.Content())),
        ]
    );

    [Fact]
    public void What_is_other_is_named_and_nothing_else()
    {
        var wrong = Cases.Value.Where(c => !Said(EditionComparison.Of(c.Before, c.After)).SequenceEqual(c.Made.Lines)).ToArray();
        foreach (var (made, before, after) in wrong.Take(5))
        {
            output.WriteLine($"{made.Kind}: {string.Join(" | ", made.Lines)}");
            output.WriteLine($"  said: {string.Join(" | ", Said(EditionComparison.Of(before, after)))}");
        }

        var spread = Cases.Value.CountBy(c => c.Made.Lines.Count == 0 ? "nothing" : c.Made.Kind).ToDictionary();
        foreach (var (kind, count) in spread.OrderBy(s => s.Key, StringComparer.Ordinal))
            output.WriteLine($"{kind}: {count}");
        Assert.Empty(wrong);
        Assert.Equal(Pairs, Cases.Value.Length);
        Assert.Equal(MadeDifference.Kinds.Order(StringComparer.Ordinal), spread.Keys.Order(StringComparer.Ordinal));
    }

    /// <summary>An edition is another one where something is named, and only there; and its record reads back.</summary>
    [Fact]
    public void The_hash_tells_what_the_comparison_tells_and_the_record_reads_back()
    {
        foreach (var (made, before, after) in Cases.Value)
        {
            Assert.Equal(made.Lines.Count > 0, EditionText.HashOf(before) != EditionText.HashOf(after));
            var hash = EditionText.HashOf(before);
            var edition = new Edition(1, new(2027, 1, 4), new('0', 64), hash, before, Location.Whole("x"));
            var path = Edition.PathOf(new(MadeProgramme.Member), 1);
            var read = made.Before.Files().With(path, EditionText.Print(edition)).Read().Clients.Single();
            Assert.Equal(edition with { At = Location.Whole(path) }, Assert.Single(read.Editions));
        }
    }

    public static TheoryData<string> Slips => [.. Slip.Keys];

    /// <summary>What a comparison might do wrong.</summary>
    private static readonly SortedDictionary<string, Func<EditionContent, EditionContent, IEnumerable<EditionChange>>> Slip = new(
        StringComparer.Ordinal
    )
    {
        ["forgets sides"] = (a, b) => EditionComparison.Of(a, b).Where(c => c is not EditionChange.Sides),
        ["blind to the text of signs"] = (a, b) => EditionComparison.Of(Unread(a), Unread(b)),
        ["takes the two for each other"] = (a, b) => EditionComparison.Of(b, a),
        ["looks at the first week alone"] = (a, b) => EditionComparison.Of(FirstWeek(a), FirstWeek(b)),
        ["names the signs of a new exercise"] = (a, b) =>
            EditionComparison
                .Of(a, b)
                .Concat(b.Cautions.ExceptBy(a.Cautions.Select(c => c.Id), c => c.Id).Select(c => new EditionChange.CautionIn(c)))
                .Distinct(),
        ["knows exercises by their place"] = (a, b) =>
            a.Sessions.Zip(b.Sessions).Any(s => s.First.Uses.Zip(s.Second.Uses).Any(u => u.First.Exercise != u.Second.Exercise))
                ? [new EditionChange.Order("Session 1")]
                : EditionComparison.Of(a, b),
        ["says nothing of clinicians"] = (a, b) => EditionComparison.Of(a with { Clearances = [] }, b with { Clearances = [] }),
    };

    [Theory, MemberData(nameof(Slips))]
    public void A_mistake_of_this_kind_would_be_seen(string slip)
    {
        var seen = Cases.Value.Count(c => !Said(Slip[slip](c.Before, c.After)).SequenceEqual(c.Made.Lines));
        output.WriteLine($"{slip}: seen in {seen} of {Pairs}");
        Assert.True(seen > 0, "It is not seen.");
    }

    private static IEnumerable<string> Said(IEnumerable<EditionChange> changes) => changes.SelectMany(CompareText.Lines);

    private static EditionContent Unread(EditionContent content) =>
        content with
        {
            Cautions = content.Cautions.Select(c => c with { Words = "" }).ToSeries(),
        };

    private static EditionContent FirstWeek(EditionContent content) =>
        content with
        {
            Sessions = content
                .Sessions.Select(s =>
                    s with
                    {
                        Uses = s.Uses.Select(u => u with { Asks = u.Asks.Take(1).ToSeries() }).ToSeries(),
                    }
                )
                .ToSeries(),
        };
}
