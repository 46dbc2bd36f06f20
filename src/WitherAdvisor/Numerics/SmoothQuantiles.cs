namespace WitherAdvisor.Numerics;

/// <summary>Quantiles of a quantity that is nearly normal, from few draws of it.</summary>
/// <remarks>
/// Cornish and Fisher (1937), first term: the normal quantile bent by the skewness. Order statistics of 48 draws in seven
/// dimensions miss the share that lies between them by up to a tenth, as one direction or another falls between the
/// points; mean and standard deviation of a lattice do not.
/// </remarks>
internal readonly struct SmoothQuantiles
{
    /// <summary>Beyond it the bent quantiles would pass one another.</summary>
    private const double MostSkewness = 1.5;

    private readonly double mean;
    private readonly double deviation;
    private readonly double skewness;

    /// <summary>From two draws or more.</summary>
    public SmoothQuantiles(IReadOnlyList<double> draws)
    {
        double average = draws.Average();
        mean = average;
        deviation = Math.Sqrt(draws.Average(draw => (draw - average) * (draw - average)));
        double third = draws.Average(draw => Math.Pow(draw - average, 3));
        skewness = deviation > 0 ? Math.Clamp(third / Math.Pow(deviation, 3), -MostSkewness, MostSkewness) : 0;
    }

    /// <summary>The value below which a share of cases (above 0, below 1) lie.</summary>
    public double At(double share)
    {
        double z = NormalLattice.InverseNormal(share);
        return mean + deviation * (z + (z * z - 1) * skewness / 6);
    }
}
