using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>Tries candidates for one problem by simulation, and counts them.</summary>
internal sealed class CandidateTrial(PlanProblem problem)
{
    /// <summary>Longest first: people keep whole hours.</summary>
    private static readonly int[] TurnIntervals = [6, 4, 3, 2, 1];

    /// <summary>Leaf under air this little above the ambient, K, needs no cooling before rolling.</summary>
    public const double WorthCoolingK = 2.5;

    private readonly SaturationTable saturation = new(problem.Ambient.PressurePa, problem.Ambient.Hours[0].Formulation);
    private readonly Dictionary<double, PlenumSchedule> held = [];
    private readonly PlenumSchedule ambient = PlenumSchedule.Ambient(problem.Ambient);
    private readonly int seldomest = Math.Max(Array.FindIndex(TurnIntervals, hours => hours <= problem.Start.InHand?.TurnIntervalHours), 0);
    private int likelyInterval = 3;

    public PlanProblem Problem => problem;

    /// <summary>Beds simulated so far.</summary>
    public int Simulated { get; private set; }

    public SaturationTable Saturation => saturation;

    /// <summary>Plenum air that holds a difference (K) within the plenum ceiling.</summary>
    public PlenumSchedule Hold(double differenceK)
    {
        if (!held.TryGetValue(differenceK, out PlenumSchedule? air))
        {
            air = PlenumSchedule.ForDifference(problem.Ambient, differenceK, HardLimits.PlenumCeilingC(problem.Style));
            held.Add(differenceK, air);
        }

        return air;
    }

    public Candidate Try(double differenceK, double surfaceDifferenceK, double fanShare)
    {
        PlenumSchedule main = Hold(differenceK);
        (DryingTrace log, int interval) = TurnedAsSeldomAsWillDo(Hold(surfaceDifferenceK), main, fanShare);
        double start = problem.Start.Hour;
        double coolingDelay = CoolingDelayHours(log.TargetHour ?? problem.LongestHours, main);
        double wantedStop = CoolingIsOver(log) ?? (log.TargetHour ?? problem.LongestHours) + coolingDelay;
        double stop = Math.Min(Math.Max(wantedStop, problem.ShortestHours), Math.Max(problem.LongestHours, start));
        double final = Moisture.WetBasis(log.WaterDryBasis(Math.Max(stop - coolingDelay, 0)));
        double heatOff = HeatOff(stop, coolingDelay);
        double heat = HeatKWhPerM2(main, heatOff, fanShare);
        int turns = (int)Math.Floor((stop - problem.Start.LastTurnHour) / interval);
        double cost = PlanCost.OfAir(problem, differenceK, surfaceDifferenceK, fanShare)
            + PlanCost.OfResult(problem, stop, final, log.LargestSpreadWetBasis, heat, turns);
        double surfaceEnd = problem.IsInSurfaceStage
            ? Math.Max(Math.Min(Math.Floor((log.SurfaceDryHour ?? heatOff) * 4) / 4, heatOff), start)
            : start;
        LimitNotice? broken = HardLimits.BrokenByAmbientAir(problem, stop, surfaceEnd)
            ?? HardLimits.BrokenByStop(problem, stop, final);
        return new(
            differenceK, surfaceDifferenceK, fanShare, interval, heatOff, stop, log.TargetHour, coolingDelay, surfaceEnd,
            final, log.LargestSpreadWetBasis, heat, cost, broken);
    }

