using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Plans.Writing;

/// <summary>What a plan would take of heat that is not there.</summary>
internal static class HeatShort
{
    /// <summary>A shortage under this share is lost in a damper.</summary>
    private const double WorthShare = 0.02;

    /// <summary>The most heat, kW, that the wanted air would take in an hour that has less; 0 where every hour has enough.</summary>
    public static double MostKW(PlanProblem problem, WitherPlan plan) =>
        plan.Settings.Select(setting => (setting.HeatKW, Wanted: WantedKW(problem, plan, setting)))
            .Where(pair => pair.Wanted * (1 - WorthShare) > pair.HeatKW)
            .Select(pair => pair.Wanted)
            .DefaultIfEmpty(0)
            .Max();

    private static double WantedKW(PlanProblem problem, WitherPlan plan, AirSetting setting)
    {
        double wantedK = plan.Stages.First(stage => stage.Kind == setting.Stage).WantedHygrometricDifferenceK ?? 0;
        AirState wanted = PlenumSchedule.PlenumForDifference(setting.Ambient, wantedK, HardLimits.SetPointCeilingC(problem.Style));
        return HotAirMix.HeatKW(setting.Ambient, wanted, problem.Trough.AirflowM3PerSM2 * problem.Trough.AreaM2 * setting.FanShare * setting.RunShare);
    }
}
