using WitherAdvisor.Coefficients;
using WitherAdvisor.InventedEstate;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>What is true of one loft and its leaf, which the advice cannot know.</summary>
/// <param name="Coefficients">Its true coefficients.</param>
/// <param name="DemandFactor">What the air of the fields asks of them over what the equations make of the station's.</param>
/// <param name="AirflowFactor">True airflow over what the trough is said to have.</param>
/// <param name="TissueShiftWetBasis">This field's leaf against what its weather says, wet basis.</param>
/// <param name="SurfaceShiftKgPerKg">The same of the water on it, kg/kg.</param>
/// <param name="HeldDifferenceShiftK">Hygrometric difference as it is held against what was advised, K.</param>
public sealed record HiddenTruth(
    WitherCoefficients Coefficients, double DemandFactor, double AirflowFactor, double TissueShiftWetBasis, double SurfaceShiftKgPerKg, double HeldDifferenceShiftK)
{
    /// <summary>The same with g_0 off by so much (logarithm), the way it was drawn to.</summary>
    public HiddenTruth WithSkinOff(double? off)
    {
        double usual = new WitherCoefficients().CuticularConductanceMPerS;
        return off is not { } by ? this : this with
        {
            Coefficients = Coefficients with { CuticularConductanceMPerS = usual * Math.Exp(Math.CopySign(by, Math.Log(Coefficients.CuticularConductanceMPerS / usual))) },
        };
    }

    /// <summary>Drawn about the defaults.</summary>
    /// <param name="wider">Factor on every spread: 1 where the advice's own opinion of its uncertainty is right.</param>
    public static HiddenTruth Draw(SplitMix64 random, double wider = 1)
    {
        WitherCoefficients c = new();
        CoefficientSpreads spreads = c.SpreadsInAdvice();
        double Factor(double spread) => Math.Exp(random.Around(0, spread * wider));
        return new(
            c with
            {
                CuticularConductanceMPerS = c.CuticularConductanceMPerS * Factor(spreads.CuticularConductance),
                BoundaryLayerConductanceMPerS = c.BoundaryLayerConductanceMPerS * Factor(spreads.BoundaryLayerConductance),
                SurfaceCapacityKgPerKg = c.SurfaceCapacityKgPerKg * Factor(spreads.SurfaceCapacity),
                SurfaceRetention = c.SurfaceRetention * Factor(spreads.SurfaceRetention),
                TurnBlend = Math.Clamp(random.Around(c.TurnBlend, 0.15 * wider), 0, 1),
                DroughtMoistureWetBasis = c.DroughtMoistureWetBasis + random.Around(0, spreads.DroughtMoistureWetBasis * wider),
            },
            Factor(0.10),
            Factor(spreads.Airflow),
            random.Around(0, 0.01 * wider),
            random.Around(0, 0.012 * wider),
            random.Around(0, 0.4 * wider));
    }
}
