using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>From what is kept to a row of the log, times on the site's clock.</summary>
internal sealed class LogWriting(SiteClock clock)
{
    public LogRow Row(LoggedOutcome line)
    {
        Batch batch = line.Batch.Batch;
        WitherOutcome outcome = line.Outcome.Outcome;
        AdviceFigures? advice = line.Advice;
        OutcomeComputed computed = OutcomeComputed.Of(line.Batch, line.Outcome, advice);
        return new()
        {
            BatchId = line.Batch.Id,
            Site = line.Batch.SiteId,
            Trough = line.Batch.TroughId,
            Division = batch.Label.Division,
            Field = batch.Label.Field,
            Cultivar = batch.Label.Cultivar,
            BushAge = batch.Label.BushAge,
            LeafStandard = batch.Label.Standard,
            PluckedFrom = line.Batch.PluckingAssumed ? null : clock.Local(batch.PluckedFrom),
            PluckedTo = line.Batch.PluckingAssumed ? null : clock.Local(batch.PluckedTo),
            LoadedAt = clock.Local(batch.LoadedAt),
            GreenWeightKg = batch.GreenWeightKg,
            MeasuredSurfaceWaterKgPerKg = batch.MeasuredSurfaceWaterKgPerKg,
            SurfaceFeel = batch.SurfaceFeel,
            MeasuredMoistureWetBasisPercent = Percent.Of(batch.MeasuredMoistureWetBasis),
            ReadyBy = Local(batch.ReadyBy),
            CreatedAt = clock.Local(line.Batch.CreatedAt),
            UnloadedAt = Local(line.Batch.UnloadedAt),
            OnTroughHours = computed.HoursOnTrough,
            AirSetFromHours = Hours(outcome.AirSet),
            AirSetDryBulbC = LogLists.Numbers([.. outcome.AirSet.Select(air => air.DryBulbC)]),
            AirSetWetBulbC = LogLists.Numbers([.. outcome.AirSet.Select(air => air.WetBulbC)]),
            AirSetHygrometricDifferenceK = LogLists.Numbers([.. outcome.AirSet.Select(air => air.HygrometricDifferenceK)]),
            AirSetFanSharePercent = LogLists.Numbers([.. outcome.AirSet.Select(air => Percent.Of(air.FanShare))]),
            AirMeasuredFromHours = Hours(outcome.AirMeasured),
            AirMeasuredDryBulbC = LogLists.Numbers([.. outcome.AirMeasured.Select(air => air.DryBulbC)]),
            AirMeasuredWetBulbC = LogLists.Numbers([.. outcome.AirMeasured.Select(air => air.WetBulbC)]),
            AirMeasuredHygrometricDifferenceK = LogLists.Numbers([.. outcome.AirMeasured.Select(air => air.HygrometricDifferenceK)]),
            AirMeasuredFanSharePercent = LogLists.Numbers([.. outcome.AirMeasured.Select(air => Percent.Of(air.FanShare))]),
            Turns = outcome.Turns,
            TurnedAtHours = LogLists.Numbers(outcome.TurnedAtHours),
            WitheredWeightKg = outcome.WitheredWeightKg,
            OutturnPercent = Percent.Of(computed.Outturn),
            OutturnOfLeafPercent = Percent.Of(computed.OutturnOfLeaf),
            OvenMoistureWetBasisPercent = Percent.Of(outcome.OvenMoistureWetBasis),
            BottomMoistureWetBasisPercent = Percent.Of(outcome.Layers.BottomWetBasis),
            MiddleMoistureWetBasisPercent = Percent.Of(outcome.Layers.MiddleWetBasis),
            TopMoistureWetBasisPercent = Percent.Of(outcome.Layers.TopWetBasis),
            SampleHours = LogLists.Numbers([.. outcome.SampleWeighings.Select(sample => sample.Hour)]),
            SampleWeightPercent = LogLists.Numbers([.. outcome.SampleWeighings.Select(sample => Percent.Of(sample.WeightShare))]),
            Verdict = outcome.Verdict,
            Evenness = outcome.Evenness,
            Marks = LogLists.Marks(outcome.Marks),
            Faults = LogLists.Texts(outcome.Faults),
            Weather = outcome.Weather,
            Note = outcome.Note,
            EnteredAt = clock.Local(line.Outcome.EnteredAt),
            EnteredBy = line.Outcome.EnteredBy,
            Confirmed = LogLists.Texts(line.Outcome.Confirmed),
            AdviceId = advice?.AdviceId,
            AdviceMadeAt = Local(advice?.MadeAt),
            ModelVersion = advice?.ModelVersion,
            CoefficientSet = advice?.CoefficientSet,
            Spell = SpellWord.Read(advice?.Spell),
            RainLastThreeDaysMm = advice?.RainLastThreeDaysMm,
            RainLastTenDaysMm = advice?.RainLastTenDaysMm,
            WaterStressFraction = advice?.WaterStressFraction,
            DryingPowerKpaMPerS = advice?.DryingPowerKpaMPerS,
            SurfaceWaterKgPerKg = advice?.SurfaceWaterKgPerKg,
            SurfaceWaterDeviationKgPerKg = advice?.SurfaceWaterDeviationKgPerKg,
            TissueMoistureWetBasisPercent = advice?.TissueMoistureWetBasisPercent,
            TissueMoistureDeviationPoints = advice?.TissueMoistureDeviationPoints,
            AdvisedHours = advice?.AdvisedHours,
            AdvisedDryBulbC = advice?.AdvisedDryBulbC,
            AdvisedHygrometricDifferenceK = advice?.AdvisedHygrometricDifferenceK,
            AdvisedTurnEveryHours = advice?.AdvisedTurnEveryHours,
            ReadyP10Hours = advice?.ReadyP10Hours,
            ReadyP50Hours = advice?.ReadyP50Hours,
            ReadyP90Hours = advice?.ReadyP90Hours,
            ExpectedOutturnPercent = advice?.ExpectedOutturnPercent,
        };
    }

    private DateTimeOffset? Local(DateTimeOffset? time) => time is { } known ? clock.Local(known) : null;

    private static string? Hours(IReadOnlyList<AirHeld> air) => LogLists.Numbers([.. air.Select(held => held.FromHour)]);
}
