namespace WitherAdvisor.Leaf;

/// <summary>A quantity nobody knows exactly: its value, its standard deviation, where it is from and its pieces.</summary>
/// <param name="Value">Best value, in the unit that the property holding it names.</param>
/// <param name="StandardDeviation">In the same unit; above 0.</param>
/// <param name="Origin">Measured, felt, estimated or assumed.</param>
/// <param name="Contributions">What the value is made of; they add up to it. Empty where it was measured.</param>
public sealed record Estimate(
    double Value,
    double StandardDeviation,
    EstimateOrigin Origin,
    IReadOnlyList<Contribution> Contributions);
