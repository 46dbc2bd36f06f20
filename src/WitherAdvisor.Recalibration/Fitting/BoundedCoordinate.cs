using MathNet.Numerics.Distributions;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>
/// A coefficient as the fit sees it: a normal variable about 0 that stands for the coefficient's logarithm (or itself, where it
/// is a fraction), normal about its prior too but cut off at the ends of its range.
/// </summary>
/// <remarks>
/// Where the range is wide beside the spread, the coordinate is the logarithm of the ratio to the prior. Each tail is reckoned
/// from its own end, so that neither loses digits.
/// </remarks>
internal sealed class BoundedCoordinate
{
    /// <summary>Shares of a tail below this are no longer distinguished.</summary>
    private const double LeastShare = 1e-290;

    private readonly bool logarithmic;
    private readonly double centre;
    private readonly double spread;
    private readonly double belowRange;
    private readonly double aboveRange;

    public BoundedCoordinate(double prior, double lowest, double highest, bool logarithmic, double spread)
    {
        this.logarithmic = logarithmic;
        this.spread = spread;
        centre = Inner(Math.Clamp(prior, lowest, highest));
        belowRange = Normal.CDF(0, 1, (Inner(lowest) - centre) / spread);
        aboveRange = Normal.CDF(0, 1, (centre - Inner(highest)) / spread);
    }

    private double Within => 1 - belowRange - aboveRange;

    /// <summary>The logarithm of the coefficient, or the coefficient where it is a fraction.</summary>
    public double InnerAt(double coordinate)
    {
        bool upper = coordinate > 0;
        double tail = Normal.CDF(0, 1, -Math.Abs(coordinate) / spread);
        double share = Math.Max((upper ? aboveRange : belowRange) + Within * tail, LeastShare);
        double deviations = Normal.InvCDF(0, 1, share);
        return centre + spread * (upper ? -deviations : deviations);
    }

    /// <summary>Change of the inner value by coordinate.</summary>
    public double Slope(double coordinate)
    {
        double from = coordinate / spread;
        double to = (InnerAt(coordinate) - centre) / spread;
        return Within * Math.Exp((to * to - from * from) / 2);
    }

    /// <summary>The coefficient itself.</summary>
    public double ValueAt(double coordinate) => Value(InnerAt(coordinate));

    /// <summary>The coordinate of an inner value; past an end of the range, that of the end.</summary>
    public double Of(double inner)
    {
        double deviations = (inner - centre) / spread;
        double below = (Normal.CDF(0, 1, deviations) - belowRange) / Within;
        double above = (Normal.CDF(0, 1, -deviations) - aboveRange) / Within;
        return below < above
            ? spread * Normal.InvCDF(0, 1, Math.Max(below, LeastShare))
            : -spread * Normal.InvCDF(0, 1, Math.Max(above, LeastShare));
    }

    public double Value(double inner) => logarithmic ? Math.Exp(inner) : inner;

    public double Inner(double value) => logarithmic ? Math.Log(value) : value;
}
