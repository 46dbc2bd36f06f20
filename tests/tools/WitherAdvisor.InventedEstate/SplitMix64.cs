namespace WitherAdvisor.InventedEstate;

/// <summary>A small generator of random numbers that gives the same ones on every machine and every version of .NET.</summary>
/// <remarks>Steele, Lea and Flood (2014), Fast splittable pseudorandom number generators, OOPSLA.</remarks>
public sealed class SplitMix64(ulong seed)
{
    private ulong state = seed;

    public ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        ulong z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>From 0 to below 1.</summary>
    public double NextFraction() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Between two bounds, each value as likely as another.</summary>
    public double Between(double low, double high) => low + (high - low) * NextFraction();

    /// <summary>
    /// About normal, with a standard deviation: a sum of twelve, because the usual way takes logarithms and cosines,
    /// whose last digit differs from machine to machine.
    /// </summary>
    public double Around(double mean, double standardDeviation)
    {
        double sum = 0;
        for (int i = 0; i < 12; i++)
        {
            sum += NextFraction();
        }

        return mean + standardDeviation * (sum - 6);
    }
}
