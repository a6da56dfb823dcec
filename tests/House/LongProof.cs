using System.Runtime.Loader;

namespace Gradus.Tests.House;

/// <summary>Proofs over many cases: a tenth of them in <c>tests/run</c>, the same ones every time, and all under <c>tests/run
/// --long</c>.</summary>
internal static class LongProof
{
    /// <summary>Never for the tests that judge mutants: they are loaded beside those that run.</summary>
    public static bool Whole { get; } =
        Environment.GetEnvironmentVariable("GRADUS_LONG") == "1"
        && AssemblyLoadContext.GetLoadContext(typeof(LongProof).Assembly) == AssemblyLoadContext.Default;

    /// <summary>Why a row is left out of <c>tests/run</c>: another one looks at the same in another dress.</summary>
    public const string Only = "Under tests/run --long only.";

    public static int Cases(int whole) => Whole ? whole : whole / 10;

    /// <summary>All of them, or those that count most.</summary>
    /// <param name="few">How many of them come first and are enough for <c>tests/run</c>.</param>
    public static IEnumerable<T> First<T>(int few, IEnumerable<T> whole) => Whole ? whole : whole.Take(few);

    /// <summary>All of them, or every tenth, from the first on.</summary>
    public static IEnumerable<T> Cases<T>(IEnumerable<T> whole) => Whole ? whole : whole.Where((_, i) => i % 10 == 0);
}
