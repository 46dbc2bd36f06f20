using WitherAdvisor.Bed;

namespace WitherAdvisor.Plans;

/// <summary>What happens to a bed as it dries: when it reaches its target, when its surface is dry, how far its layers part.</summary>
internal sealed class DryingTrace
{
    /// <summary>Surface water counts as gone when under this share of its start is left.</summary>
    private const double SurfaceDryShare = 0.01;

    private readonly List<double> hours;
    private readonly List<double> waters = [];
    private readonly List<double> turnHours = [];
    private readonly double targetDryBasis;
    private double surfaceDryAt;
    private double lastSurface;

    public DryingTrace(LeafBed bed, double targetDryBasis, BedState start)
    {
        hours = [start.Hour];
        this.targetDryBasis = targetDryBasis;
        lastSurface = bed.MeanSurfaceDryBasis;
        surfaceDryAt = start.Hour > 0 ? SurfaceDryAt(start) : lastSurface * SurfaceDryShare;
        SurfaceDryHour = lastSurface > surfaceDryAt ? null : start.Hour;
        FirstLayerDryHour = bed.LeastSurfaceDryBasis > surfaceDryAt ? null : start.Hour;
        waters.Add(bed.MeanTissueDryBasis + lastSurface);
        TargetHour = waters[0] <= targetDryBasis ? start.Hour : null;
    }

    /// <summary>Hour at which the mean of the bed reaches the target; null where it has not.</summary>
    public double? TargetHour { get; private set; }

    /// <summary>Hour at which the surface water is gone; the first where there was none, null where it has not.</summary>
    public double? SurfaceDryHour { get; private set; }

    /// <summary>Hour at which the first layer has no surface water left, from where air meant for wet leaf blows on dry; null where none has.</summary>
    public double? FirstLayerDryHour { get; private set; }

    /// <summary>Hours at which the leaf was turned.</summary>
    public IReadOnlyList<double> TurnHours => turnHours;

    /// <summary>Largest spread of tissue moisture between layers so far, since the last leaf was laid on, wet basis.</summary>
    public double LargestSpreadWetBasis { get; private set; }

    /// <summary>Whether a bed has surface water left that counts.</summary>
    public static bool HasSurfaceWater(BedState bed) => bed.SurfaceDryBasis.Average() > SurfaceDryAt(bed);

    /// <summary>Notes the bed after a step.</summary>
    public void Note(LeafBed bed, double hour)
    {
        double surface = bed.MeanSurfaceDryBasis;
        double water = bed.MeanTissueDryBasis + surface;
        double before = hours[^1];
        if (SurfaceDryHour is null && surface < surfaceDryAt)
        {
            SurfaceDryHour = before + (hour - before) * Math.Log(lastSurface / surfaceDryAt) / Math.Log(lastSurface / surface);
        }

        if (FirstLayerDryHour is null && bed.LeastSurfaceDryBasis <= surfaceDryAt)
        {
            FirstLayerDryHour = hour;
        }

        if (TargetHour is null && water <= targetDryBasis)
        {
            TargetHour = before + (hour - before) * (waters[^1] - targetDryBasis) / (waters[^1] - water);
        }

        LargestSpreadWetBasis = Math.Max(LargestSpreadWetBasis, bed.TissueSpreadWetBasis());
        lastSurface = surface;
        hours.Add(hour);
        waters.Add(water);
    }

    /// <summary>Notes leaf laid on: what there was to see before it counts no more.</summary>
    public void Laid(LeafBed bed, double hour)
    {
        lastSurface = bed.MeanSurfaceDryBasis;
        surfaceDryAt = SurfaceDryAt(bed.StateAt(hour));
        waters[^1] = bed.MeanTissueDryBasis + lastSurface;
        SurfaceDryHour = lastSurface > surfaceDryAt ? null : hour;
        FirstLayerDryHour = bed.LeastSurfaceDryBasis > surfaceDryAt ? null : hour;
        TargetHour = waters[^1] <= targetDryBasis ? hour : null;
        LargestSpreadWetBasis = bed.TissueSpreadWetBasis();
    }

    /// <summary>Notes a turn.</summary>
    public void Turned(double hour) => turnHours.Add(hour);

    /// <summary>The first hour with no more water than this, kg per kg dry matter; null where there is none.</summary>
    public double? HourOfWater(double waterDryBasis)
    {
        int at = waters.FindIndex(water => water <= waterDryBasis);
        return at <= 0 ? at < 0 ? null : hours[0]
            : hours[at - 1] + (hours[at] - hours[at - 1]) * (waters[at - 1] - waterDryBasis) / (waters[at - 1] - waters[at]);
    }

    /// <summary>Mean water in and on the leaf at an hour that was run through, kg per kg dry matter.</summary>
    public double WaterDryBasis(double hour)
    {
        int found = hours.BinarySearch(hour);
        if (found >= 0)
        {
            return waters[found];
        }

        int next = Math.Min(~found, hours.Count - 1);
        int before = Math.Max(next - 1, 0);
        double length = hours[next] - hours[before];
        double share = length > 0 ? Math.Min((hour - hours[before]) / length, 1) : 0;
        return waters[before] + share * (waters[next] - waters[before]);
    }

    private static double SurfaceDryAt(BedState bed) => BedState.AtLoading(bed.Loaded).SurfaceDryBasis[0] * SurfaceDryShare;
}
