using Gradus.Planning;

namespace Gradus.Tests.Trainings;

/// <summary>Made sessions, with and without rounds: the sum of the steps against the closed formulas of dose-line.md, Arithmetic,
/// written here a second time from the numbers that were drawn.</summary>
[Trait("Slow", "yes")]
public sealed class SessionSumTests(ITestOutputHelper output)
{
    private const int Plans = 250;
    private const int SessionsOfAPlan = 8;
    private const int GetReady = 5;

    private static readonly string[] Sides = ["on left", "each side", "alternate sides"];
    private static readonly string[] Positions = ["standing", "squat", "supine", "prone", "sitting"];

    /// <summary>Slips that somebody could make, each a formula of its own.</summary>
    private static readonly string[] Slips =
    [
        "ready again in every round",
        "a rest behind the last round",
        "no change between uses",
        "the sets of the line",
        "no change of sides in a round",
        "no way back to the first use",
        "no transition",
    ];

    [Fact]
    public void The_steps_take_what_the_formulas_say()
    {
        var chance = new Chance(20261125);
        var kinds = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var caught = Slips.ToDictionary(s => s, _ => 0);
        for (var plan = 0; plan < Plans; plan++)
        {
            var made = Enumerable.Range(0, SessionsOfAPlan).Select(s => Made.Of(chance, s)).ToArray();
            var sessions = PlanOf(made).Sessions;
            foreach (var (session, index) in made.Select((m, i) => (m, i)))
            {
                var total = Assert.Single(sessions[index].Weeks).Total.Value;
                Assert.True(session.Total("") == total, $"{session.Written}\nformula {session.Total("")}, steps {total}");
                foreach (var slip in Slips)
                    caught[slip] += session.Total(slip) == total ? 0 : 1;
                foreach (var kind in session.Kinds)
                    kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
            }
        }

        foreach (var (kind, count) in kinds)
            output.WriteLine($"{kind, -44}{count, 6}");
        output.WriteLine("");
        foreach (var (slip, count) in caught)
            output.WriteLine($"{slip, -44}{count, 6} sessions would be wrong");
        Assert.All(kinds.Values, count => Assert.True(count > 50));
        Assert.All(caught.Values, count => Assert.True(count > 50));
    }

    private static Plan PlanOf(Made[] sessions)
    {
        var club = sessions
            .SelectMany(s => s.Uses)
            .Aggregate(Club.Empty, (c, u) => c.Exercise(u.Id, u.Dose, position: u.Position));
        return club.Member("ansel", [.. sessions.Select(s => s.Written)]).Plan("ansel");
    }

    private sealed record MadeUse(string Id, string Position, int Sets, int Seconds, int Rest, int Switch, string Side)
    {
        public string Dose =>
            $"{Sets} x hold {Seconds} s{(Sets > 1 ? $", rest {Rest} s" : "")}, "
            + $"{Side}{(Side == Sides[0] ? "" : $", switch {Switch} s")}";

        public int Alone =>
            Side switch
            {
                "each side" => (2 * ((Sets * Seconds) + ((Sets - 1) * Rest))) + Switch,
                "alternate sides" => (Sets * ((2 * Seconds) + Switch)) + ((Sets - 1) * Math.Max(Rest, Switch)),
                _ => (Sets * Seconds) + ((Sets - 1) * Rest),
            };

        public int OneSet(string slip) => Side == Sides[0] ? Seconds : (2 * Seconds) + (slip == Slips[4] ? 0 : Switch);
    }

    private sealed record Block(MadeUse[] Uses, int Rounds, int? Rest, int? Change);

    private sealed record Made(Block[] Blocks)
    {
        public IEnumerable<MadeUse> Uses => Blocks.SelectMany(b => b.Uses);

        public string Written =>
            string.Join(
                '\n',
                Blocks.Select(b =>
                    b.Rounds == 0
                        ? $"- use: {b.Uses[0].Id}"
                        : $"- rounds: {b.Rounds}"
                            + (b.Rest is { } rest ? $"\n  rest: {rest} s" : "")
                            + (b.Change is { } change ? $"\n  change: {change} s" : "")
                            + $"\n  of: [{string.Join(", ", b.Uses.Select(u => $"{{ use: {u.Id} }}"))}]"
                )
            );

        public IEnumerable<string> Kinds =>
            Blocks
                .SelectMany(b => b.Uses.Select(u => $"{(b.Rounds == 0 ? "alone" : "in rounds")}, {u.Side}"))
                .Concat(
                    Blocks
                        .Where(b => b.Rounds > 0)
                        .Select(b =>
                            $"rounds of {b.Uses.Length}, {(b.Rest is null ? "no rest" : "a rest")}, "
                            + $"{(b.Change is null ? "no change" : "a change")}"
                        )
                )
                .Distinct();

        public static Made Of(Chance chance, int session)
        {
            var blocks = new Block[1 + chance.Below(3)];
            for (var b = 0; b < blocks.Length; b++)
            {
                var rounds = chance.Below(2) == 0 ? 0 : 1 + chance.Below(4);
                var uses = Enumerable
                    .Range(0, rounds == 0 ? 1 : 2 + chance.Below(2))
                    .Select(u => new MadeUse(
                        $"use-{session}-{b}-{u}",
                        chance.Of(Positions),
                        1 + chance.Below(3),
                        5 + chance.Below(40),
                        chance.Below(60),
                        chance.Below(20),
                        chance.Of(Sides)
                    ))
                    .ToArray();
                blocks[b] = new(
                    uses,
                    rounds,
                    chance.Below(3) == 0 ? null : chance.Below(90),
                    chance.Below(3) == 0 ? null : chance.Below(40)
                );
            }

            return new(blocks);
        }

        /// <param name="slip">Empty for the right formula.</param>
        public int Total(string slip)
        {
            var total = 0;
            MadeUse? before = null;
            foreach (var block in Blocks)
            {
                if (before is not null && slip != Slips[6])
                    total += Transition(before, block.Uses[0]);
                before = block.Uses[^1];
                if (block.Rounds == 0)
                {
                    total += GetReady + block.Uses[0].Alone;
                    continue;
                }

                var rounds = slip == Slips[3] ? block.Uses[0].Sets : block.Rounds;
                var changes =
                    slip == Slips[2]
                        ? 0
                        : block.Uses.Zip(block.Uses.Skip(1)).Sum(p => block.Change ?? Transition(p.First, p.Second));
                var back = block.Rest ?? (slip == Slips[5] ? 0 : Transition(block.Uses[^1], block.Uses[0]));
                total +=
                    (block.Uses.Length * GetReady * (slip == Slips[0] ? rounds : 1))
                    + (rounds * (block.Uses.Sum(u => u.OneSet(slip)) + changes))
                    + ((rounds - (slip == Slips[1] ? 0 : 1)) * back);
            }

            return total;
        }

        /// <summary>10 s where the position stays, 45 s between the floor and standing, otherwise 30 s; no use has
        /// equipment.</summary>
        private static int Transition(MadeUse from, MadeUse to)
        {
            var (a, b) = (Height(from.Position), Height(to.Position));
            return from.Position == to.Position ? 10
                : Math.Abs(a - b) == 2 ? 45
                : 30;
        }

        private static int Height(string position) =>
            position is "standing" or "squat" ? 2
            : position == "sitting" ? 1
            : 0;
    }
}
