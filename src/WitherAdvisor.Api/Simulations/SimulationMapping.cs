using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Simulations;

namespace WitherAdvisor.Api.Simulations;

/// <summary>A simulation between request, domain and answer.</summary>
internal static class SimulationMapping
{
    public static SimulationRequest ToDomain(PlanSimulationRequest input) => new(
        SiteMapping.ToDomain(input.Site),
        TroughMapping.ToDomain(input.Trough),
        input.GreenWeightKg,
        new LeafState(Percent.ToFraction(input.Leaf.TissueMoistureWetBasisPercent), input.Leaf.SurfaceWaterKgPerKg),
        input.LoadedAt,
        [.. input.Air.Select(ReadingMapping.ToDomain).OrderBy(reading => reading.Time)],
        [.. input.Stages.Select(stage => new FixedStage(stage.ToHour, stage.PlenumDryBulbC, stage.HygrometricDifferenceK))],
        [.. (input.TurnHours ?? []).Order()],
        Percent.ToFraction(input.FanSharePercent) ?? 1,
        CoefficientsMapping.ToDomain(input.Coefficients));

    public static SimulationResponse ToResponse(SimulationResult result, PlanSimulationRequest input)
    {
        WitherClock clock = new(input.Site.TimeZone, input.LoadedAt);
        return new()
        {
            ToTargetHours = result.HoursToTarget,
            ToSurfaceDryHours = result.HoursToSurfaceDry,
            FinalMoistureWetBasisPercent = Percent.Of(result.FinalMoistureWetBasis),
            LargestSpreadPoints = Percent.Of(result.LargestSpreadWetBasis),
            OutturnPercent = Percent.Of(result.Outturn),
            OutturnOfLeafPercent = Percent.Of(result.OutturnOfLeaf),
            HeatKwh = result.HeatKWh,
            Notices = [.. result.Notices.Select(NoticeMapping.ToResponse)],
            Curve = [.. result.Curve.Select(point => BedMapping.ToResponse(point, clock))],
            Settings = [.. result.Settings.Select(setting => BedMapping.ToResponse(setting, clock))],
            Cautions = CautionMapping.All,
            CoefficientSet = CoefficientsMapping.ToDomain(input.Coefficients).SetName,
            ModelVersion = ModelVersion.Current,
        };
    }
}
