namespace WitherAdvisor.Numerics;

/// <summary>Roots of increasing functions, kept between two bounds.</summary>
internal static class BracketedRoot
{
    private const int MostSteps = 200;

    /// <summary>
    /// The argument at which an increasing function is zero, to within <paramref name="tolerance"/>; the nearer
    /// bound where it has no zero between them.
    /// </summary>
    /// <remarks>Regula falsi with the Illinois correction (Dowell and Jarratt 1971), halving when it crawls.</remarks>
    public static double Find(Func<double, double> increasing, double low, double high, double tolerance)
    {
        double atLow = increasing(low);
        double atHigh = increasing(high);
        if (atLow >= 0)
        {
            return low;
        }

        if (atHigh <= 0)
        {
            return high;
        }

        for (int step = 0; step < MostSteps && high - low > tolerance; step++)
        {
            double middle = step % 4 == 3 ? (low + high) / 2 : high - atHigh * (high - low) / (atHigh - atLow);
            double atMiddle = increasing(middle);
            if (Math.Abs(middle - low) < tolerance / 4 && atMiddle < 0)
            {
                // The secant sits on the bound: step just over it so that the bracket can close.
                middle = low + tolerance / 2;
                atMiddle = increasing(middle);
            }

            if (atMiddle < 0)
            {
                low = middle;
                atLow = atMiddle;
                atHigh /= 2;
            }
            else
            {
                high = middle;
                atHigh = atMiddle;
                atLow /= 2;
            }
        }

        return (low + high) / 2;
    }
}
