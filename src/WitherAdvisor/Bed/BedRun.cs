namespace WitherAdvisor.Bed;

/// <summary>The one loop that takes a bed through time: step by step, lot by lot, turn by turn, to where its course ends.</summary>
/// <remarks>Leaf is laid on and turned when the bed is run past the hour, not to it: what is looked at on that hour is from before.</remarks>
internal sealed class BedRun(BedSetup setup, TurnTimes turns, StepCut cut)
{
    private const double SecondsPerHour = 3600;

    /// <summary>Moments closer than this, h, are one.</summary>
    public const double SameMoment = 1e-9;

    private readonly double longestStepHours = setup.LongestStepS / SecondsPerHour;

    private int laid;

    public LeafBed Bed { get; } = new(setup);

    /// <summary>Hours from loading to where the bed stands.</summary>
    public double Hour { get; private set; } = setup.Start.Hour;

    /// <summary>When leaf is laid on next; infinite where all is on.</summary>
    private double NextLotHour => laid < setup.Later.Count ? setup.Later[laid].Hour : double.PositiveInfinity;

    /// <summary>Runs to the end of a course; another may be begun there.</summary>
    public void Through(IBedCourse course)
    {
        while (course.LegFrom(Hour) is { } leg)
        {
            if (NextLotHour <= Hour)
            {
                Bed.Lay(setup.Later[laid++]);
                course.Laid(Bed, Hour);
                continue;
            }

            while (turns.NextHour <= Hour)
            {
                Bed.Turn();
                turns.Done();
                course.Turned(Bed, Hour);
            }

            (double end, int steps) = Cut(Math.Min(Math.Min(leg.ToHour, turns.NextHour), NextLotHour));
            if (!March(course, leg.Air, end, steps))
            {
                return;
            }

            Hour = end;
            course.Reached(Bed, end);
        }
    }

    private bool March(IBedCourse course, AirByHour air, double end, int steps)
    {
        double start = Hour;
        double length = (end - start) / steps;
        for (int i = 0; i < steps; i++)
        {
            double from = start + i * length;
            double to = steps == 1 ? end : from + length;
            Bed.Step(length * SecondsPerHour, air.At(from), air.At(to));
            Hour = to;
            if (!course.Stepped(Bed, to))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Where the next steps end, and how many they are.</summary>
    private (double End, int Steps) Cut(double end)
    {
        if (cut == StepCut.Longest)
        {
            return (Math.Min(Hour + longestStepHours, end), 1);
        }

        double left = end - Hour;
        int steps = (int)Math.Max(Math.Ceiling(left * SecondsPerHour / setup.LongestStepS - SameMoment), 1);
        return cut == StepCut.Even ? (end, left > SameMoment ? steps : 0)
            : steps > 1 ? (Hour + left / steps, 1)
            : (end, 1);
    }
}
