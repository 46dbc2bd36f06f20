namespace WitherAdvisor.Recalibration.Report;

/// <summary>An outcome that no coefficients explain, so it hardly counted. Check it in the paper log.</summary>
/// <param name="Id">Of the outcome.</param>
/// <param name="ChanceSound">Chance that it is as it was written down, 0 to 1.</param>
public sealed record DoubtfulOutcome(string Id, double ChanceSound);
