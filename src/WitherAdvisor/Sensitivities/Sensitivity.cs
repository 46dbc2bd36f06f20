using WitherAdvisor.Plans.Uncertainty;

namespace WitherAdvisor.Sensitivities;

/// <summary>Which inputs matter most for a batch: each changed alone, with the plan's air, turns and fan share kept.</summary>
/// <param name="PlannedHours">Hours from loading to target with every input as the plan takes it.</param>
/// <param name="ReadyHours">Hours from loading to target with all that is uncertain moved together, as the advice states them.</param>
/// <param name="Inputs">Widest first.</param>
public sealed record Sensitivity(double PlannedHours, Percentiles ReadyHours, IReadOnlyList<InputSensitivity> Inputs)
{
    /// <summary>The widest of what is uncertain.</summary>
    public IEnumerable<InputSensitivity> Widest(int most) => Inputs.Where(bar => bar.Reach == SensitivityReach.P10ToP90).Take(most);
}
