using Gradus.Auditing;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>The contrast of two colours held against npm wcag-contrast, on generated pairs with a fixed seed; half of them lie
/// near each other, where a page fails or passes.</summary>
public sealed class ContrastTests(ITestOutputHelper output)
{
    private static readonly int Pairs = LongProof.Cases(10_000);

    [Fact]
    public async Task It_is_the_same_as_another_counts_it()
    {
        var pairs = Made(Pairs);
        var theirs = await Node.Ask<string[][], double[]>(
            "count-contrast.mjs",
            [.. pairs.Select(p => new[] { p.One.ToString(), p.Other.ToString() })]
        );
        var ours = pairs.Select(p => Colour.Contrast(p.One, p.Other)).ToArray();
        var apart = ours.Zip(theirs, (mine, its) => Math.Abs(mine - its)).Max();
        int[] passing = [ours.Count(c => c >= 4.5), ours.Count(c => c is >= 3 and < 4.5), ours.Count(c => c < 3)];
        output.WriteLine(
            $"{Pairs} pairs: {passing[0]} of 4.5 or more, {passing[1]} of 3 or more, {passing[2]} of less; {apart:e1} "
                + "apart at most."
        );
        Assert.Equal(Pairs, theirs.Length);
        Assert.All(passing, count => Assert.True(count > Pairs / 20, $"{count} prove little."));
        Assert.True(apart < 1e-9, $"{apart} apart");
        Assert.Equal(ours.Select(c => (c >= 3, c >= 4.5)), theirs.Select(c => (c >= 3, c >= 4.5)));
    }

    private static (Colour One, Colour Other)[] Made(int count)
    {
        var state = 20_261_207u;
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                {
                    var one = Next();
                    return (Of(one), Of(i % 2 == 0 ? Next() : one ^ (Next() & 0x7F7F7F)));
                }),
        ];

        // Numerical Recipes' generator: the same pairs on every machine.
        uint Next()
        {
            state = unchecked((state * 1_664_525u) + 1_013_904_223u);
            return state >> 8;
        }
    }

    private static Colour Of(uint bits) => new((bits >> 16) / 255.0, ((bits >> 8) & 255) / 255.0, (bits & 255) / 255.0);
}
