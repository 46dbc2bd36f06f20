using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>Spreads of a set between request and domain.</summary>
internal static class SpreadsMapping
{
    private const double PointsPerWhole = 100;

    public static CoefficientSpreads ToDomain(SpreadsRequest? input)
    {
        CoefficientSpreads usual = new();
        return input is null ? usual : new()
        {
            CuticularConductance = input.CuticularConductanceFraction ?? usual.CuticularConductance,
            BoundaryLayerConductance = input.BoundaryLayerConductanceFraction ?? usual.BoundaryLayerConductance,
            SurfaceCapacity = input.SurfaceCapacityFraction ?? usual.SurfaceCapacity,
            SurfaceRetention = input.SurfaceRetentionFraction ?? usual.SurfaceRetention,
            DroughtMoistureWetBasis = input.DroughtMoisturePoints / PointsPerWhole ?? usual.DroughtMoistureWetBasis,
            DroughtToWetMoistureGain = input.DroughtToWetMoistureGainPoints / PointsPerWhole ?? usual.DroughtToWetMoistureGain,
            TurnBlend = input.TurnBlendPoints / PointsPerWhole ?? usual.TurnBlend,
            Airflow = input.AirflowFraction ?? usual.Airflow,
        };
    }

    public static SpreadsRequest ToRequest(CoefficientSpreads spreads) => new()
    {
        CuticularConductanceFraction = spreads.CuticularConductance,
        BoundaryLayerConductanceFraction = spreads.BoundaryLayerConductance,
        SurfaceCapacityFraction = spreads.SurfaceCapacity,
        SurfaceRetentionFraction = spreads.SurfaceRetention,
        DroughtMoisturePoints = spreads.DroughtMoistureWetBasis * PointsPerWhole,
        DroughtToWetMoistureGainPoints = spreads.DroughtToWetMoistureGain * PointsPerWhole,
        TurnBlendPoints = spreads.TurnBlend * PointsPerWhole,
        AirflowFraction = spreads.Airflow,
    };
}
