using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Loft.Coefficients;

/// <summary>A number of a coefficient set as it is kept, in a unit that reads well.</summary>
/// <param name="Name">Kept under it; never changes.</param>
/// <param name="PerDomain">The kept value over that of the domain.</param>
/// <param name="Of">Its value in a set.</param>
/// <param name="With">A set with another value of it.</param>
internal sealed record SetNumber(
    string Name, double PerDomain, Func<WitherCoefficients, double> Of, Func<WitherCoefficients, double, WitherCoefficients> With)
{
    private const double Percent = 100;
    private const double MmPerM = 1000;

    /// <summary>All but what holds by definition.</summary>
    public static IReadOnlyList<SetNumber> Values { get; } =
    [
        Value("leaf_area_dry_m2_per_kg", nameof(WitherCoefficients.SpecificLeafAreaM2PerKgDry)),
        Value("boundary_conductance_mm_per_s", nameof(WitherCoefficients.BoundaryLayerConductanceMPerS), MmPerM),
        Value("skin_conductance_mm_per_s", nameof(WitherCoefficients.CuticularConductanceMPerS), MmPerM),
        Value("equilibrium_moisture_kg_per_kg", nameof(WitherCoefficients.EquilibriumMoistureDryBasis)),
        Value("surface_capacity_kg_per_kg", nameof(WitherCoefficients.SurfaceCapacityKgPerKg)),
        Value("turn_blend_percent", nameof(WitherCoefficients.TurnBlend), Percent),
        Value("surface_retention_percent", nameof(WitherCoefficients.SurfaceRetention), Percent),
        Value("canopy_capacity_mm", nameof(WitherCoefficients.CanopyCapacityMm)),
        Value("drought_moisture_wet_basis_percent", nameof(WitherCoefficients.DroughtMoistureWetBasis), Percent),
        Value("drought_to_wet_moisture_gain_points", nameof(WitherCoefficients.DroughtToWetMoistureGain), Percent),
        Value("airflow_factor_percent", nameof(WitherCoefficients.AirflowFactor), Percent),
    ];

    /// <summary>How far the truth may lie from them.</summary>
    public static IReadOnlyList<SetNumber> Spreads { get; } =
    [
        Spread("skin_conductance_fraction", 1, all => all.CuticularConductance, (all, value) => all with { CuticularConductance = value }),
        Spread("boundary_conductance_fraction", 1, all => all.BoundaryLayerConductance, (all, value) => all with { BoundaryLayerConductance = value }),
        Spread("surface_capacity_fraction", 1, all => all.SurfaceCapacity, (all, value) => all with { SurfaceCapacity = value }),
        Spread("surface_retention_fraction", 1, all => all.SurfaceRetention, (all, value) => all with { SurfaceRetention = value }),
        Spread("drought_moisture_points", Percent, all => all.DroughtMoistureWetBasis, (all, value) => all with { DroughtMoistureWetBasis = value }),
        Spread("drought_to_wet_moisture_gain_points", Percent, all => all.DroughtToWetMoistureGain, (all, value) => all with { DroughtToWetMoistureGain = value }),
        Spread("turn_blend_points", Percent, all => all.TurnBlend, (all, value) => all with { TurnBlend = value }),
        Spread("airflow_fraction", 1, all => all.Airflow, (all, value) => all with { Airflow = value }),
    ];

    private static SetNumber Value(string name, string coefficient, double perDomain = 1)
    {
        Coefficient known = CoefficientCatalogue.All.Single(one => one.Name == coefficient);
        return new(name, perDomain, known.Of, known.With);
    }

    private static SetNumber Spread(
        string name, double perDomain, Func<CoefficientSpreads, double> of, Func<CoefficientSpreads, double, CoefficientSpreads> with) => new(
            name, perDomain, set => of(set.Spreads), (set, value) => set with { Spreads = with(set.Spreads, value) });
}
