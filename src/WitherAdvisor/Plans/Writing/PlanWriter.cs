using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Writing;

/// <summary>Turns the chosen candidate into a plan that people can follow: clock-like times, settings by the hour, the curve.</summary>
internal sealed class PlanWriter
{
    /// <summary>People read clocks to five minutes.</summary>
    private const double PartsOfAnHour = 12;

    /// <summary>A turn this close to the stop is handling for nothing.</summary>
    private const double NoTurnBeforeStopHours = 0.25;

    private const double CloseEnoughWetBasis = 0.0005;

    /// <summary>One is enough where leaf cools for half an hour; where it cools for three the search guesses more coarsely.</summary>
    private const int MostCorrections = 4;

    private readonly PlanProblem problem;
    private readonly CandidateTrial trial;
    private readonly Candidate chosen;

    private PlanWriter(CandidateTrial trial, Candidate chosen)
    {
        problem = trial.Problem;
        this.trial = trial;
        this.chosen = chosen;
    }

    public static WrittenPlan Write(CandidateTrial trial, Candidate chosen) => new PlanWriter(trial, chosen).Write();

    private WrittenPlan Write()
    {
        double stop = Clock(chosen.StopHour);
        FixedWither wither = Run(stop);
        for (int i = 0; i < MostCorrections && IsAside(wither) && chosen.HeatedHoursToTarget is not null; i++)
        {
            double corrected = Clock(stop + HoursToTarget(wither, stop));
            if (corrected == stop)
            {
                break;
            }

            stop = corrected;
            wither = Run(stop);
        }

        IReadOnlyList<PlanStage> stages = Stages(stop);
        double flow = problem.Trough.AirflowM3PerSM2 * problem.Trough.AreaM2 * chosen.FanShare;
        IReadOnlyList<AirSetting> settings = AirSettings.For(problem.Ambient, stages, PlenumFor, problem.HotAirC, flow);
        List<double> turns = Turns(stop);
        double withered = problem.DryMassKgPerM2 * (1 + wither.FinalWaterDryBasis);
        return new(
            new(
                stages, settings, turns.Count > 0 ? chosen.TurnIntervalHours : null, turns, stop, chosen.FanShare,
                MeanDifferenceK(settings), AirSettings.HeatKWh(settings, stop), wither.Log.LargestSpreadWetBasis,
                withered / problem.LoadKgPerM2,
                withered * (1 + problem.Leaf.SurfaceWaterKgPerKg) / problem.LoadKgPerM2),
            wither.Curve,
            Moisture.WetBasis(wither.FinalWaterDryBasis));
    }

    /// <summary>Whether the stop can be put nearer to the target; cooling ends when the leaf is cool.</summary>
    private bool IsAside(FixedWither wither) =>
        problem.Start.Stage != StageKind.Cooling
        && Math.Abs(Moisture.WetBasis(wither.FinalWaterDryBasis) - problem.Style.TargetMoistureWetBasis) > CloseEnoughWetBasis;

    /// <summary>A stop on the clock where the limits leave room for one, and inside them always.</summary>
    private double Clock(double hour)
    {
        double earliest = Math.Max(problem.ShortestHours, problem.Start.Hour);
        double latest = problem.LongestHours;
        if (problem.IsReadyNow(hour))
        {
            return hour;
        }

        double clockEarliest = Math.Max(Math.Ceiling(earliest * PartsOfAnHour), Math.Floor(problem.Start.Hour * PartsOfAnHour) + 1) / PartsOfAnHour;
        double clockLatest = Math.Floor(latest * PartsOfAnHour) / PartsOfAnHour;
        return clockEarliest <= clockLatest
            ? Math.Clamp(Math.Round(hour * PartsOfAnHour) / PartsOfAnHour, clockEarliest, clockLatest)
            : Math.Clamp(hour, earliest, latest);
    }

    private FixedWither Run(double stop) => FixedWither.Run(
        problem.Bed(trial.Saturation, BedResolution.Shown, chosen.FanShare),
        problem.Trough.AreaM2,
        problem.TargetDryBasis,
        [.. Stages(stop).Select(stage => new PlenumStretch(stage.ToHour, AirOf(stage))).DefaultIfEmpty(new(stop, trial.Hold(0)))],
        Turns(stop));

    /// <summary>By how much the stop must move, from how fast the leaf dries before cooling, or in it where it cools from the start.</summary>
    private double HoursToTarget(FixedWither wither, double stop)
    {
        double heatOff = HeatOff(stop);
        double from = Math.Max(heatOff - 1, problem.Start.Hour);
        double to = problem.Start.IsUnderWay && heatOff == from ? stop : heatOff;
        double perHour = (wither.Log.WaterDryBasis(from) - wither.Log.WaterDryBasis(to)) / Math.Max(to - from, 1e-6);
        return perHour > 0 ? Math.Clamp((wither.FinalWaterDryBasis - problem.TargetDryBasis) / perHour, -1, 1) : 0;
    }

    private double HeatOff(double stop) =>
        problem.Start.Stage == StageKind.Cooling ? problem.Start.Hour
        : chosen.HeatOffHour < chosen.StopHour ? Math.Max(stop - problem.Style.CoolingHours, problem.Start.Hour)
        : stop;

    private List<PlanStage> Stages(double stop)
    {
        double heatOff = HeatOff(stop);
        double surfaceEnd = Math.Min(chosen.SurfaceEndHour, heatOff);
        var stages = new List<PlanStage>();
        double start = problem.Start.Hour;
        if (surfaceEnd > start)
        {
            stages.Add(new(StageKind.SurfaceDrying, start, surfaceEnd, chosen.SurfaceDifferenceK));
        }

        if (heatOff > surfaceEnd)
        {
            stages.Add(new(StageKind.Main, surfaceEnd, heatOff, chosen.DifferenceK));
        }

        if (stop > heatOff)
        {
            stages.Add(new(StageKind.Cooling, heatOff, stop, null));
        }

        return stages;
    }

    private List<double> Turns(double stop)
    {
        var turns = new List<double>();
        double first = Math.Max(problem.Start.LastTurnHour + chosen.TurnIntervalHours, problem.Start.Hour);
        for (double hour = first; hour <= stop - NoTurnBeforeStopHours; hour += chosen.TurnIntervalHours)
        {
            turns.Add(hour);
        }

        return turns;
    }

    private PlenumSchedule AirOf(PlanStage stage) => trial.Hold(stage.WantedHygrometricDifferenceK ?? 0);

    private AirState PlenumFor(PlanStage stage, AirState ambient) => PlenumSchedule.PlenumForDifference(
        ambient, stage.WantedHygrometricDifferenceK ?? 0, HardLimits.PlenumCeilingC(problem.Style));

    /// <summary>That of the ambient air where leaf is ready now and nothing is set.</summary>
    private double MeanDifferenceK(IReadOnlyList<AirSetting> settings)
    {
        if (settings.Count == 0)
        {
            return problem.Ambient.At(problem.Start.Hour).HygrometricDifferenceK;
        }

        var heated = settings.Where(s => s.Stage != StageKind.Cooling).ToList();
        return (heated.Count > 0 ? heated : settings).Average(s => s.Plenum.HygrometricDifferenceK);
    }
}
