using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>Tries candidates for one problem by simulation, and counts them.</summary>
internal sealed class CandidateTrial(PlanProblem problem)
{
    /// <summary>Where no plan is ready in time, the least bad one may go on this far past the latest stop, h.</summary>
    private const double MostHoursOver = 6;

    private const double NominalTurnHours = 2;

    private readonly SaturationTable saturation = new(problem.Ambient.PressurePa, problem.Ambient.Hours[0].Formulation);
    private readonly Dictionary<HeldAir, DryingTrace> traces = [];
    private readonly Dictionary<HeldAir, PlenumSchedule> held = [];
    private readonly PlenumSchedule ambient = PlenumSchedule.Ambient(problem.Ambient);

    public PlanProblem Problem => problem;

    /// <summary>Beds simulated so far.</summary>
    public int Simulated { get; private set; }

    public SaturationTable Saturation => saturation;

    /// <summary>Plenum air until all leaf is on.</summary>
    public PlenumSchedule Loading => ambient;

    /// <summary>Plenum air of the main stage of an air, as far as ceiling and heat allow.</summary>
    public PlenumSchedule Main(HeldAir air) => Hold(air with { SurfaceDifferenceK = air.DifferenceK });

    /// <summary>Plenum air of its surface stage.</summary>
    public PlenumSchedule Surface(HeldAir air) => Hold(air with { DifferenceK = air.SurfaceDifferenceK });

    /// <summary>A candidate under an air, before its turns are planned.</summary>
    public Candidate Try(HeldAir air)
    {
        DryingTrace trace = Trace(air);
        PlenumSchedule main = Main(air);
        double start = problem.Start.Hour;
        double latest = Math.Max(problem.LongestHours, problem.LoadedHour);
        (double coolingHours, double delay) = Cooling(trace.TargetHour ?? latest, main);
        double toTarget = CoolingIsOver(trace) ?? (trace.TargetHour + delay) ?? double.PositiveInfinity;
        double ready = Ready(trace, toTarget, latest, delay);
        double stop = problem.IsReadyNow(ready) && problem.ShortestHours <= start ? ready : Math.Max(ready, problem.EarliestStop);
        double heatOff = ready - coolingHours;
        double surfaceEnd = problem.IsInSurfaceStage
            ? Math.Max(Math.Min(Math.Floor((trace.FirstLayerDryHour ?? heatOff) * 4) / 4, heatOff), problem.LoadedHour)
            : problem.LoadedHour;
        double heat = HeatKWhPerM2(main, heatOff, air.FanShare * air.RunShare);
        return new(
            air, [], trace.TargetHour, coolingHours, delay, surfaceEnd, toTarget, ready,
            Math.Max(trace.WaterDryBasis(Math.Max(ready - delay, start)) - problem.TargetDryBasis, 0), stop,
            trace.LargestSpreadWetBasis, heat, PlanCost.Of(problem, air, ready), Broken(toTarget, stop, latest));
    }

    /// <summary>How the bed dries under an air, turned at the hours of common practice: when it is turned hardly moves the hours, and those of the plan are found when its air is.</summary>
    public DryingTrace Trace(HeldAir air)
    {
        if (!traces.TryGetValue(air, out DryingTrace? trace))
        {
            trace = Run(air, NominalTurns, 0, problem.Ambient.LastHour, null);
            traces.Add(air, trace);
        }

        return trace;
    }

    private TurnRule NominalTurns =>
        TurnRule.Every(NominalTurnHours, problem.Ambient.LastHour, problem.Later.Count > 0 ? problem.LoadedHour : 0);

    /// <summary>Dries the bed under an air, in steps that fall on quarter hours.</summary>
    public DryingTrace Run(HeldAir air, TurnRule turns, double atLeastTo, double horizon, double? surfaceEndHour)
    {
        Simulated++;
        return TrialWither.Run(problem.Bed(saturation, BedResolution.Turning), new(
            Surface(air), Main(air), turns, problem.TargetDryBasis, atLeastTo, horizon,
            surfaceEndHour ?? (problem.IsInSurfaceStage ? null : problem.Start.Hour),
            Loading: ambient, LoadedHour: problem.LoadedHour));
    }

