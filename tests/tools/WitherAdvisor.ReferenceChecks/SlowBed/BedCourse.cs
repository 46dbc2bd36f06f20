namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>What a solver makes of a wither.</summary>
/// <param name="HoursToTarget">Null where the target is not reached within the horizon.</param>
/// <param name="MeanMoistureByHour">Mean water in and on the leaf, wet basis, at hours 0, 1, 2… while the leaf is above its target; the last hour may lie past it.</param>
public sealed record BedCourse(double? HoursToTarget, IReadOnlyList<double> MeanMoistureByHour);
