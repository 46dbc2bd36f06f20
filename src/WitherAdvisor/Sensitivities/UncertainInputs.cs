using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Numerics;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Uncertainty;

namespace WitherAdvisor.Sensitivities;

/// <summary>Each uncertain input at its P10 and its P90: the ensemble's cases taken one at a time.</summary>
internal sealed class UncertainInputs(
    PlanProblem problem, Candidate chosen, UncertainWither wither, UncertainSpreads spreads, double plannedHours)
{
    private static readonly double HighDraw = NormalLattice.InverseNormal(0.9);

    public IEnumerable<InputSensitivity> All() =>
    [
        Bar("tissue_moisture", "1", draw => new(TissueMoisture: draw), of => wither.Leaf(of).TissueMoistureWetBasis),
        Bar("surface_water", "kg/kg", draw => new(SurfaceWater: draw), of => wither.Leaf(of).SurfaceWaterKgPerKg),
        Bar("cuticular_conductance", "m/s", draw => new(CuticularConductance: draw), of => wither.Coefficients(of).CuticularConductanceMPerS),
        Bar("boundary_layer_conductance", "m/s", draw => new(BoundaryLayerConductance: draw), of => wither.Coefficients(of).BoundaryLayerConductanceMPerS),
        Bar("surface_capacity", "kg/kg", draw => new(SurfaceCapacity: draw), of => wither.Coefficients(of).SurfaceCapacityKgPerKg),
        Bar("airflow", "m³/s per m²", draw => new(Airflow: draw), wither.AirflowM3PerSM2),
        Bar("held_difference", "K", draw => new(PlenumSchedule: draw), DifferenceK),
        Bar("night_air", "K", draw => new(NightAir: draw), of => of.NightAir * spreads.NightAirK),
    ];

    private InputSensitivity Bar(string code, string unit, Func<double, UncertainDraw> moved, Func<UncertainDraw, double> value) => InputSensitivities.Of(
        code, SensitivityReach.P10ToP90, unit,
        (value(moved(-HighDraw)), value(new()), value(moved(HighDraw))), plannedHours,
        wither.Dry(moved(-HighDraw), 0).ReadyHour, wither.Dry(moved(HighDraw), 0).ReadyHour, problem.Ambient.LastHour);

    /// <summary>Hygrometric difference under the mesh as the main stage begins, when its dry bulb is missed.</summary>
    private double DifferenceK(UncertainDraw draw)
    {
        AirState plenum = PlenumSchedule.PlenumForDifference(
            problem.Ambient.At(chosen.SurfaceEndHour), chosen.DifferenceK, HardLimits.PlenumCeilingC(problem.Style));
        return (plenum with { DryBulbC = plenum.DryBulbC + draw.PlenumSchedule * UncertainSpreads.HeldAirK }).HygrometricDifferenceK;
    }
}
