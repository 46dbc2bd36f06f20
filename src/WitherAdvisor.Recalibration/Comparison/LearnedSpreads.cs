using MathNet.Numerics.LinearAlgebra;
using WitherAdvisor.Leaf;
using WitherAdvisor.Recalibration.Fitting;

namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>What the outcomes leave open, as an advice takes it.</summary>
/// <remarks>
/// An advice draws each coefficient on its own, but outcomes tell their joint effect better than each of them: half again as
/// much skin with less air dries as before. All spreads are shrunk by one factor, so that drawn apart they give the ready
/// time the spread that they have together.
/// </remarks>
internal static class LearnedSpreads
{
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
        double stress = occasions.Average(one => one.Wither.Features.WaterStress);
        return prior.Spreads with
        {
            SkinConductance = factor * learned.Deviation(FittedCoefficient.Skin),
            BoundaryConductance = factor * learned.Deviation(FittedCoefficient.Film),
            SurfaceCapacity = factor * learned.Deviation(FittedCoefficient.SurfaceCapacity),
            TurnBlend = learned.Deviation(FittedCoefficient.TurnBlend),
            Airflow = factor * learned.Deviation(FittedCoefficient.Airflow),
            SurfaceRetention = factor * learned.Deviation(FittedCoefficient.Retention),
            DroughtMoistureWetBasis = factor * MoistureDeviation(covariance, stress),
            DroughtToWetMoistureGain = learned.Deviation(FittedCoefficient.MoistureGain),
        };
    }

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
