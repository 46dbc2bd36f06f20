using WitherAdvisor.Bed;

namespace WitherAdvisor.Plans;

/// <summary>Dries a bed to its target under held air, to see how long it takes and how it is turned on the way.</summary>
internal static class TrialWither
{
    /// <summary>Runs until the target is reached and the last hour wanted is passed, or to the horizon.</summary>
    public static DryingTrace Run(BedSetup setup, TrialSchedule schedule)
    {
        TurnTimes turns = schedule.Turns is TurnRule.AtHours given ? TurnTimes.At(given.Hours) : TurnTimes.WhenCalled();
        var run = new BedRun(setup, turns, StepCut.Longest);
        var course = new Course(schedule, new(run.Bed, schedule.TargetDryBasis, setup.Start), turns);
        run.Through(course);
        return course.Trace;
    }

    private sealed class Course(TrialSchedule schedule, DryingTrace trace, TurnTimes turns) : IBedCourse
    {
        private readonly TurnRule.WhenUneven? uneven = schedule.Turns as TurnRule.WhenUneven;

        public DryingTrace Trace => trace;

        public AirLeg? LegFrom(double hour)
        {
            if (hour < schedule.LoadedHour && hour < schedule.Horizon)
            {
                return new(Math.Min(schedule.LoadedHour, schedule.Horizon), schedule.Loading!.ByHour);
            }

            if (hour >= schedule.Horizon || (trace.TargetHour is not null && hour >= schedule.RunAtLeastTo))
            {
                return null;
            }

            if (hour >= schedule.HeldFromHour)
            {
                return new(schedule.Horizon, schedule.Held!.ByHour);
            }

            double end = Math.Min(schedule.Horizon, schedule.HeldFromHour);
            bool surfaceStage = schedule.SurfaceEndHour is { } dry ? hour < dry : trace.FirstLayerDryHour is null;
            return surfaceStage
                ? new(Math.Min(schedule.SurfaceEndHour ?? end, end), schedule.Surface.ByHour)
                : new(end, schedule.Main.ByHour);
        }

        public bool Stepped(LeafBed bed, double hour)
        {
            trace.Note(bed, hour);
            if (uneven is not null && CallsForTurn(uneven, bed, hour))
            {
                turns.Call(hour);
            }

            return true;
        }

        public void Laid(LeafBed bed, double hour) => trace.Laid(bed, hour);

        public void Turned(LeafBed bed, double hour) => trace.Turned(hour);

        private bool CallsForTurn(TurnRule.WhenUneven rule, LeafBed bed, double hour) =>
            trace.TurnHours.Count < rule.Most
            && hour >= rule.FirstHour && hour <= rule.LastHour
            && (trace.TurnHours.Count == 0 || hour >= trace.TurnHours[^1] + rule.LeastGapHours - BedRun.SameMoment)
            && bed.TissueSpreadWetBasis() >= rule.SpreadWetBasis;
    }
}
