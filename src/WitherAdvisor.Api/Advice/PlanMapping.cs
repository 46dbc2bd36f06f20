using WitherAdvisor.Advice;
using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Fields;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Uncertainty;

namespace WitherAdvisor.Api.Advice;

/// <summary>A plan as an answer.</summary>
internal static class PlanMapping
{
    public static PlanResponse ToResponse(AdviceOutcome.Advised advised, WitherClock clock)
    {
        WitherPlan plan = advised.Plan;
        List<SettingResponse> settings = [.. plan.Settings.Select(setting => BedMapping.ToResponse(setting, clock))];
        return new()
        {
            SetNow = settings[0],
            Ready = Ready(plan, advised.ReadyHours, clock),
            Turning = new()
            {
                EveryHours = plan.TurnIntervalHours,
                AtHours = plan.TurnHours,
                At = [.. plan.TurnHours.Select(clock.At)],
                LargestSpreadWithOneMorePoints = Percent.Of(plan.SpreadWithOneMoreTurnWetBasis),
            },
            FanSharePercent = Percent.Of(plan.FanShare),
            RunSharePercent = Percent.Of(plan.RunShare),
            Stages = [.. plan.Stages.Select(stage => Stage(stage, clock))],
            Settings = settings,
            Expected = Expected(plan, advised.FinalMoistureWetBasis),
        };
    }

    private static ReadyResponse Ready(WitherPlan plan, Percentiles hours, WitherClock clock) => new()
    {
        StopHours = plan.StopHour,
        StopAt = clock.At(plan.StopHour),
        ReadyHours = plan.ReadyHour,
        ReadyAt = clock.At(plan.ReadyHour),
        HeldWellToHours = plan.HeldWellToHour,
        HeldWellTo = clock.At(plan.HeldWellToHour),
        P10Hours = hours.P10,
        P10At = clock.At(hours.P10),
        P50Hours = hours.P50,
        P50At = clock.At(hours.P50),
        P90Hours = hours.P90,
        P90At = clock.At(hours.P90),
    };

    private static StageResponse Stage(PlanStage stage, WitherClock clock) => new()
    {
        Stage = stage.Kind,
        FromHour = stage.FromHour,
        ToHour = stage.ToHour,
        From = clock.At(stage.FromHour),
        To = clock.At(stage.ToHour),
        WantedHygrometricDifferenceK = stage.WantedHygrometricDifferenceK,
        FanSharePercent = Percent.Of(stage.FanShare),
        RunSharePercent = Percent.Of(stage.RunShare),
    };

    private static ExpectedResponse Expected(WitherPlan plan, Percentiles finalMoisture) => new()
    {
        FinalMoistureP10WetBasisPercent = Percent.Of(finalMoisture.P10),
        FinalMoistureP50WetBasisPercent = Percent.Of(finalMoisture.P50),
        FinalMoistureP90WetBasisPercent = Percent.Of(finalMoisture.P90),
        OutturnPercent = Percent.Of(plan.Outturn),
        OutturnOfLeafPercent = Percent.Of(plan.OutturnOfLeaf),
        LargestSpreadPoints = Percent.Of(plan.LargestSpreadWetBasis),
        MeanHygrometricDifferenceK = plan.MeanHygrometricDifferenceK,
        HeatKwh = plan.HeatKWh,
        HeatKwhPerKgMadeTea = plan.HeatKWhPerKgMadeTea,
        FanKwh = plan.FanKWh,
    };
}
