using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Fields;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;

namespace WitherAdvisor.Api.Advice;

/// <summary>Air settings, the curve and weighing checks as answers.</summary>
internal static class BedMapping
{
    public static SettingResponse ToResponse(AirSetting setting, WitherClock clock) => new()
    {
        Hour = setting.Hour,
        At = clock.At(setting.Hour),
        Stage = setting.Stage,
        AmbientDryBulbC = setting.Ambient.DryBulbC,
        AmbientRelativeHumidityPercent = Percent.Of(setting.Ambient.RelativeHumidity),
        PlenumDryBulbC = setting.Plenum.DryBulbC,
        PlenumWetBulbC = setting.Plenum.WetBulbC,
        PlenumRelativeHumidityPercent = Percent.Of(setting.Plenum.RelativeHumidity),
        HygrometricDifferenceK = setting.Plenum.HygrometricDifferenceK,
        HotAirSharePercent = Percent.Of(setting.HotAirShare),
        HeatKw = setting.HeatKW,
        FanSharePercent = Percent.Of(setting.FanShare),
        RunSharePercent = Percent.Of(setting.RunShare),
    };

    public static CurvePointResponse ToResponse(CurvePoint point, WitherClock clock) => new()
    {
        Hour = point.Hour,
        At = clock.At(point.Hour),
        BottomMoistureWetBasisPercent = Percent.Of(point.BottomMoistureWetBasis),
        MiddleMoistureWetBasisPercent = Percent.Of(point.MiddleMoistureWetBasis),
        TopMoistureWetBasisPercent = Percent.Of(point.TopMoistureWetBasis),
        MeanMoistureWetBasisPercent = Percent.Of(point.MeanMoistureWetBasis),
        SurfaceWaterKgPerKg = point.SurfaceWaterKgPerKg,
        LeafWeightKg = point.LeafWeightKg,
        ExhaustDryBulbC = point.ExhaustDryBulbC,
        BottomLeafC = point.BottomLeafC,
        TopLeafC = point.TopLeafC,
    };

    public static WeighingCheckResponse ToResponse(WeighingCheck check, WitherClock clock) => new()
    {
        Hour = check.Hour,
        At = clock.At(check.Hour),
        ExpectedWeightKg = check.ExpectedWeightKg,
        LowWeightKg = check.LowWeightKg,
        HighWeightKg = check.HighWeightKg,
        ExpectedSampleWeightKg = check.ExpectedWeightOfSampleKg,
        IfLow = Response(check.IfLow, clock),
        IfHigh = Response(check.IfHigh, clock),
    };

    private static CheckActionResponse Response(CheckResponse response, WitherClock clock) => new()
    {
        ReadyHour = response.ReadyHour,
        ReadyAt = clock.At(response.ReadyHour),
        PlenumDryBulbChangeK = response.PlenumDryBulbChangeK,
    };
}
