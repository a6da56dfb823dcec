using Gradus.Domain;

namespace Gradus.Tests.Domain;

public sealed class OwnErrorTests
{
    /// <summary>Weir JP 2005, J Strength Cond Res 19(1):231-40, data set A; its mean square error of 57.107143 takes the mean
    /// difference out, the formula for pairs leaves it in: SEM 7.556927 there, 7.331439 here, both computed; the published
    /// minimal difference of the first is 20.946732.</summary>
    [Fact]
    public void The_data_of_Weir_give_the_error_of_the_formula()
    {
        int[] first = [146, 148, 170, 90, 157, 156, 176, 205];
        int[] second = [140, 152, 152, 99, 145, 153, 167, 218];
        var differences = first.Zip(second, (a, b) => (decimal)(b - a)).ToArray();
        var own = new OwnError(8, differences.Sum(), differences.Sum(d => d * d), 1);
        Assert.Equal(7.33144m, own.Sem);
        var (sum, squares, n) = (own.Sum, own.SumOfSquares, own.Pairs);
        var meanSquare = (squares - (sum * sum / n)) / (2 * (n - 1));
        Assert.Equal(57.107143m, Math.Round(meanSquare, 6));
        Assert.Equal(7.55693m, Roots.Of(meanSquare));
        Assert.Equal(20.9467m, Math.Round(Roots.Of(meanSquare * OwnError.ChangePerSem * OwnError.ChangePerSem), 4));
        Assert.False(own.IsUsable, "Eight pairs are too few.");
    }

    /// <summary>BMC Sports Sci Med Rehabil 2020, 12, doi 10.1186/s13102-020-00179-8, Table 2 (seen).</summary>
    [Theory]
    [InlineData(10.66, 29.55)]
    [InlineData(9.85, 27.30)]
    [InlineData(9.04, 25.06)]
    [InlineData(9.09, 25.20)]
    public void The_smallest_change_follows_from_the_standard_error(double sem, double mdc) =>
        Assert.Equal((decimal)mdc, Math.Round(OwnError.ChangePerSem * (decimal)sem, 2, MidpointRounding.AwayFromZero));

    /// <summary>√(n/χ²) with the lower fifth of χ² for n = 10, 15, 20 and 30 degrees of freedom: 6.179, 10.307, 14.578, 23.364
    /// (tables of the distribution, from memory).</summary>
    [Theory]
    [InlineData(10, 6.179)]
    [InlineData(14, 6.179)]
    [InlineData(15, 10.307)]
    [InlineData(19, 10.307)]
    [InlineData(20, 14.578)]
    [InlineData(29, 14.578)]
    [InlineData(30, 23.364)]
    [InlineData(400, 23.364)]
    public void Few_pairs_have_a_larger_allowance(int pairs, double chi)
    {
        var least =
            pairs < 15 ? 10
            : pairs < 20 ? 15
            : pairs < 30 ? 20
            : 30;
        Assert.Equal((decimal)Math.Round(Math.Sqrt(least / chi), 2), new OwnError(pairs, 0, 1, 1).Allowance);
    }

    /// <summary>Ten differences of 2 and −2 by turns: SEM √2, 2.771859 · √2 · 1.27 = 4.97840.</summary>
    [Fact]
    public void Ten_pairs_are_enough_and_nine_are_not()
    {
        var own = new OwnError(10, 0, 40, 1);
        Assert.Equal((1.41421m, true), (own.Sem, own.IsUsable));
        Assert.Equal(4.97840m, Roots.Of(own.Square));
        Assert.False(new OwnError(9, 0, 40, 1).IsUsable);
    }

    /// <summary>Ten differences: eight of 3, two of −1. Mean 2.2, SD 1.68655, 2 · SD/√10 = 1.06667: they lean. Five of 2 and five
    /// of −1: mean 0.5, SD 1.58114, 1.0: they do not.</summary>
    [Fact]
    public void Pairs_that_lean_to_one_side_are_not_used()
    {
        Assert.True(new OwnError(10, 22, 74, 1).IsSystematic);
        Assert.False(new OwnError(10, 5, 25, 1).IsSystematic);
    }

    [Fact]
    public void Pairs_that_never_differ_are_no_error_of_nothing() => Assert.False(new OwnError(10, 0, 0, 1).IsUsable);
}
