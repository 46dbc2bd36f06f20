namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>The figures of an advice as its answer has them, units included; null where the answer has none.</summary>
public sealed record AdviceFigures(
    string BatchId,
    DateTimeOffset MadeAt,
    string AdviceId,
    string ModelVersion,
    string? CoefficientSet,
    string? Spell,
    double? RainLastThreeDaysMm,
    double? RainLastTenDaysMm,
    double? WaterStressFraction,
    double? DryingPowerKpaMPerS,
    double? SurfaceWaterKgPerKg,
    double? SurfaceWaterDeviationKgPerKg,
    double? TissueMoistureWetBasisPercent,
    double? TissueMoistureDeviationPoints,
    double? AdvisedHours,
    double? AdvisedDryBulbC,
    double? AdvisedHygrometricDifferenceK,
    double? AdvisedTurnEveryHours,
    double? ReadyP10Hours,
    double? ReadyP50Hours,
    double? ReadyP90Hours,
    double? ExpectedOutturnPercent);
