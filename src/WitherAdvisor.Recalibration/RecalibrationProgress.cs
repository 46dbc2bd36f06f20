namespace WitherAdvisor.Recalibration;

/// <summary>How far a recalibration is.</summary>
/// <param name="Share">0 to 1, rising.</param>
/// <param name="Step">snake_case name of what is being done.</param>
public sealed record RecalibrationProgress(double Share, string Step);
