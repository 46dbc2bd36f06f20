namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>Middles and trends that a few odd values do not move.</summary>
internal static class RobustStatistics
{
    /// <summary>Standard deviation of a normal variable over the median of its distance from its middle.</summary>
    public const double DeviationPerMedian = 1.4826;

    /// <summary>The value below which a share (0 to 1) of sorted values lies.</summary>
    public static double Quantile(double[] sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int below = (int)place;
        int above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    public static double Median(IEnumerable<double> values) => Quantile([.. values.Order()], 0.5);

    /// <summary>Slope of y over x and its 90 % interval, from the slopes between all pairs.</summary>
    /// <remarks>Theil (1950), Sen (1968): the interval from the variance of Kendall's statistic.</remarks>
    public static (double Slope, double Low, double High) Trend(double[] x, double[] y)
    {
        int n = x.Length;
        double[] slopes =
        [
            .. from i in Enumerable.Range(0, n)
               from j in Enumerable.Range(i + 1, n - i - 1)
               select (y[j] - y[i]) / (x[j] - x[i]),
        ];
        Array.Sort(slopes);
        double deviation = Math.Sqrt(n * (n - 1.0) * (2 * n + 5) / 18);
        double half = 1.6449 * deviation / (2.0 * slopes.Length);
        return (Quantile(slopes, 0.5), Quantile(slopes, Math.Max(0.5 - half, 0)), Quantile(slopes, Math.Min(0.5 + half, 1)));
    }
}
