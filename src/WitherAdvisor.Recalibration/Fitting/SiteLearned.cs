using MathNet.Numerics.LinearAlgebra;
using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>
/// The site's coefficients for leaf of which nobody says more: the fitted ones with the groups' offsets as the log mixes
/// them, so that they predict well on their own.
/// </summary>
internal sealed class SiteLearned
{
    /// <summary>Standard deviations to either end of a 90 % interval.</summary>
    public const double Of90 = 1.6449;

    /// <summary>
    /// However many outcomes: the bed is a model, and people who stop a wither by looking at the leaf make a log lean a
    /// little. No coefficient is known better than this, as a logarithm (synthetic logs lean by 2 % in g_0).
    /// </summary>
    private const double ModelError = 0.02;

    private readonly Posterior posterior;
    private readonly double[] mix;

    public SiteLearned(Posterior posterior, IReadOnlyList<Occasion> occasions)
    {
        this.posterior = posterior;
        mix = new double[posterior.Model.Groups.Count];
        foreach (Occasion occasion in occasions.Where(one => one.Group >= 0))
        {
            mix[occasion.Group] += 1.0 / occasions.Count;
        }

        Gradients = Matrix<double>.Build.Dense(FittedCoefficient.Count, posterior.Model.Count);
        Coordinates = new double[FittedCoefficient.Count];
        for (int at = 0; at < FittedCoefficient.Count; at++)
        {
            BoundedCoordinate coordinate = Fitted(at).Coordinate;
            double inner = coordinate.InnerAt(posterior.Coordinates[at]) + OffsetOf(at);
            Coordinates[at] = OffsetOf(at) == 0 ? posterior.Coordinates[at] : coordinate.Of(inner);
            double perInner = 1 / coordinate.Slope(Coordinates[at]);
            Gradients[at, at] = coordinate.Slope(posterior.Coordinates[at]) * perInner;
            for (int group = 0; group < mix.Length && PlaceIn(at) >= 0; group++)
            {
                Gradients[at, FitModel.PlaceOf(group) + PlaceIn(at)] = mix[group] * perInner;
            }
        }

        Covariance = Gradients * posterior.Covariance * Gradients.Transpose();
        if (posterior.Iterations > 0)
        {
            Covariance += Matrix<double>.Build.DenseDiagonal(
                FittedCoefficient.Count, FittedCoefficient.Count, at => Fitted(at).IsLogarithmic ? ModelError * ModelError : 0);
        }
    }

    /// <summary>The site's coordinates.</summary>
    public double[] Coordinates { get; }

    /// <summary>Of those, as the outcomes leave it.</summary>
    public Matrix<double> Covariance { get; }

    /// <summary>How the site's coordinates change with those of the fit.</summary>
    public Matrix<double> Gradients { get; }

    public Posterior Posterior => posterior;

    public FittedCoefficient Fitted(int at) => posterior.Model.Site[at];

    public double Deviation(int at) => Math.Sqrt(Covariance[at, at]);

    /// <summary>Variance before any outcome, the mix's offsets counted in.</summary>
    public double PriorVariance(int at)
    {
        double sum = 0;
        for (int i = 0; i < posterior.Model.Count; i++)
        {
            double part = Gradients[at, i] * posterior.Model.Spread(i);
            sum += part * part;
        }

        return sum;
    }

    public double Value(int at, double deviations = 0) =>
        Fitted(at).Coordinate.ValueAt(Coordinates[at] + deviations * Deviation(at));

    /// <summary>The set as it stands, with the prior's spreads.</summary>
    public WitherCoefficients Set(WitherCoefficients prior)
    {
        for (int at = 0; at < FittedCoefficient.Count; at++)
        {
            prior = Fitted(at).Coefficient.With(prior, Value(at));
        }

        return prior;
    }

    /// <summary>Offset of a group from the mix: logarithm of g_0 (0) or moisture (1), and its standard deviation.</summary>
    public (double Value, double Deviation) Offset(int group, int which)
    {
        Vector<double> gradient = Vector<double>.Build.Dense(posterior.Model.Count);
        for (int other = 0; other < mix.Length; other++)
        {
            gradient[FitModel.PlaceOf(other) + which] = (other == group ? 1 : 0) - mix[other];
        }

        double value = gradient * Vector<double>.Build.Dense(posterior.Coordinates);
        return (value, Math.Sqrt(gradient * (posterior.Covariance * gradient)));
    }

    /// <summary>How far leaf of the log's mix lies from the mix's mean, standard deviation: logarithm of g_0 (0) or moisture (1).</summary>
    public double SpreadOfGroups(int which)
    {
        double sum = 0;
        for (int group = 0; group < mix.Length; group++)
        {
            (double value, double deviation) = Offset(group, which);
            sum += mix[group] * (value * value + deviation * deviation);
        }

        return Math.Sqrt(sum);
    }

    private double OffsetOf(int at)
    {
        double sum = 0;
        for (int group = 0; group < mix.Length && PlaceIn(at) >= 0; group++)
        {
            sum += mix[group] * posterior.Coordinates[FitModel.PlaceOf(group) + PlaceIn(at)];
        }

        return sum;
    }

    /// <summary>Which of a group's offsets moves a coefficient; below 0 for none.</summary>
    private static int PlaceIn(int at) => at switch
    {
        FittedCoefficient.Cuticle => 0,
        FittedCoefficient.DroughtMoisture => 1,
        _ => -1,
    };
}
