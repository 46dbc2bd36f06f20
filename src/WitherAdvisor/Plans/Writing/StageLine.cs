using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Writing;

/// <summary>The stages of a candidate, laid out for an hour at which its leaf is ready and one at which it goes to rolling.</summary>
internal sealed class StageLine(CandidateTrial trial, Candidate chosen)
{
    /// <summary>Leaf that waits has the fan on for ten minutes in the hour: cool air from time to time (common practice; how much is from memory).</summary>
    public const double HoldingRunShare = 1 / 6.0;

    /// <summary>Leaf that waits is as it should be while it has dried on by no more than this, wet basis.</summary>
    public const double HeldWellWetBasis = 0.01;

    private readonly PlanProblem problem = trial.Problem;
    /// <summary>Air of a candidate's leaf that waits.</summary>
    public static HeldAir Holding(Candidate candidate) =>
        new(0, 0, candidate.Air.FanShare, Math.Min(HoldingRunShare, candidate.Air.RunShare));

    /// <summary>When the heat is taken off for leaf that is ready at an hour.</summary>
    public double HeatOff(double ready) =>
        problem.Start.Stage == StageKind.Cooling ? problem.Start.Hour : Math.Max(ready - chosen.CoolingHours, problem.LoadedHour);

    public IReadOnlyList<PlanStage> Stages(double ready, double stop)
    {
        double heatOff = HeatOff(ready);
        double loaded = problem.LoadedHour;
        double surfaceEnd = Math.Min(Math.Max(chosen.SurfaceEndHour, loaded), heatOff);
        var stages = new List<PlanStage>();
        void Add(StageKind kind, double from, double to, double? differenceK, HeldAir air)
        {
            if (to - from > BedRun.SameMoment)
            {
                stages.Add(new(kind, from, to, differenceK, air.FanShare, air.RunShare));
            }
        }

        Add(StageKind.Loading, problem.Start.Hour, loaded, null, new(0, 0));
        Add(StageKind.SurfaceDrying, loaded, surfaceEnd, chosen.Air.SurfaceDifferenceK, chosen.Air);
        Add(StageKind.Main, surfaceEnd, heatOff, chosen.Air.DifferenceK, chosen.Air);
        Add(StageKind.Cooling, heatOff, ready, null, chosen.Air);
        Add(StageKind.Holding, ready, stop, null, Holding(chosen));
        return stages;
    }

    /// <summary>Dry bulb to set for a stage at an hour, °C.</summary>
    public double PlenumC(PlanStage stage, double hour)
    {
        AirState ambient = problem.Ambient.At(hour);
        return PlenumSchedule.PlenumForDifference(
            ambient, stage.WantedHygrometricDifferenceK ?? 0, problem.WarmestPlenumC(hour, ambient, stage.FanShare)).DryBulbC;
    }

    public PlenumSchedule AirOf(PlanStage stage) => Of(stage.WantedHygrometricDifferenceK ?? 0, stage.FanShare, stage.RunShare);

    /// <summary>The air to run a bed through; the ambient where leaf is ready now and nothing is set.</summary>
    public IReadOnlyList<PlenumStretch> Air(double ready, double stop) =>
        [.. Stages(ready, stop).Select(stage => new PlenumStretch(stage.ToHour, AirOf(stage))).DefaultIfEmpty(new(stop, Of(0, chosen.Air.FanShare, 1)))];

    private PlenumSchedule Of(double differenceK, double fanShare, double runShare) => trial.Main(new(differenceK, differenceK, fanShare, runShare));

    /// <summary>The hour to which ready leaf keeps near its target while it waits; null where that is beyond the air that is known.</summary>
    public double? HeldWellTo(BedState ready, double readyHour)
    {
        BedSetup bed = problem.LoadedBed(trial.Saturation, BedResolution.Search, ready);
        double least = Moisture.DryBasis(problem.Style.TargetMoistureWetBasis - HeldWellWetBasis);
        var wither = new GivenWither(bed, trial.Main(Holding(chosen)).ByHour, []);
        return wither.RunToWater(least, Math.Max(problem.Ambient.LastHour, readyHour));
    }
}
