using WitherAdvisor.Coefficients;
using WitherAdvisor.LeafAtLoading;

namespace WitherAdvisor.Plans.Uncertainty;

/// <summary>Standard deviations of all that is uncertain about a wither under a plan.</summary>
/// <param name="TissueMoistureWetBasis">Of the leaf at loading.</param>
/// <param name="SurfaceWaterKgPerKg">Of the leaf at loading.</param>
/// <param name="Coefficients">Of the set, and of the airflow.</param>
/// <param name="NightAirK">Of the night's own air, K of dry bulb as it works on the leaf, mean of a night.</param>
internal sealed record UncertainSpreads(
    double TissueMoistureWetBasis, double SurfaceWaterKgPerKg, CoefficientSpreads Coefficients, double NightAirK)
{
    /// <summary>
    /// Where there is heat people hold the hygrometric difference by two thermometers, to about 0.4 K: as K of plenum
    /// dry bulb, mean of a night (from memory).
    /// </summary>
    public const double HeldAirK = 0.55;

    /// <summary>Without heat the night's own air counts: forecast, its dry bulb and dew point are off by 0.8 K each.</summary>
    public const double ForecastAirK = 1.1;

    /// <summary>The same where the day before is taken for the night, each off by 1.5 K.</summary>
    public const double UnknownAirK = 2.0;

    public static UncertainSpreads Of(LeafEstimate leaf, CoefficientSpreads coefficients, bool forecast) => new(
        leaf.TissueMoistureWetBasis.StandardDeviation, leaf.SurfaceWaterKgPerKg.StandardDeviation, coefficients,
        forecast ? ForecastAirK : UnknownAirK);
}
