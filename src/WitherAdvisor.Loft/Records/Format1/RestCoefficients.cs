using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Loft.Records.Format1;

/// <summary>The coefficient set of a kept request: mm/s, percent and points become m/s and fractions.</summary>
internal static class RestCoefficients
{
    public static WitherCoefficients Read(RestFields? given)
    {
        WitherCoefficients usual = new();
        return given is not { } set ? usual : new()
        {
            SetName = set.TextOrNull("set_name") ?? "inline",
            SpecificLeafAreaM2PerKgDry = set.NumberOrNull("leaf_area_dry_m2_per_kg") ?? usual.SpecificLeafAreaM2PerKgDry,
            BoundaryLayerConductanceMPerS = set.NumberOrNull("boundary_conductance_mm_per_s") / 1000 ?? usual.BoundaryLayerConductanceMPerS,
            CuticularConductanceMPerS = set.NumberOrNull("skin_conductance_mm_per_s") / 1000 ?? usual.CuticularConductanceMPerS,
            EquilibriumMoistureDryBasis = set.NumberOrNull("equilibrium_moisture_kg_per_kg") ?? usual.EquilibriumMoistureDryBasis,
            SurfaceCapacityKgPerKg = set.NumberOrNull("surface_capacity_kg_per_kg") ?? usual.SurfaceCapacityKgPerKg,
            TurnBlend = set.NumberOrNull("turn_blend_percent") / 100 ?? usual.TurnBlend,
            SurfaceRetention = set.NumberOrNull("surface_retention_percent") / 100 ?? usual.SurfaceRetention,
            CanopyCapacityMm = set.NumberOrNull("canopy_capacity_mm") ?? usual.CanopyCapacityMm,
            DroughtMoistureWetBasis = set.NumberOrNull("drought_moisture_wet_basis_percent") / 100 ?? usual.DroughtMoistureWetBasis,
            DroughtToWetMoistureGain = set.NumberOrNull("drought_to_wet_moisture_gain_points") / 100 ?? usual.DroughtToWetMoistureGain,
            AirflowFactor = set.NumberOrNull("airflow_factor_percent") / 100 ?? usual.AirflowFactor,
            Spreads = Spreads(set.ObjectOrNull("spreads")),
        };
    }

    private static CoefficientSpreads Spreads(RestFields? given)
    {
        CoefficientSpreads usual = new();
        return given is not { } spreads ? usual : new()
        {
            CuticularConductance = spreads.NumberOrNull("skin_conductance_fraction") ?? usual.CuticularConductance,
            BoundaryLayerConductance = spreads.NumberOrNull("boundary_conductance_fraction") ?? usual.BoundaryLayerConductance,
            SurfaceCapacity = spreads.NumberOrNull("surface_capacity_fraction") ?? usual.SurfaceCapacity,
            SurfaceRetention = spreads.NumberOrNull("surface_retention_fraction") ?? usual.SurfaceRetention,
            DroughtMoistureWetBasis = spreads.NumberOrNull("drought_moisture_points") / 100 ?? usual.DroughtMoistureWetBasis,
            DroughtToWetMoistureGain =
                spreads.NumberOrNull("drought_to_wet_moisture_gain_points") / 100 ?? usual.DroughtToWetMoistureGain,
            TurnBlend = spreads.NumberOrNull("turn_blend_points") / 100 ?? usual.TurnBlend,
            Airflow = spreads.NumberOrNull("airflow_fraction") ?? usual.Airflow,
        };
    }
}
