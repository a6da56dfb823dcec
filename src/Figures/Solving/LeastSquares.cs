namespace Gradus.Figures;

/// <summary>Levenberg's and Marquardt's way to the smallest sum of squares (Marquardt DW, An algorithm for least-squares
/// estimation of nonlinear parameters, J SIAM 11:431-441, 1963), with derivatives by small steps. The same numbers in, the same
/// numbers out.</summary>
internal static class LeastSquares
{
    private const int MostRounds = 80;
    private const double Step = 1e-6;

    /// <param name="values">Where to begin; holds the best that was found afterwards.</param>
    /// <param name="misses">Fills in how far each wish is missed, weighted.</param>
    /// <param name="wishes">How many there are.</param>
    public static void Settle(double[] values, int wishes, Action<double[], double[]> misses)
    {
        var n = values.Length;
        var (now, tried, next) = (new double[wishes], new double[wishes], new double[n]);
        var slopes = new Slope[n];
        for (var i = 0; i < n; i++)
            slopes[i] = new(wishes);
        var (square, damped, lower) = (new double[n, n], new double[n, n], new double[n, n]);
        var (right, way) = (new double[n], new double[n]);
        misses(values, now);
        var cost = Sum(now);
        var damping = 1e-3;
        for (var round = 0; round < MostRounds && damping < 1e12; round++)
        {
            for (var i = 0; i < n; i++)
            {
                var kept = values[i];
                values[i] = kept + Step;
                misses(values, tried);
                values[i] = kept;
                slopes[i].Take(now, tried);
            }

            Normal(slopes, now, square, right);
            var gained = 0.0;
            while (damping < 1e12)
            {
                Damp(square, damped, damping);
                if (Solve(damped, right, lower, way))
                {
                    for (var i = 0; i < n; i++)
                        next[i] = values[i] - way[i];
                    misses(next, tried);
                    var better = Sum(tried);
                    if (better < cost)
                    {
                        gained = cost - better;
                        next.CopyTo(values, 0);
                        tried.CopyTo(now, 0);
                        cost = better;
                        damping = Math.Max(damping / 10, 1e-9);
                        break;
                    }
                }

                damping *= 10;
            }

            if (gained <= (cost * 1e-7) + 1e-9)
                return;
        }
    }

    private static double Sum(double[] misses)
    {
        var sum = 0.0;
        foreach (var miss in misses)
            sum += miss * miss;
        return sum;
    }

    private static void Normal(Slope[] slopes, double[] now, double[,] square, double[] right)
    {
        for (var i = 0; i < slopes.Length; i++)
        {
            for (var j = 0; j <= i; j++)
                square[i, j] = square[j, i] = slopes[i].Dot(slopes[j].All);
            right[i] = slopes[i].Dot(now);
        }
    }

    private static void Damp(double[,] square, double[,] damped, double damping)
    {
        Array.Copy(square, damped, square.Length);
        for (var i = 0; i < square.GetLength(0); i++)
            damped[i, i] += damping * (square[i, i] + 1e-6);
    }

    /// <summary>Cholesky's way.</summary>
    /// <param name="lower">Room to work in.</param>
    /// <param name="found">Filled with what was found.</param>
    /// <returns>False where rounding has left no positive root.</returns>
    private static bool Solve(double[,] square, double[] right, double[,] lower, double[] found)
    {
        var n = right.Length;
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = square[i, j];
                for (var k = 0; k < j; k++)
                    sum -= lower[i, k] * lower[j, k];
                if (i != j)
                    lower[i, j] = sum / lower[j, j];
                else if (sum > 0)
                    lower[i, i] = Math.Sqrt(sum);
                else
                    return false;
            }
        }

        for (var i = 0; i < n; i++)
        {
            var sum = right[i];
            for (var k = 0; k < i; k++)
                sum -= lower[i, k] * found[k];
            found[i] = sum / lower[i, i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var sum = found[i];
            for (var k = i + 1; k < n; k++)
                sum -= lower[k, i] * found[k];
            found[i] = sum / lower[i, i];
        }

        return true;
    }

    /// <summary>What each wish changes by with one number. Most wishes depend on few of the numbers, so only those that are not
    /// zero are summed.</summary>
    private sealed class Slope(int wishes)
    {
        private readonly int[] some = new int[wishes];
        private int count;

        public double[] All { get; } = new double[wishes];

        public void Take(double[] now, double[] after)
        {
            count = 0;
            for (var k = 0; k < All.Length; k++)
            {
                All[k] = (after[k] - now[k]) / Step;
                if (All[k] != 0)
                    some[count++] = k;
            }
        }

        public double Dot(double[] other)
        {
            var sum = 0.0;
            for (var s = 0; s < count; s++)
                sum += All[some[s]] * other[some[s]];
            return sum;
        }
    }
}
