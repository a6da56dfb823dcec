using System.Runtime.Loader;

namespace Gradus.Tests.Mutants;

/// <summary>The mutants of a little room, of which it is known what becomes of each.</summary>
[Trait("Slow", "yes")]
public sealed class MutantRunTests
{
    private const string Tally = """
        namespace Planted;

        public static class Tally
        {
            private static readonly int[] Doubled = [2];

            public static bool IsLarge(int number) => number > 5;

            public static int Twice(int number) => number * Doubled[0];

            public static string? Kind(object o) => o is int number && number > 0 ? "some" : null;

            public static int CountDown(int from)
            {
                var steps = 0;
                for (; from > 0; from--)
                    steps++;
                return steps;
            }

            public static int Deep(int number) => number <= 0 ? 0 : Deep(number - 1);

            public static bool Unasked(int number) => number == 5;
        }
        """;

    private static readonly string Written = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());

    private static readonly Lazy<Judged[]> All = new(() =>
        [
            .. new MutantRun(
                MutatedRoom.Of("Planted", [("Planted/Tally.cs", Tally)], References(), [], _ => true, found => found),
                AppContext.BaseDirectory,
                (context, _) => Cases(context),
                new(Written, "one build"),
                "Near"
            ).Judge(),
        ]
    );

    [Theory]
    [InlineData("IsLarge: number > 5 → number <= 5", Fate.Killed)]
    [InlineData("IsLarge: number > 5 → number >= 5", Fate.Survived)] // nobody asks about five
    [InlineData("Twice: number * Doubled[0] → number / Doubled[0]", Fate.Killed)]
    [InlineData("Doubled: 2 → 3", Fate.Killed)] // made once, when the class is first used
    [InlineData("Kind: o is int number && number > 0 → !(o is int number && number > 0)", Fate.Killed)]
    [InlineData("Kind: body emptied", Fate.Killed)]
    [InlineData("CountDown: from > 0 → from <= 0", Fate.Killed)]
    [InlineData("CountDown: from-- → from++", Fate.Killed)] // never ends
    [InlineData("CountDown: steps++; → ;", Fate.Killed)]
    [InlineData("Deep: number - 1 → number + 1", Fate.Killed)] // calls itself for ever
    [InlineData("Unasked: number == 5 → number != 5", Fate.NotCovered)]
    public void What_becomes_of_it_is_known(string mutant, object fate) =>
        Assert.Equal(fate, Assert.Single(All.Value, j => j.Mutant.Name == $"Planted/Tally.cs {mutant}").Fate);

    [Fact]
    public void What_does_not_compile_is_no_mutant() =>
        Assert.DoesNotContain(All.Value, j => j.Mutant.Name.Contains("is int number || number", StringComparison.Ordinal));

    private static IEnumerable<string> References() =>
        ((string?)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") ?? "").Split(Path.PathSeparator);

    private static IEnumerable<JudgeCase> Cases(AssemblyLoadContext context)
    {
        var tally = context.LoadFromAssemblyName(new("Planted")).GetType("Planted.Tally");
        object? Said(string member, object given) => tally?.GetMethod(member)?.Invoke(null, [given]);
        yield return new("TallyTests", "TallyTests.IsLarge()", () =>
            Assert.Equal((true, false), (Said("IsLarge", 9), Said("IsLarge", 1)))
        );
        yield return new("TallyTests", "TallyTests.Twice()", () => Assert.Equal(8, Said("Twice", 4)));
        yield return new("TallyTests", "TallyTests.Kind()", () =>
            Assert.Equal(("some", null), (Said("Kind", 1), Said("Kind", 0)))
        );
        yield return new("TallyTests", "TallyTests.CountDown()", () => Assert.Equal(3, Said("CountDown", 3)));
        yield return new("TallyTests", "TallyTests.Deep()", () => Assert.Equal(0, Said("Deep", 3)));
    }
}
