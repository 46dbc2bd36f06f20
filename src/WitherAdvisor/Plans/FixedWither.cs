using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Plans;

/// <summary>Runs a bed through a fixed schedule of air and turns, and draws its curve.</summary>
internal sealed class FixedWither
{
    private const double SecondsPerHour = 3600;
    private const double CurveEveryHours = 0.25;
    private const double SameMoment = 1e-9;

    private readonly LeafBed bed;
    private readonly double dryMassKg;
    private readonly double surfaceToFresh;
    private readonly List<CurvePoint> curve = [];

    private FixedWither(BedSetup setup, double areaM2, double targetDryBasis)
    {
        bed = new(setup);
        dryMassKg = setup.DryMassKgPerM2 * areaM2;
        surfaceToFresh = 1 - setup.Leaf.TissueMoistureWetBasis;
        Log = new(bed, targetDryBasis);
    }

    public WitherLog Log { get; }

    public IReadOnlyList<CurvePoint> Curve => curve;

    /// <summary>Mean water in and on the leaf at the stop, kg per kg dry matter.</summary>
    public double FinalWaterDryBasis => bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;

    /// <summary>Runs to the end of the last stretch of air. Hours count from loading; turns at or past the end are left out.</summary>
    public static FixedWither Run(
        BedSetup setup, double areaM2, double targetDryBasis, IReadOnlyList<HeldStretch> stretches, IReadOnlyList<double> turnHours)
    {
        var wither = new FixedWither(setup, areaM2, targetDryBasis);
        wither.Draw(0, stretches[0].Air.At(0).DryBulbC);
        var turns = new Queue<double>(turnHours.Order());
        double hour = 0;
        foreach (HeldStretch stretch in stretches)
        {
            while (stretch.ToHour - hour > SameMoment)
            {
                hour = wither.Step(setup, stretch, hour, turns);
            }
        }

        return wither;
    }

    private double Step(BedSetup setup, HeldStretch stretch, double hour, Queue<double> turns)
    {
        double nextPoint = (Math.Floor(hour / CurveEveryHours + SameMoment) + 1) * CurveEveryHours;
        double nextTurn = turns.Count > 0 ? turns.Peek() : double.PositiveInfinity;
        double end = Math.Min(Math.Min(stretch.ToHour, nextPoint), Math.Max(nextTurn, hour));
        int steps = Math.Max((int)Math.Ceiling((end - hour) * SecondsPerHour / setup.LongestStepS - SameMoment), 1);
        double length = (end - hour) / steps;
        for (int i = 0; i < steps && length > SameMoment; i++)
        {
            double from = hour + i * length;
            double to = from + length;
            bed.Step(length * SecondsPerHour, stretch.Air.At(from), stretch.Air.At(to));
            Log.Note(bed, to);
        }

        Draw(end, bed.ExhaustC);
        if (nextTurn <= end)
        {
            turns.Dequeue();
            bed.Turn();
            Draw(end, bed.ExhaustC);
        }

        return end;
    }

    private void Draw(double hour, double exhaustC)
    {
        (double bottom, double middle, double top) = bed.TissueByHeightWetBasis();
        double water = FinalWaterDryBasis;
        curve.Add(new(
            hour, bottom, middle, top, Moisture.WetBasis(water), bed.MeanSurfaceDryBasis * surfaceToFresh,
            dryMassKg * (1 + water), exhaustC));
    }
}