    /// <summary>The longest interval that holds the spread, no longer than the one in hand, from a guess that the last trial made.</summary>
    private (DryingTrace Log, int Interval) TurnedAsSeldomAsWillDo(PlenumSchedule surface, PlenumSchedule main, double fanShare)
    {
        BedSetup setup = problem.Bed(saturation, BedResolution.Search, fanShare);
        int last = TurnIntervals.Length - 1;
        int at = Math.Max(likelyInterval, seldomest);
        DryingTrace? log = Run(setup, surface, main, TurnIntervals[at], mayBreakOff: at < last);
        if (log is null)
        {
            while (log is null)
            {
                at++;
                log = Run(setup, surface, main, TurnIntervals[at], mayBreakOff: at < last);
            }
        }
        else
        {
            while (at > seldomest && Run(setup, surface, main, TurnIntervals[at - 1], mayBreakOff: true) is { } seldomer)
            {
                log = seldomer;
                at--;
            }
        }

        likelyInterval = at;
        return (log, TurnIntervals[at]);
    }

    private DryingTrace? Run(BedSetup setup, PlenumSchedule surface, PlenumSchedule main, int interval, bool mayBreakOff)
    {
        Simulated++;
        return TrialWither.Run(setup, new(
            surface, main, interval, problem.TargetDryBasis, problem.ShortestHours, problem.LongestHours,
            mayBreakOff ? problem.Style.ToleratedSpreadWetBasis : double.PositiveInfinity,
            problem.IsInSurfaceStage ? null : problem.Start.Hour, problem.Start.LastTurnHour));
    }

    /// <summary>
    /// When leaf that cools has cooled, near enough to its target: it is not rolled warm for being there a little early, and
    /// the last of the water may hardly go by itself. Null in every other case.
    /// </summary>
    private double? CoolingIsOver(DryingTrace log)
    {
        if (problem.Start.Stage != StageKind.Cooling)
        {
            return null;
        }

        double over = Math.Max(problem.Start.StageFromHour + problem.Style.CoolingHours, problem.Start.Hour);
        return HardLimits.IsNearTarget(problem, Moisture.WetBasis(log.WaterDryBasis(over))) ? over : null;
    }

    private double HeatOff(double stop, double coolingDelay) =>
        problem.Start.Stage == StageKind.Cooling ? problem.Start.Hour
        : coolingDelay > 0 ? Math.Max(stop - problem.Style.CoolingHours, problem.Start.Hour)
        : stop;

    /// <summary>
    /// How much later the target is reached because the last hours are on ambient air, which dries by its own deficit.
    /// </summary>
    private double CoolingDelayHours(double hour, PlenumSchedule main)
    {
        InletAir heated = main.At(hour);
        InletAir cool = ambient.At(hour);
        double heatedDeficit = Deficit(heated);

        // Between two hours far apart air may be foggy even when heated: then neither dries and nothing is lost by cooling.
        if (heated.DryBulbC - cool.DryBulbC < WorthCoolingK || heatedDeficit <= 0)
        {
            return 0;
        }

        double share = Math.Min(Deficit(cool) / heatedDeficit, 1);
        return CoolingHours(hour - problem.Start.Hour, share) * (1 - share);
    }

    /// <summary>Under way, less may be left to dry than cooling dries.</summary>
    private double CoolingHours(double heatedHoursLeft, double share) =>
        problem.Start.IsUnderWay && heatedHoursLeft < problem.Style.CoolingHours * share
            ? heatedHoursLeft / share
            : problem.Style.CoolingHours;

    private double Deficit(InletAir air) => Math.Max(
        saturation.PressurePa(air.DryBulbC)
            - problem.Ambient.PressurePa * air.HumidityRatio / (MoistAir.MolarMassRatio + air.HumidityRatio), 0);

    private double HeatKWhPerM2(PlenumSchedule main, double heatOffHour, double fanShare)
    {
        double kWh = 0;
        for (double hour = problem.Start.Hour; hour < heatOffHour; hour++)
        {
            double length = Math.Min(heatOffHour - hour, 1);
            AirState air = problem.Ambient.At(hour + length / 2);
            AirState plenum = air with { DryBulbC = main.At(hour + length / 2).DryBulbC };
            kWh += length * HotAirMix.HeatKW(air, plenum, problem.Trough.AirflowM3PerSM2 * fanShare);
        }

        return kWh;
    }
}
