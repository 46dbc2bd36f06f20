using WitherAdvisor.Air;
using WitherAdvisor.Ambient;

namespace WitherAdvisor.Plans.Writing;

/// <summary>What to set by the hour for the stages of a plan.</summary>
internal static class AirSettings
{
    /// <summary>One setting at the start of each stage and at each whole hour before the stop.</summary>
    public static IReadOnlyList<AirSetting> For(
        AmbientForecast night, IReadOnlyList<PlanStage> stages, Func<PlanStage, AirState, AirState> plenum, double hotAirC, double flowM3PerS)
    {
        var settings = new List<AirSetting>();
        foreach (PlanStage stage in stages)
        {
            double hour = stage.FromHour;
            while (hour < stage.ToHour)
            {
                settings.Add(At(night.At(hour), hour, stage, plenum, hotAirC, flowM3PerS));
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

    private static AirSetting At(
        AirState ambient, double hour, PlanStage stage, Func<PlanStage, AirState, AirState> plenum, double hotAirC, double flowM3PerS)
    {
        AirState under = plenum(stage, ambient);
        return new(
            hour, stage.Kind, ambient, under, HotAirMix.Share(ambient, hotAirC, under.DryBulbC),
            HotAirMix.HeatKW(ambient, under, flowM3PerS));
    }
}
