using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>The figures of an advice that a row of the log tells of.</summary>
internal static class LogAdviceReading
{
    /// <summary>Null where the row tells of none.</summary>
    public static AdviceFigures? Read(LogRow row, string batchId) =>
        row is { AdviceId: { } adviceId, AdviceMadeAt: { } madeAt, ModelVersion: { } version }
            ? new(
                batchId, madeAt.ToUniversalTime(), adviceId, version, row.CoefficientSet, row.Spell is { } spell ? KeptWord.Of(spell) : null,
                row.RainLastThreeDaysMm, row.RainLastTenDaysMm, row.WaterStressFraction, row.DryingPowerKpaMPerS,
                row.SurfaceWaterKgPerKg, row.SurfaceWaterDeviationKgPerKg,
                row.TissueMoistureWetBasisPercent, row.TissueMoistureDeviationPoints,
                row.AdvisedHours, row.AdvisedDryBulbC, row.AdvisedHygrometricDifferenceK, row.AdvisedTurnEveryHours,
                row.ReadyP10Hours, row.ReadyP50Hours, row.ReadyP90Hours, row.ExpectedOutturnPercent)
            : null;
}
