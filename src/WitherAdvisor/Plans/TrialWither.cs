using WitherAdvisor.Bed;

namespace WitherAdvisor.Plans;

/// <summary>Dries a bed to its target under held air, turned every so many hours, to see how long it takes.</summary>
internal static class TrialWither
{
    /// <summary>
    /// Runs until the target is reached and the last hour wanted is passed, or to the horizon; null where the
    /// spread passed what the schedule tolerates.
    /// </summary>
    public static DryingTrace? Run(BedSetup setup, TrialSchedule schedule)
    {
        double firstTurn = Math.Max(schedule.LastTurnHour + schedule.TurnIntervalHours, setup.Start.Hour);
        var run = new BedRun(setup, TurnTimes.Every(schedule.TurnIntervalHours, firstTurn), StepCut.Longest);
        var course = new Course(schedule, new(run.Bed, schedule.TargetDryBasis, setup.Start));
        run.Through(course);
        return course.BrokenOff ? null : course.Log;
    }

    private sealed class Course(TrialSchedule schedule, DryingTrace log) : IBedCourse
    {
        public DryingTrace Log => log;

        public bool BrokenOff { get; private set; }

        public AirLeg? LegFrom(double hour)
        {
            if (hour >= schedule.Horizon || (log.TargetHour is not null && hour >= schedule.RunAtLeastTo))
            {
                return null;
            }

            bool surfaceStage = schedule.SurfaceEndHour is { } end ? hour < end : log.SurfaceDryHour is null;
            return surfaceStage
                ? new(schedule.SurfaceEndHour ?? schedule.Horizon, schedule.Surface.ByHour)
                : new(schedule.Horizon, schedule.Main.ByHour);
        }

        public bool Stepped(LeafBed bed, double hour)
        {
            log.Note(bed, hour);
            BrokenOff = log.LargestSpreadWetBasis > schedule.BreakOffSpreadWetBasis;
            return !BrokenOff;
        }
    }
}