    /// <summary>When leaf may be called ready: at its target; where that comes too late, as soon after as it is near enough; in the worst case after some hours more.</summary>
    private double Ready(DryingTrace trace, double toTarget, double latest, double delay)
    {
        if (toTarget <= latest)
        {
            return toTarget;
        }

        double nearEnough = trace.HourOfWater(Moisture.DryBasis(HardLimits.WettestReadyWetBasis(problem.Style))) + delay ?? double.PositiveInfinity;
        return Math.Max(latest, Math.Min(Math.Min(nearEnough, toTarget), Math.Min(latest + MostHoursOver, problem.Ambient.LastHour)));
    }

    private LimitNotice? Broken(double toTarget, double stop, double latest) =>
        problem.IsReadyNow(stop) ? null
        : stop > latest || problem.LongestHours < problem.LoadedHour
            ? new(LimitKind.LongestTimeSincePlucking, problem.LongestHours, double.IsInfinity(toTarget) ? null : toTarget)
            : null;

    private PlenumSchedule Hold(HeldAir air)
    {
        if (!held.TryGetValue(air, out PlenumSchedule? schedule))
        {
            schedule = PlenumSchedule.ForDifference(
                problem.Ambient, air.DifferenceK, (hour, state) => problem.WarmestPlenumC(hour, state, air.FanShare), air.FanShare, air.RunShare);
            held.Add(air, schedule);
        }

        return schedule;
    }

    /// <summary>
    /// When leaf that cools has cooled, near enough to its target: it is not rolled warm for being there a little early, and
    /// the last of the water may hardly go by itself. Null in every other case.
    /// </summary>
    private double? CoolingIsOver(DryingTrace trace)
    {
        if (problem.Start.Stage != StageKind.Cooling)
        {
            return null;
        }

        double over = Math.Max(problem.Start.StageFromHour + problem.Style.CoolingHours, problem.Start.Hour);
        return HardLimits.IsNearTarget(problem, Moisture.WetBasis(trace.WaterDryBasis(over))) ? over : null;
    }

    /// <summary>
    /// Last hours on ambient air, and how much later the target is reached for them: ambient air dries by its own deficit.
    /// Air that is hardly warmer than the ambient leaves nothing to cool.
    /// </summary>
    private (double Hours, double DelayHours) Cooling(double hour, PlenumSchedule main)
    {
        if (problem.Start.Stage == StageKind.Cooling)
        {
            return (0, 0);
        }

        InletAir heated = main.At(hour);
        InletAir cool = ambient.At(hour);
        double heatedDeficit = Deficit(heated);

        // Between two hours far apart air may be foggy even when heated: then neither dries and nothing is lost by cooling.
        if (heatedDeficit <= 0)
        {
            return (0, 0);
        }

        double share = Math.Min(Deficit(cool) / heatedDeficit, 1);
        double hours = CoolingHours(heated.DryBulbC - cool.DryBulbC);
        double left = hour - problem.Start.Hour;
        hours = problem.Start.IsUnderWay && left < hours * share ? left / share : hours;
        return (hours, hours * (1 - share));
    }

    /// <summary>None where the plenum is a kelvin above the ambient air, all that the site wants from three on.</summary>
    private double CoolingHours(double riseK)
    {
        const double NothingToCoolK = 1;
        const double WarmK = 3;
        return problem.Style.CoolingHours * Math.Clamp((riseK - NothingToCoolK) / (WarmK - NothingToCoolK), 0, 1);
    }

    private double Deficit(InletAir air) => Math.Max(
        saturation.PressurePa(air.DryBulbC)
            - problem.Ambient.PressurePa * air.HumidityRatio / (MoistAir.MolarMassRatio + air.HumidityRatio), 0);

    private double HeatKWhPerM2(PlenumSchedule main, double heatOffHour, double flowShare)
    {
        double kWh = 0;
        for (double hour = problem.LoadedHour; hour < heatOffHour; hour++)
        {
            double length = Math.Min(heatOffHour - hour, 1);
            AirState air = problem.Ambient.At(hour + length / 2);
            AirState plenum = air with { DryBulbC = main.At(hour + length / 2).DryBulbC };
            kWh += length * HotAirMix.HeatKW(air, plenum, problem.Trough.AirflowM3PerSM2 * flowShare);
        }

        return kWh;
    }
}
