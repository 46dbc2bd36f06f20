namespace WitherAdvisor.Bed;

/// <summary>A bed dried under air given by the hour and turned at given hours: a wither that has been.</summary>
/// <param name="setup">The bed at loading.</param>
/// <param name="air">Under the mesh.</param>
/// <param name="turnHours">In order. A turn is done when the bed is run past its hour, not to it.</param>
public sealed class GivenWither(BedSetup setup, AirByHour air, IReadOnlyList<double> turnHours)
{
    private const double SecondsPerHour = 3600;
    private const double SameMoment = 1e-9;

    private int turned;

    /// <summary>The bed as it stands.</summary>
    public LeafBed Bed { get; } = new(setup);

    /// <summary>Hours from loading to where it stands.</summary>
    public double Hour { get; private set; }

    /// <summary>Mean water in and on the leaf, kg per kg dry matter.</summary>
    public double WaterDryBasis => Bed.MeanTissueDryBasis + Bed.MeanSurfaceDryBasis;

    /// <summary>Dries on to an hour from loading.</summary>
    public void RunTo(double hour)
    {
        while (hour - Hour > SameMoment)
        {
            StepToward(hour);
        }
    }

    /// <summary>Dries on until the mean of the bed has no more water than this, kg per kg dry matter; null where it still has at the horizon.</summary>
    public double? RunToWater(double waterDryBasis, double horizonHours)
    {
        double before = WaterDryBasis;
        if (before <= waterDryBasis)
        {
            return Hour;
        }

        while (horizonHours - Hour > SameMoment)
        {
            double from = Hour;
            StepToward(horizonHours);
            double after = WaterDryBasis;
            if (after <= waterDryBasis)
            {
                return from + (Hour - from) * (before - waterDryBasis) / (before - after);
            }

            before = after;
        }

        return null;
    }

    /// <summary>One step, no longer than the setup allows and not past the next turn.</summary>
    private void StepToward(double hour)
    {
        while (turned < turnHours.Count && turnHours[turned] <= Hour + SameMoment)
        {
            Bed.Turn();
            turned++;
        }

        double end = turned < turnHours.Count ? Math.Min(turnHours[turned], hour) : hour;
        double steps = Math.Max(Math.Ceiling((end - Hour) * SecondsPerHour / setup.LongestStepS - SameMoment), 1);
        double next = steps > 1 ? Hour + (end - Hour) / steps : end;
        Bed.Step((next - Hour) * SecondsPerHour, air.At(Hour), air.At(next));
        Hour = next;
    }
}
