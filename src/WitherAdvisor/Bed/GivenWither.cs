namespace WitherAdvisor.Bed;

/// <summary>A bed dried under air given by the hour and turned at given hours: a wither that has been.</summary>
/// <param name="setup">The bed where it begins.</param>
/// <param name="air">Under the mesh.</param>
/// <param name="turnHours">In order. A turn is done when the bed is run past its hour, not to it.</param>
public sealed class GivenWither(BedSetup setup, AirByHour air, IReadOnlyList<double> turnHours)
{
    private readonly BedRun run = new(setup, TurnTimes.At(turnHours), StepCut.EvenAfresh);

    /// <summary>The bed as it stands.</summary>
    public LeafBed Bed => run.Bed;

    /// <summary>Hours from loading to where it stands.</summary>
    public double Hour => run.Hour;

    /// <summary>Mean water in and on the leaf, kg per kg dry matter.</summary>
    public double WaterDryBasis => Bed.MeanWaterDryBasis;

    /// <summary>The bed as it stands, to begin another run from.</summary>
    public BedState State => Bed.StateAt(Hour);

    /// <summary>Dries on to an hour from loading.</summary>
    public void RunTo(double hour) => run.Through(new Course(air, hour, double.NegativeInfinity, run));

    /// <summary>Dries on until the mean of the bed has no more water than this, kg per kg dry matter; null where it still has at the horizon.</summary>
    public double? RunToWater(double waterDryBasis, double horizonHours)
    {
        if (WaterDryBasis <= waterDryBasis)
        {
            return Hour;
        }

        var course = new Course(air, horizonHours, waterDryBasis, run);
        run.Through(course);
        return course.ReachedWaterHour;
    }

    /// <summary>To an hour or to a water content, whichever comes first.</summary>
    private sealed class Course(AirByHour air, double toHour, double toWaterDryBasis, BedRun run) : IBedCourse
    {
        private double lastHour = run.Hour;
        private double lastWater = run.Bed.MeanWaterDryBasis;

        public double? ReachedWaterHour { get; private set; }

        public AirLeg? LegFrom(double hour) => toHour - hour > BedRun.SameMoment ? new(toHour, air) : null;

        public bool Stepped(LeafBed bed, double hour)
        {
            double water = bed.MeanWaterDryBasis;
            if (water <= toWaterDryBasis)
            {
                ReachedWaterHour = lastHour + (hour - lastHour) * (lastWater - toWaterDryBasis) / (lastWater - water);
                return false;
            }

            (lastHour, lastWater) = (hour, water);
            return true;
        }
    }
}
