namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>
/// A coefficient as the fit sees it: 0 at its prior, about the logarithm of the ratio to it (or the difference from it)
/// nearby, and never out of its range.
/// </summary>
/// <remarks>A logistic curve between the ends of the range, scaled to a slope of 1 at the prior.</remarks>
internal sealed class BoundedCoordinate
{
    /// <summary>A prior on the very end of its range could not move; this share of the range it is kept off.</summary>
    private const double OffTheEnd = 0.01;

    private readonly bool logarithmic;
    private readonly double low;
    private readonly double range;
    private readonly double centre;
    private readonly double slopeAtPrior;

    public BoundedCoordinate(double prior, double lowest, double highest, bool logarithmic)
    {
        this.logarithmic = logarithmic;
        low = Inner(lowest);
        range = Inner(highest) - low;
        double share = Math.Clamp((Inner(prior) - low) / range, OffTheEnd, 1 - OffTheEnd);
        centre = Math.Log(share / (1 - share));
        slopeAtPrior = range * share * (1 - share);
    }

    /// <summary>The logarithm of the coefficient, or the coefficient where it is a fraction.</summary>
    public double InnerAt(double coordinate) => low + range * Share(coordinate);

    /// <summary>Change of the inner value by coordinate.</summary>
    public double Slope(double coordinate)
    {
        double share = Share(coordinate);
        return range * share * (1 - share) / slopeAtPrior;
    }

    /// <summary>The coefficient itself.</summary>
    public double ValueAt(double coordinate) => Value(InnerAt(coordinate));

    /// <summary>The coordinate of an inner value, kept within the range.</summary>
    public double Of(double inner)
    {
        double share = Math.Clamp((inner - low) / range, 1e-6, 1 - 1e-6);
        return (Math.Log(share / (1 - share)) - centre) * slopeAtPrior;
    }

    public double Value(double inner) => logarithmic ? Math.Exp(inner) : inner;

    public double Inner(double value) => logarithmic ? Math.Log(value) : value;

    private double Share(double coordinate) => 1 / (1 + Math.Exp(-(centre + coordinate / slopeAtPrior)));
}
