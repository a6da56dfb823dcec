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
        var (now, tried, slope) = (new double[wishes], new double[wishes], new double[n, wishes]);
        var (square, right) = (new double[n, n], new double[n]);
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
                for (var k = 0; k < wishes; k++)
                    slope[i, k] = (tried[k] - now[k]) / Step;
            }

            var gained = 0.0;
            while (damping < 1e12)
            {
                Normal(slope, now, damping, square, right);
                if (Solve(square, right) is { } way)
                {
                    var next = new double[n];
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

            if (gained <= cost * 1e-7)
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

    private static void Normal(double[,] slope, double[] now, double damping, double[,] square, double[] right)
    {
        var (n, wishes) = (slope.GetLength(0), slope.GetLength(1));
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = 0.0;
                for (var k = 0; k < wishes; k++)
                    sum += slope[i, k] * slope[j, k];
                square[i, j] = square[j, i] = sum;
            }

            var along = 0.0;
            for (var k = 0; k < wishes; k++)
                along += slope[i, k] * now[k];
            right[i] = along;
        }

        for (var i = 0; i < n; i++)
            square[i, i] += damping * (square[i, i] + 1e-6);
    }

    /// <summary>Cholesky's way; null where rounding has left no positive root.</summary>
    private static double[]? Solve(double[,] square, double[] right)
    {
        var n = right.Length;
        var lower = new double[n, n];
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
                    return null;
            }
        }

        var found = new double[n];
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

        return found;
    }
}
