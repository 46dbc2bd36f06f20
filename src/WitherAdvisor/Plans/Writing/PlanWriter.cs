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

    /// <summary>Leaf that is ready this little before it may be rolled, h, is dried on: nobody changes the air for that.</summary>
    private const double NotWorthHoldingHours = 0.5;

    private const double CloseEnoughWetBasis = 0.0005;

    /// <summary>One is enough where leaf cools for half an hour; where it cools for three the search guesses more coarsely.</summary>
    private const int MostCorrections = 4;

    private readonly PlanProblem problem;
    private readonly CandidateTrial trial;
    private readonly Candidate chosen;
    private readonly TurnPlan turns;
    private readonly StageLine line;

    private PlanWriter(CandidateTrial trial, Candidate chosen)
    {
        problem = trial.Problem;
        this.trial = trial;
        this.chosen = chosen;
        turns = new TurnPlanner(trial, chosen).Plan();
        line = new(trial, chosen);
    }

    public static WrittenPlan Write(CandidateTrial trial, Candidate chosen) => new PlanWriter(trial, chosen).Write();

    private WrittenPlan Write()
    {
        double ready = ReadyOnClock(chosen.ReadyHour);
        FixedWither wither = Run(ready, ready);
        for (int i = 0; i < MostCorrections && IsAside(wither) && chosen.HeatedHoursToTarget is not null; i++)
        {
            double corrected = ReadyOnClock(ready + HoursToTarget(wither, ready));
            if (corrected == ready)
            {
                break;
            }

            ready = corrected;
            wither = Run(ready, ready);
        }

        double stop = chosen.StopHour > problem.Start.Hour ? Math.Max(ready, StopOnClock(Math.Max(chosen.StopHour, ready))) : ready;
        if (stop - ready <= NotWorthHoldingHours && problem.Start.Stage != StageKind.Cooling)
        {
            ready = stop;
        }

        return Written(stop == ready && wither.StopHour == stop ? wither : Run(ready, stop), ready, stop);
    }

    private WrittenPlan Written(FixedWither wither, double ready, double stop)
    {
        IReadOnlyList<PlanStage> stages = line.Stages(ready, stop);
        double flow = problem.Trough.AirflowM3PerSM2 * problem.Trough.AreaM2;
        IReadOnlyList<AirSetting> settings = AirSettings.For(
            problem.Ambient, stages, line.PlenumC, problem.Heat.HotAirC, flow);
        double withered = problem.DryMassKgPerM2 * (1 + wither.FinalWaterDryBasis);
        double heatKWh = AirSettings.HeatKWh(settings, stop);
        IReadOnlyList<double> turnHours = Turns(ready, stop);
        return new(
            new(
                stages, settings, EvenHours(turnHours), turnHours, stop, chosen.Air.FanShare,
                MeanDifferenceK(settings), heatKWh, wither.Log.LargestSpreadWetBasis,
                withered / problem.LoadKgPerM2,
                withered * (1 + problem.Leaf.SurfaceWaterKgPerKg) / problem.LoadKgPerM2)
            {
                ReadyHour = ready,
                RunShare = chosen.Air.RunShare,
                HeatKWhPerKgMadeTea = heatKWh / (problem.MadeTeaKgPerM2 * problem.Trough.AreaM2),
                FanKWh = FanPower.KWh(problem.Trough, stages),
                SpreadWithOneMoreTurnWetBasis = turns.WithOneMoreWetBasis,
                HeldWellToHour = stop > ready ? line.HeldWellTo(ready > problem.Start.Hour ? wither.StateAt(ready) : problem.Start.Bed, ready) : null,
            },
            wither.Curve,
            Moisture.WetBasis(wither.FinalWaterDryBasis),
            wither.WarmestLeafC,
            chosen with { TurnHours = turnHours, ReadyHour = ready, StopHour = stop });
    }

    /// <summary>Whether the hour can be put nearer to the target; cooling ends when the leaf is cool.</summary>
    private bool IsAside(FixedWither wither) =>
        problem.Start.Stage != StageKind.Cooling
        && chosen.Broken is null
        && Math.Abs(Moisture.WetBasis(wither.FinalWaterDryBasis) - problem.Style.TargetMoistureWetBasis) > CloseEnoughWetBasis;

    private double ReadyOnClock(double hour) => problem.IsReadyNow(hour) ? hour : OnClock(hour, problem.LoadedHour + 1e-6, Latest);

    private double StopOnClock(double hour) => OnClock(hour, Math.Max(problem.ShortestHours, problem.LoadedHour), Latest);

    private double Latest => chosen.Broken is null ? problem.LongestHours : double.PositiveInfinity;

    /// <summary>An hour on the clock where the limits leave room for one, and inside them always.</summary>
    private static double OnClock(double hour, double earliest, double latest)
    {
        double first = Math.Ceiling(earliest * PartsOfAnHour) / PartsOfAnHour;
        double last = Math.Floor(latest * PartsOfAnHour) / PartsOfAnHour;
        return first <= last
            ? Math.Clamp(Math.Round(hour * PartsOfAnHour) / PartsOfAnHour, first, last)
            : Math.Clamp(hour, earliest, Math.Max(latest, earliest));
    }

    private FixedWither Run(double ready, double stop) => FixedWither.Run(
        problem.Bed(trial.Saturation, BedResolution.Shown),
        problem.Trough.AreaM2,
        problem.TargetDryBasis,
        line.Air(ready, stop),
        Turns(ready, stop));

    /// <summary>By how much the hour must move, from how fast the leaf dries before cooling, or in it where it cools from the start.</summary>
    private double HoursToTarget(FixedWither wither, double ready)
    {
        double heatOff = line.HeatOff(ready);
        double from = Math.Max(heatOff - 1, problem.LoadedHour);
        double to = problem.Start.IsUnderWay && heatOff == from ? ready : heatOff;
        double perHour = (wither.Log.WaterDryBasis(from) - wither.Log.WaterDryBasis(to)) / Math.Max(to - from, 1e-6);
        return perHour > 0 ? Math.Clamp((wither.FinalWaterDryBasis - problem.TargetDryBasis) / perHour, -1, 1) : 0;
    }

    private IReadOnlyList<double> Turns(double ready, double stop)
    {
        double last = TurnWindow.LastHour(problem.Style, ready, line.HeatOff(ready), stop);
        return [.. turns.Hours.Where(hour => hour <= last)];
    }

    /// <summary>Whole hours between turns; null where they are not even.</summary>
    private int? EvenHours(IReadOnlyList<double> turnHours)
    {
        if (turnHours.Count == 0)
        {
            return null;
        }

        double gap = turnHours[0] - problem.TurnsFromHour;
        bool even = turnHours.Zip(turnHours.Skip(1), (one, next) => next - one).All(between => Math.Abs(between - gap) < BedRun.SameMoment);
        return even && gap >= 1 && gap == Math.Floor(gap) ? (int)gap : null;
    }

    /// <summary>That of the ambient air where leaf is ready now and nothing is set.</summary>
    private double MeanDifferenceK(IReadOnlyList<AirSetting> settings)
    {
        if (settings.Count == 0)
        {
            return problem.Ambient.At(problem.Start.Hour).HygrometricDifferenceK;
        }

        var before = settings.Where(s => s.Stage is not (StageKind.Cooling or StageKind.Holding or StageKind.Loading)).ToList();
        return (before.Count > 0 ? before : settings).Average(s => s.Plenum.HygrometricDifferenceK);
    }
}
