using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;

namespace WitherAdvisor.Plans;

/// <summary>Dries a bed to its target under held air, turned every so many hours, to see how long it takes.</summary>
internal static class TrialWither
{
    private const double SecondsPerHour = 3600;

    /// <summary>
    /// Runs until the target is reached and the last hour wanted is passed, or to the horizon; null where the
    /// spread passed what the schedule tolerates.
    /// </summary>
    public static WitherLog? Run(BedSetup setup, TrialSchedule schedule)
    {
        var bed = new LeafBed(setup);
        var log = new WitherLog(bed, schedule.TargetDryBasis);
        double longestStep = setup.LongestStepS / SecondsPerHour;
        double hour = 0;
        double nextTurn = schedule.TurnIntervalHours;
        while (hour < schedule.Horizon && (log.TargetHour is null || hour < schedule.RunAtLeastTo))
        {
            bool surfaceStage = schedule.SurfaceEndHour is { } end ? hour < end : log.SurfaceDryHour is null;
            double nextChange = surfaceStage ? schedule.SurfaceEndHour ?? schedule.Horizon : schedule.Horizon;
            double next = Math.Min(Math.Min(hour + longestStep, nextTurn), nextChange);
            HeldAir air = surfaceStage ? schedule.Surface : schedule.Main;
            bed.Step((next - hour) * SecondsPerHour, air.At(hour), air.At(next));
            log.Note(bed, next);
            if (log.LargestSpreadWetBasis > schedule.BreakOffSpreadWetBasis)
            {
                return null;
            }

            hour = next;
            if (hour >= nextTurn)
            {
                bed.Turn();
                nextTurn += schedule.TurnIntervalHours;
            }
        }

        return log;
    }
}
