using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Plans;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Simulations;

/// <summary>Runs a wither whose plan the caller fixes.</summary>
public static class WitherSimulation
{
    /// <summary>The bed under a fixed plan; null where no reading of the air has both dry bulb and a humidity.</summary>
    public static SimulationResult? Run(SimulationRequest request)
    {
        double stop = request.Stages[^1].ToHour;
        if (ForecastAhead.Of(request.Site, request.LoadedAt, request.Air, BiasCorrectedForecast.None, stop).Ambient is not { } night)
        {
            return null;
        }

        BedSetup setup = Bed(request, night);
        FixedWither wither = FixedWither.Run(
            setup, request.Trough.AreaM2, Moisture.DryBasis(request.Site.Style.TargetMoistureWetBasis),
            [.. request.Stages.Select(stage => new PlenumStretch(stage.ToHour, Air(night, stage)))],
            [.. request.TurnHours.Where(hour => hour < stop)]);
        IReadOnlyList<AirSetting> settings = Settings(request, night);
        double dryMassKg = setup.DryMassKgPerM2 * request.Trough.AreaM2;
        double withered = dryMassKg * (1 + wither.FinalWaterDryBasis);
        return new(
            wither.Curve, settings, wither.Log.TargetHour, wither.Log.SurfaceDryHour,
            Moisture.WetBasis(wither.FinalWaterDryBasis), wither.Log.LargestSpreadWetBasis,
            withered / request.GreenWeightKg, withered * (1 + request.Leaf.SurfaceWaterKgPerKg) / request.GreenWeightKg,
            AirSettings.HeatKWh(settings, stop), Notices(request.Site.Style, settings, wither.Log.SurfaceDryHour ?? stop));
    }

    private static BedSetup Bed(SimulationRequest request, AmbientForecast night) => new(
        request.Leaf,
        request.Leaf.DryMatterKg(request.GreenWeightKg) / request.Trough.AreaM2,
        request.Coefficients.AsItBlows(request.Trough).AirflowM3PerSM2 * request.FanShare,
        night.PressurePa,
        new SaturationTable(night.PressurePa, night.Hours[0].Formulation),
        request.Coefficients,
        BedResolution.Shown.Layers,
        BedResolution.Shown.LongestStepS);

    private static PlenumSchedule Air(AmbientForecast night, FixedStage stage) => stage switch
    {
        { PlenumDryBulbC: { } dryBulbC } => PlenumSchedule.ForDryBulb(night, dryBulbC),
        { HygrometricDifferenceK: { } differenceK } => PlenumSchedule.ForDifference(night, differenceK, (_, _) => double.PositiveInfinity),
        _ => PlenumSchedule.Ambient(night),
    };

    private static IReadOnlyList<AirSetting> Settings(SimulationRequest request, AmbientForecast night)
    {
        var fixedBy = new Dictionary<PlanStage, FixedStage>();
        double from = 0;
        foreach (FixedStage stage in request.Stages)
        {
            bool heated = stage.PlenumDryBulbC is not null || stage.HygrometricDifferenceK is not null;
            fixedBy.Add(
                new(heated ? StageKind.Main : StageKind.Cooling, from, stage.ToHour, stage.HygrometricDifferenceK, request.FanShare), stage);
            from = stage.ToHour;
        }

        double flow = request.Coefficients.AsItBlows(request.Trough).AirflowM3PerSM2 * request.Trough.AreaM2;
        return AirSettings.For(
            night, [.. fixedBy.Keys], (stage, hour) => Plenum(fixedBy[stage], night.At(hour)).DryBulbC, request.Site.HotAirC, flow);
    }

    private static AirState Plenum(FixedStage stage, AirState ambient) => stage switch
    {
        { PlenumDryBulbC: { } dryBulbC } => ambient with { DryBulbC = Math.Max(dryBulbC, ambient.DryBulbC) },
        { HygrometricDifferenceK: { } differenceK } => HotAirMix.PlenumForHygrometricDifference(ambient, differenceK),
        _ => ambient,
    };

    /// <summary>The caller may try anything; what no advice would do is said.</summary>
    private static List<LimitNotice> Notices(WitherStyle style, IReadOnlyList<AirSetting> settings, double surfaceDryHour)
    {
        var notices = new List<LimitNotice>();
        double hottest = settings.Max(setting => setting.Plenum.DryBulbC);
        if (hottest > HardLimits.PlenumCeilingC(style))
        {
            notices.Add(new(LimitKind.PlenumDryBulb, HardLimits.PlenumCeilingC(style), hottest));
        }

        AirSetting driest = settings.MaxBy(setting =>
            setting.Plenum.HygrometricDifferenceK - HardLimits.DifferenceCeilingK(style, setting.Hour, surfaceDryHour))!;
        double ceiling = HardLimits.DifferenceCeilingK(style, driest.Hour, surfaceDryHour);
        if (driest.Plenum.HygrometricDifferenceK > ceiling)
        {
            notices.Add(new(LimitKind.HygrometricDifference, ceiling, driest.Plenum.HygrometricDifferenceK));
        }

        return notices;
    }
}
