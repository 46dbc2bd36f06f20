using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LogFiles.Columns;

/// <summary>
/// A row of the log: a batch, what came of it, and the last advice given for it. Its properties are the columns, in this
/// order, of the CSV and Parquet exports, of the CSV import and of the data dictionary; there is no other list of them.
/// </summary>
internal sealed record LogRow : LogOutcome
{
    [Meaning(LogPart.Advice, "Id of the last advice given for the batch.")]
    [Text(LongestId, Pattern = IdPattern)]
    public string? AdviceId { get; init; }

    [Meaning(LogPart.Advice, "When it was made.")]
    public DateTimeOffset? AdviceMadeAt { get; init; }

    [Meaning(LogPart.Advice, "Version of the model that made it.")]
    [Text(40)]
    public string? ModelVersion { get; init; }

    [Meaning(LogPart.Advice, "Name of the set of coefficients that made it.")]
    [Text(SiteSet.LongestName)]
    public string? CoefficientSet { get; init; }

    [Meaning(LogPart.Advice, "The weather the leaf grew in.")]
    public SpellKind? Spell { get; init; }

    [Meaning(LogPart.Advice, "Rain of the 72 hours before plucking.")]
    [Measured(0, 3000)]
    public double? RainLastThreeDaysMm { get; init; }

    [Meaning(LogPart.Advice, "Rain of the 10 days before plucking.")]
    [Measured(0, 9000)]
    public double? RainLastTenDaysMm { get; init; }

    [Meaning(LogPart.Advice, "K_s of FAO-56: 1 is no stress, 0 is no water for the crop.")]
    [Measured(0, 1)]
    public double? WaterStressFraction { get; init; }

    [Meaning(LogPart.Advice, "Mean daytime vapour-pressure deficit times wind of the last three days.")]
    [Measured(0, 1000)]
    public double? DryingPowerKpaMPerS { get; init; }

    [Meaning(LogPart.Advice, "Water taken to be on the leaf at loading, per kg of leaf without it.")]
    [Measured(0, 1)]
    public double? SurfaceWaterKgPerKg { get; init; }

    [Meaning(LogPart.Advice, "The same: how far off it may be, one standard deviation.")]
    [Measured(0, 1)]
    public double? SurfaceWaterDeviationKgPerKg { get; init; }

    [Meaning(LogPart.Advice, "Moisture the leaf was taken to have at loading, without its surface water.")]
    [Measured(0, 100)]
    public double? TissueMoistureWetBasisPercent { get; init; }

    [Meaning(LogPart.Advice, "The same: how far off it may be, one standard deviation.")]
    [Measured(0, 100)]
    public double? TissueMoistureDeviationPoints { get; init; }

    [Meaning(LogPart.Advice, "Planned wither: from loading to the stop.")]
    [Measured(0, 100)]
    public double? AdvisedHours { get; init; }

    [Meaning(LogPart.Advice, "Dry bulb under the mesh to set at loading.")]
    [Measured(-50, 60)]
    public double? AdvisedDryBulbC { get; init; }

    [Meaning(LogPart.Advice, "Dry bulb minus wet bulb under the mesh to set at loading.")]
    [Measured(0, 60)]
    public double? AdvisedHygrometricDifferenceK { get; init; }

    [Meaning(LogPart.Advice, "Whole hours between turns.")]
    [Measured(0, 72)]
    public double? AdvisedTurnEveryHours { get; init; }

    [Meaning(LogPart.Advice, "One case in ten is ready by then, from loading.")]
    [Measured(0, 200)]
    public double? ReadyP10Hours { get; init; }

    [Meaning(LogPart.Advice, "Five cases in ten are ready by then.")]
    [Measured(0, 200)]
    public double? ReadyP50Hours { get; init; }

    [Meaning(LogPart.Advice, "Nine cases in ten are ready by then.")]
    [Measured(0, 200)]
    public double? ReadyP90Hours { get; init; }

    [Meaning(LogPart.Advice, "Outturn on green weight that the plan was expected to come to.")]
    [Measured(0, 200)]
    public double? ExpectedOutturnPercent { get; init; }
}
