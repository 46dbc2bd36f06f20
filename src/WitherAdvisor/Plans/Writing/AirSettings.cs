using WitherAdvisor.Air;
using WitherAdvisor.Ambient;

namespace WitherAdvisor.Plans.Writing;

/// <summary>What to set by the hour for the stages of a plan.</summary>
internal static class AirSettings
{
    /// <summary>One setting at the start of each stage and at each whole hour before the stop.</summary>
    /// <param name="ambient">Of the night.</param>
    /// <param name="stages">In order.</param>
    /// <param name="plenumC">Dry bulb under the mesh for a stage at an hour, °C.</param>
    /// <param name="hotAirC">Dry bulb of the hot air, °C.</param>
    /// <param name="fullFlowM3PerS">Of the trough with its fan at full speed.</param>
    public static IReadOnlyList<AirSetting> For(
        AmbientForecast ambient, IReadOnlyList<PlanStage> stages, Func<PlanStage, double, double> plenumC, double hotAirC, double fullFlowM3PerS)
    {
        var settings = new List<AirSetting>();
        foreach (PlanStage stage in stages)
        {
            double hour = stage.FromHour;
            while (hour < stage.ToHour)
            {
                settings.Add(At(ambient.At(hour), hour, stage, plenumC(stage, hour), hotAirC, fullFlowM3PerS));
                hour = Math.Floor(hour) + 1;
            }
        }

        return settings;
    }

    /// <summary>Heat mixed in, kWh, each setting held to the next.</summary>
    public static double HeatKWh(IReadOnlyList<AirSetting> settings, double stopHour)
    {
        double kWh = 0;
        for (int i = 0; i < settings.Count; i++)
        {
            double end = i + 1 < settings.Count ? settings[i + 1].Hour : stopHour;
            kWh += settings[i].HeatKW * (end - settings[i].Hour);
        }

        return kWh;
    }

    private static AirSetting At(AirState ambient, double hour, PlanStage stage, double plenumC, double hotAirC, double fullFlowM3PerS)
    {
        AirState plenum = ambient with { DryBulbC = plenumC };
        return new(
            hour, stage.Kind, ambient, plenum, HotAirMix.Share(ambient, hotAirC, plenumC),
            HotAirMix.HeatKW(ambient, plenum, fullFlowM3PerS * stage.FanShare * stage.RunShare), stage.FanShare, stage.RunShare);
    }
}
