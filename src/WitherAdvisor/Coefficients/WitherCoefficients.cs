using WitherAdvisor.Sites;

namespace WitherAdvisor.Coefficients;

/// <summary>The coefficients of leaf, bed and weather that are learned per site, cultivar and standard.</summary>
/// <remarks>Units, ranges, status and sources stand in <c>CoefficientCatalogue</c>.</remarks>
public sealed record WitherCoefficients
{
    /// <summary>Name of the set that no outcome has taught.</summary>
    public const string DefaultSetName = "defaults-1";

    /// <summary>The set's name; every advice names the set that made it.</summary>
    public string SetName { get; init; } = DefaultSetName;

    /// <summary>A: one-sided leaf area, m² per kg of dry matter.</summary>
    public double SpecificLeafAreaM2PerKgDry { get; init; } = 20;

    /// <summary>g_b: conductance of the air film at the leaf, m/s.</summary>
    public double BoundaryLayerConductanceMPerS { get; init; } = 6e-3;

    /// <summary>g_0: cuticular conductance at the reference moisture, m/s.</summary>
    public double CuticularConductanceMPerS { get; init; } = 1e-3;

    /// <summary>X_ref: moisture at which g_0 is stated, kg per kg dry matter.</summary>
    public double ReferenceMoistureDryBasis { get; init; } = 0.78 / 0.22;

    /// <summary>X_e: moisture at which leaf gives up no more, kg per kg dry matter.</summary>
    public double EquilibriumMoistureDryBasis { get; init; } = 0.15;

    /// <summary>S_c: surface water at which the whole leaf is wet, kg per kg of leaf without its surface water.</summary>
    public double SurfaceCapacityKgPerKg { get; init; } = 0.20;

    /// <summary>β: how far a turn mixes the bed toward its mean after reversing it, 0 to 1.</summary>
    public double TurnBlend { get; init; } = 0.5;

    /// <summary>r: share of the canopy's surface water still on leaf that was plucked, shaken and carried, 0 to 1.</summary>
    public double SurfaceRetention { get; init; } = 0.25;

    /// <summary>C_max: most water held on leaf, mm per unit of one-sided leaf area.</summary>
    public double CanopyCapacityMm { get; init; } = 0.2;

    /// <summary>Tissue moisture (wet basis) of leaf under the drought at which K_s is 0.3.</summary>
    public double DroughtMoistureWetBasis { get; init; } = 0.74;

    /// <summary>What tissue moisture (wet basis) gains from that drought to no stress at all (K_s = 1).</summary>
    public double DroughtToWetMoistureGain { get; init; } = 0.06;

    /// <summary>True airflow of the site's troughs over what they are said to have.</summary>
    public double AirflowFactor { get; init; } = 1;

    /// <summary>How far the truth may lie from this set.</summary>
    public CoefficientSpreads Spreads { get; init; } = new();

    /// <summary>How far the truth may lie from this set where an advice is made of it: a set of its own outcomes knows better than the defaults.</summary>
    public CoefficientSpreads SpreadsInAdvice() => SetName == DefaultSetName
        ? Spreads with { CuticularConductance = Math.Max(Spreads.CuticularConductance, CoefficientSpreads.CuticularConductanceUntaught) }
        : Spreads;

    /// <summary>A trough as it truly blows, by what the site's outcomes taught.</summary>
    public Trough AsItBlows(Trough trough) =>
        trough with { AirflowM3PerSM2 = trough.AirflowM3PerSM2 * AirflowFactor };
}
