using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of AdviceFigures, in the order selected.</summary>
internal sealed record FiguresRow(
    string BatchId,
    long MadeAtMs,
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
    double? ExpectedOutturnPercent)
{
    public static FiguresRow Of(AdviceFigures figures) => new(
        figures.BatchId, figures.MadeAt.ToUnixTimeMilliseconds(), figures.AdviceId, figures.ModelVersion,
        figures.CoefficientSet, figures.Spell,
        figures.RainLastThreeDaysMm, figures.RainLastTenDaysMm,
        figures.WaterStressFraction, figures.DryingPowerKpaMPerS,
        figures.SurfaceWaterKgPerKg, figures.SurfaceWaterDeviationKgPerKg,
        figures.TissueMoistureWetBasisPercent, figures.TissueMoistureDeviationPoints,
        figures.AdvisedHours, figures.AdvisedDryBulbC,
        figures.AdvisedHygrometricDifferenceK, figures.AdvisedTurnEveryHours,
        figures.ReadyP10Hours, figures.ReadyP50Hours,
        figures.ReadyP90Hours, figures.ExpectedOutturnPercent);

    public AdviceFigures ToFigures() => new(
        BatchId, DateTimeOffset.FromUnixTimeMilliseconds(MadeAtMs), AdviceId, ModelVersion, CoefficientSet, Spell,
        RainLastThreeDaysMm, RainLastTenDaysMm, WaterStressFraction, DryingPowerKpaMPerS,
        SurfaceWaterKgPerKg, SurfaceWaterDeviationKgPerKg, TissueMoistureWetBasisPercent, TissueMoistureDeviationPoints,
        AdvisedHours, AdvisedDryBulbC, AdvisedHygrometricDifferenceK, AdvisedTurnEveryHours,
        ReadyP10Hours, ReadyP50Hours, ReadyP90Hours, ExpectedOutturnPercent);
}
