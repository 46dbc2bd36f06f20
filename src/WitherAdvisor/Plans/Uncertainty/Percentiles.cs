namespace WitherAdvisor.Plans.Uncertainty;

/// <summary>
/// A spread of what may come: of ten such batches one is expected at or below P10, five at or below P50, nine at
/// or below P90. Null where that part of the cases never gets there.
/// </summary>
public readonly record struct Percentiles(double? P10, double? P50, double? P90);
