using MathNet.Numerics.LinearAlgebra;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Fitting;

namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>What the outcomes leave open, as an advice takes it.</summary>
/// <remarks>
/// An advice draws each coefficient on its own, but outcomes tell their joint effect better than each of them: half again as
/// much cuticle with less air dries as before. All spreads are shrunk by one factor, so that drawn apart they give the ready
/// time the spread that they have together. The site's set stands for leaf of any group, so how far groups part is in its spreads.
/// </remarks>
internal static class LearnedSpreads
{
    /// <summary>However many outcomes: the bed is a model, and no coefficient of it is truer than this (from memory).</summary>
    private const double Least = 0.02;

    /// <summary>The same of a moisture, wet basis.</summary>
    private const double LeastMoisture = 0.002;

    /// <summary>Those of the site's set.</summary>
    /// <param name="learned">Of the site.</param>
    /// <param name="occasions">For the drought that the log has seen.</param>
    /// <param name="readyGradients">Change of the logarithm of ready time with the site's coordinates, one column for each typical batch.</param>
    /// <param name="prior">For what is not fitted.</param>
    public static CoefficientSpreads Of(
        SiteLearned learned, IReadOnlyList<Occasion> occasions, Matrix<double> readyGradients, WitherCoefficients prior)
    {
        Matrix<double> covariance = learned.Covariance;
        double together = 0;
        double apart = 0;
        foreach (Vector<double> gradient in readyGradients.EnumerateColumns())
        {
            together += gradient * (covariance * gradient);
            apart += Enumerable.Range(0, gradient.Count).Sum(i => gradient[i] * gradient[i] * covariance[i, i]);
        }

        double factor = apart > 0 ? Math.Min(Math.Sqrt(together / apart), 1) : 1;
        double Of(int at) => Math.Max(factor * learned.Deviation(at), Least);
        double stress = occasions.Average(one => one.Wither.Features.WaterStress);
        return prior.Spreads with
        {
            CuticularConductance = Both(Of(FittedCoefficient.Cuticle), learned.SpreadOfGroups(0)),
            BoundaryLayerConductance = Of(FittedCoefficient.Film),
            SurfaceCapacity = Of(FittedCoefficient.SurfaceCapacity),
            TurnBlend = learned.Deviation(FittedCoefficient.TurnBlend),
            Airflow = Of(FittedCoefficient.Airflow),
            SurfaceRetention = Of(FittedCoefficient.Retention),
            DroughtMoistureWetBasis = Both(Math.Max(factor * MoistureDeviation(covariance, stress), LeastMoisture), learned.SpreadOfGroups(1)),
            DroughtToWetMoistureGain = learned.Deviation(FittedCoefficient.MoistureGain),
        };
    }

    /// <summary>Those of one group's set: its own leaf is no longer spread about the site's, but it is less well known.</summary>
    public static CoefficientSpreads OfGroup(SiteLearned learned, int group, CoefficientSpreads site) => site with
    {
        CuticularConductance = Math.Max(learned.Offset(group, 0).Deviation, Least),
        DroughtMoistureWetBasis = Math.Max(learned.Offset(group, 1).Deviation, LeastMoisture),
    };

    private static double Both(double first, double second) => Math.Sqrt(first * first + second * second);

    /// <summary>Of moisture at the log's mean stress: ends and middle of the scale are told together.</summary>
    private static double MoistureDeviation(Matrix<double> covariance, double stress)
    {
        double share = Math.Clamp((stress - 0.3) / 0.7, 0, 1);
        double dry = covariance[FittedCoefficient.DroughtMoisture, FittedCoefficient.DroughtMoisture];
        double gain = covariance[FittedCoefficient.MoistureGain, FittedCoefficient.MoistureGain];
        double both = covariance[FittedCoefficient.DroughtMoisture, FittedCoefficient.MoistureGain];
        return Math.Sqrt(Math.Max(dry + share * share * gain + 2 * share * both, 0));
    }
}
