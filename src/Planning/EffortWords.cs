using System.Globalization;
using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>How hard a session was, from 0 to 10: some of the numbers say what so much is like, in words of our own.</summary>
public static class EffortWords
{
    private const int Most = 10;

    /// <summary>Each number with what stands beside it to choose.</summary>
    public static IEnumerable<(int Number, string Said)> All(Words words) =>
        Enumerable
            .Range(0, Most + 1)
            .Select(n =>
                (
                    n,
                    n % 2 == 0
                        ? words.Say(FormattableString.Invariant($"guide-effort-at-{n}"))
                        : n.ToString(CultureInfo.InvariantCulture)
                )
            );
}
