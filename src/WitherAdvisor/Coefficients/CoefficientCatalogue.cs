using WitherAdvisor.Leaf;

namespace WitherAdvisor.Coefficients;

/// <summary>Every coefficient with its unit, range, status and source.</summary>
public static class CoefficientCatalogue
{
    /// <summary>In the order of <see cref="WitherCoefficients"/>.</summary>
    public static IReadOnlyList<Coefficient> All { get; } =
    [
        new(nameof(WitherCoefficients.SpecificLeafAreaM2PerKgDry), "A", "m²/kg dry", 15, 25, CoefficientStatus.FromMemory,
            "Specific leaf area of young shoots, one side.",
            set => set.SpecificLeafAreaM2PerKgDry,
            (set, value) => set with { SpecificLeafAreaM2PerKgDry = value }),
        new(nameof(WitherCoefficients.BoundaryLayerConductanceMPerS), "g_b", "m/s", 3e-3, 15e-3, CoefficientStatus.Derived,
            "Flat-leaf correlations (Campbell and Norman 1998) at trough face velocity.",
            set => set.BoundaryLayerConductanceMPerS,
            (set, value) => set with { BoundaryLayerConductanceMPerS = value }),
        new(nameof(WitherCoefficients.CuticularConductanceMPerS), "g_0", "m/s", 2e-4, 20e-4, CoefficientStatus.Fitted,
            "Start value takes 17.6 h from 78 to 62 % wet basis at a hygrometric difference of 3.1 K (published South Indian practice: 16 to 18 h).",
            set => set.CuticularConductanceMPerS,
            (set, value) => set with { CuticularConductanceMPerS = value }),
        new(nameof(WitherCoefficients.ReferenceMoistureDryBasis), "X_ref", "kg/kg dry", 0.78 / 0.22, 0.78 / 0.22, CoefficientStatus.Definition,
            "78 % wet basis, at which g_0 is stated.",
            set => set.ReferenceMoistureDryBasis,
            (set, value) => set with { ReferenceMoistureDryBasis = value }),
        new(nameof(WitherCoefficients.EquilibriumMoistureDryBasis), "X_e", "kg/kg dry", 0.05, 0.35, CoefficientStatus.Placeholder,
            "Isotherms of fresh leaf lie in this range at the humidities of a trough; it changes the rate by about a tenth.",
            set => set.EquilibriumMoistureDryBasis,
            (set, value) => set with { EquilibriumMoistureDryBasis = value }),
        new(nameof(WitherCoefficients.SurfaceCapacityKgPerKg), "S_c", "kg/kg fresh", 0.1, 0.4, CoefficientStatus.Fitted,
            "From memory: surface water of heavy rain, 15 to 30 % of leaf weight.",
            set => set.SurfaceCapacityKgPerKg,
            (set, value) => set with { SurfaceCapacityKgPerKg = value }),
        new(nameof(WitherCoefficients.TurnBlend), "β", "1", 0, 1, CoefficientStatus.Fitted,
            "Nothing published; half-way between none and complete.",
            set => set.TurnBlend,
            (set, value) => set with { TurnBlend = value }),
        new(nameof(WitherCoefficients.SurfaceRetention), "r", "1", 0.05, 0.6, CoefficientStatus.Fitted,
            "From memory: brings a full canopy to 0.22 kg/kg, where practice sees 15 to 30 % of leaf weight after heavy rain.",
            set => set.SurfaceRetention,
            (set, value) => set with { SurfaceRetention = value }),
        new(nameof(WitherCoefficients.CanopyCapacityMm), "C_max", "mm", 0.05, 0.6, CoefficientStatus.Published,
            "Canopy rules per unit of leaf area: 0.1 mm (Community Land Model), 0.2 mm (RoGeR); von Hoyningen-Huene (1981) has three to seven times the first.",
            set => set.CanopyCapacityMm,
            (set, value) => set with { CanopyCapacityMm = value }),
        new(nameof(WitherCoefficients.DroughtMoistureWetBasis), "m_dry", "1", 0.70, 0.78, CoefficientStatus.Fitted,
            "74 % wet basis for dryish leaf (published: trade dryer table; Tocklai withering notes).",
            set => set.DroughtMoistureWetBasis,
            (set, value) => set with { DroughtMoistureWetBasis = value }),
        new(nameof(WitherCoefficients.DroughtToWetMoistureGain), "Δm", "1", 0.02, 0.10, CoefficientStatus.Fitted,
            "74 to 80 % wet basis between drought and rains (published range of fresh leaf: 74 to 83 %, Tocklai).",
            set => set.DroughtToWetMoistureGain,
            (set, value) => set with { DroughtToWetMoistureGain = value }),
        new(nameof(WitherCoefficients.AirflowFactor), "a", "1", 0.5, 1.5, CoefficientStatus.Fitted,
            "A trough has the airflow it is said to have until its outcomes tell otherwise.",
            set => set.AirflowFactor,
            (set, value) => set with { AirflowFactor = value }),
    ];
}
