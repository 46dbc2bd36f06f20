namespace WitherAdvisor.Plans.Uncertainty;

/// <summary>One of the cases that may be true.</summary>
/// <param name="Log">How its bed dries under the plan's air.</param>
/// <param name="DryMassKgPerM2">Its dry matter per area.</param>
/// <param name="ReadyHour">When it is ready, hours from loading; null where it never is.</param>
/// <param name="FinalMoistureWetBasis">At the plan's stop.</param>
internal sealed record EnsembleMember(DryingTrace Log, double DryMassKgPerM2, double? ReadyHour, double FinalMoistureWetBasis)
{
    /// <summary>Weight of the leaf per area at an hour, kg/m².</summary>
    public double WeightKgPerM2(double hour) => DryMassKgPerM2 * (1 + Log.WaterDryBasis(hour));
}
