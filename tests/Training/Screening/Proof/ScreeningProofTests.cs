using Gradus.Domain;
using Gradus.Tests.House;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Nothing forbidden is ever in a site: made clients are judged by the product and by a second, simple judgement, and
/// every site that comes out is looked through. A thousand clients in a plain run, a hundred thousand in a long one.</summary>
[Trait("Slow", "yes")]
public sealed class ScreeningProofTests(ITestOutputHelper output)
{
    internal static readonly DateOnly Today = new(2027, 1, 18);

    private const int ClientsOfAPractice = 20;

    private static readonly int Practices = LongProof.Whole ? 5000 : 80;

    [Fact]
    public void The_two_judgements_agree_and_no_site_holds_what_is_forbidden()
    {
        var spread = new ProofSpread();
        Parallel.For(0, Practices, new() { MaxDegreeOfParallelism = 2 }, number =>
        {
            foreach (var judged in ProofCase.Of(number, ClientsOfAPractice))
                spread.Take(judged);
        });
        output.WriteLine(spread.Table());
        foreach (var difference in spread.Differences.Order(StringComparer.Ordinal).Take(40))
            output.WriteLine(difference);
        Assert.Empty(spread.Differences.Take(5));
        Assert.Equal(Practices * ClientsOfAPractice, spread.Cases);
        Assert.Empty(spread.Missing());
    }

    public static TheoryData<string> Slips => [.. Enum.GetNames<ProofSlip>().Where(s => s != nameof(ProofSlip.None))];

    /// <summary>The comparison is no empty one: a screening that made this mistake would fail it.</summary>
    [Theory, MemberData(nameof(Slips))]
    public void A_mistake_of_this_kind_would_be_seen(string slip)
    {
        var wrong = Enum.Parse<ProofSlip>(slip);
        var cases = JudgedForSlips.Value;
        var differ = LongProof
            .First(
                1,
                cases
                    .Index()
                    .Where(c => !new SecondJudgement(c.Item.Library, c.Item.Client, wrong).Everything().SetEquals(c.Item.Right))
            )
            .Select(c => c.Index)
            .ToArray();
        Assert.NotEmpty(differ);
        output.WriteLine(
            $"{slip}: of {cases.Length} cases the {differ[0] + 1}. differs{(LongProof.Whole ? $", {differ.Length} in all" : "")}"
        );
    }

    /// <summary>A site into which a forbidden exercise found its way would be seen: by its page, and by its title in any
    /// text.</summary>
    [Theory]
    [InlineData("exercise-d0.html", "<p>Nothing</p>")]
    [InlineData("session-1.html", "<p>Today: Drill d0 and more</p>")]
    public void A_forbidden_exercise_in_a_site_would_be_seen(string path, string html) =>
        Assert.Single(
            ProofCase.Forbidden(
                new Site(new("m0"), [new("index.html", "<p>Drill d1</p>"), new(path, html)], []),
                ["Drill d0", "Drill d2"]
            )
        );

    /// <summary>What the coach is shown as allowed has nothing against it in any use of any client, alternate or
    /// version.</summary>
    [Fact]
    public void What_is_shown_to_the_coach_is_what_is_judged()
    {
        var seen = new SortedDictionary<Verdict, int>();
        foreach (var made in MadeForSlips.Value.Take(20))
        {
            var practice = made.Files().Read();
            foreach (var client in practice.Clients)
            {
                var verdicts = Allowance.Of(practice, client).ToDictionary(a => a.Exercise.Id, a => a.Verdict);
                foreach (var verdict in verdicts.Values)
                    seen[verdict] = seen.GetValueOrDefault(verdict) + 1;
                foreach (var use in Planned.Uses(practice, client).Where(u => u.Weeks.Count > 0))
                {
                    var against = use.Against.Count > 0;
                    if (verdicts[use.Exercise.Id] == Verdict.Allowed)
                        Assert.False(against, $"{client.Id} {use.Exercise.Id}");
                }
            }
        }

        output.WriteLine(string.Join(", ", seen.Select(s => $"{s.Key}: {s.Value}")));
        Assert.Equal(3, seen.Count);
    }

    private static readonly Lazy<MadePractice[]> MadeForSlips = new(() =>
        [.. Enumerable.Range(0, 100).Select(n => MadePractice.Of(new Chance((ulong)(n + 1)), ClientsOfAPractice))]
    );

    /// <summary>What is right for each made client, judged once for all slips.</summary>
    private static readonly Lazy<(MadeLibrary Library, MadeClient Client, SortedSet<string> Right)[]> JudgedForSlips = new(() =>
        [
            .. from made in MadeForSlips.Value
            from client in made.Clients
            select (made.Library, client, new SecondJudgement(made.Library, client, ProofSlip.None).Everything()),
        ]
    );
}
