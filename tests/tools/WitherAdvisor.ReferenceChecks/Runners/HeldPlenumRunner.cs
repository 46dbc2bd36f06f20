using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.Simulations;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>
/// A wither under steady air whose plenum is held at one dry bulb. Inputs: those of
/// <see cref="LoftInputs"/>, and plenum in °C, turn in h.
/// </summary>
public sealed class HeldPlenumRunner : IRunner
{
    private const double StopHours = 24;

    public string Name => "held_plenum";

    public double Ours(ReferenceCase given)
    {
        SimulationResult result = Run(given.Inputs);
        double hours = result.HoursToTarget ?? double.PositiveInfinity;
        return given.Quantity switch
        {
            "hygrometric_difference_k" => result.Settings[0].Plenum.HygrometricDifferenceK,
            "hours_to_target" => hours,
            "spread_points" => 100 * result.Curve.Where(point => point.Hour <= hours).Max(Spread),
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }

    private static double Spread(CurvePoint point) =>
        Math.Max(point.BottomMoistureWetBasis, point.TopMoistureWetBasis) - Math.Min(point.BottomMoistureWetBasis, point.TopMoistureWetBasis);

    private static SimulationResult Run(Inputs inputs)
    {
        AdviceRequest request = LoftInputs.Request(inputs);
        int turnEvery = (int)inputs.Number("turn");
        return WitherSimulation.Run(new(
            request.Site, request.Trough, request.Batch.GreenWeightKg,
            new LeafState(request.Batch.MeasuredMoistureWetBasis!.Value, request.Batch.MeasuredSurfaceWaterKgPerKg!.Value),
            request.Batch.LoadedAt, request.Forecast, [new(StopHours, PlenumDryBulbC: inputs.Number("plenum"))],
            [.. Enumerable.Range(1, (int)StopHours).Where(hour => hour % turnEvery == 0).Select(hour => (double)hour)],
            1, request.Coefficients))!;
    }
}
