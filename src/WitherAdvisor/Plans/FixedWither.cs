using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Plans;

/// <summary>Runs a bed through a fixed schedule of air and turns, and draws its curve.</summary>
internal sealed class FixedWither
{
    private const double CurveEveryHours = 0.25;

    private readonly BedRun run;
    private readonly double areaM2;
    private readonly List<CurvePoint> curve = [];
    private readonly Dictionary<double, BedState> ends = [];

    private FixedWither(BedSetup setup, double areaM2, double targetDryBasis, IReadOnlyList<double> turnHours)
    {
        run = new(setup, TurnTimes.At(turnHours), StepCut.Even);
        this.areaM2 = areaM2;
        Log = new(run.Bed, targetDryBasis, setup.Start);
    }

    public DryingTrace Log { get; }

    public IReadOnlyList<CurvePoint> Curve => curve;

    /// <summary>Mean water in and on the leaf at the stop, kg per kg dry matter.</summary>
    public double FinalWaterDryBasis => run.Bed.MeanWaterDryBasis;

    /// <summary>Where it ended, hours from loading.</summary>
    public double StopHour => run.Hour;

    /// <summary>The bed at the stop.</summary>
    public BedState FinalState => run.Bed.StateAt(run.Hour);

    /// <summary>Temperature of the warmest leaf on the way, °C.</summary>
    public double WarmestLeafC { get; private set; } = double.NegativeInfinity;

    /// <summary>The bed at the end of a stretch of air.</summary>
    public BedState StateAt(double hour) => ends[hour];

    /// <summary>Runs from where the bed stands to the end of the last stretch of air. Hours count from loading; turns at or past the end are left out.</summary>
    public static FixedWither Run(
        BedSetup setup, double areaM2, double targetDryBasis, IReadOnlyList<PlenumStretch> stretches, IReadOnlyList<double> turnHours)
    {
        var wither = new FixedWither(setup, areaM2, targetDryBasis, [.. turnHours.Order()]);
        InletAir first = stretches[0].Air.At(setup.Start.Hour);
        wither.Draw(setup.Start.Hour, first, first.DryBulbC);
        wither.run.Through(new Course(wither, stretches));
        return wither;
    }

    private void Draw(double hour, InletAir air, double exhaustC)
    {
        IReadOnlyList<double> leafC = run.Bed.LeafTemperaturesC(air);
        WarmestLeafC = Math.Max(WarmestLeafC, leafC.Max());
        (double bottom, double middle, double top) = run.Bed.TissueByHeightWetBasis();
        double water = FinalWaterDryBasis;
        double surfaceToFresh = 1 - run.Bed.Loaded.TissueMoistureWetBasis;
        double dryMassKg = run.Bed.DryMassKgPerM2 * areaM2;
        curve.Add(new(
            hour, bottom, middle, top, Moisture.WetBasis(water), run.Bed.MeanSurfaceDryBasis * surfaceToFresh,
            dryMassKg * (1 + water), exhaustC, leafC[0], leafC[^1]));
    }

    /// <summary>From stretch to stretch; a point of the curve every quarter hour, and before and after each lot and turn.</summary>
    private sealed class Course(FixedWither wither, IReadOnlyList<PlenumStretch> stretches) : IBedCourse
    {
        private int at;

        public AirLeg? LegFrom(double hour)
        {
            while (at < stretches.Count && stretches[at].ToHour - hour <= BedRun.SameMoment)
            {
                at++;
            }

            if (at == stretches.Count)
            {
                return null;
            }

            double nextPoint = (Math.Floor(hour / CurveEveryHours + BedRun.SameMoment) + 1) * CurveEveryHours;
            return new(Math.Min(stretches[at].ToHour, nextPoint), stretches[at].Air.ByHour);
        }

        public bool Stepped(LeafBed bed, double hour)
        {
            wither.Log.Note(bed, hour);
            return true;
        }

        public void Reached(LeafBed bed, double hour)
        {
            Turned(bed, hour);
            if (stretches[at].ToHour - hour <= BedRun.SameMoment)
            {
                wither.ends[stretches[at].ToHour] = bed.StateAt(hour);
            }
        }

        public void Laid(LeafBed bed, double hour)
        {
            wither.Log.Laid(bed, hour);
            Turned(bed, hour);
        }

        public void Turned(LeafBed bed, double hour) => wither.Draw(hour, stretches[Math.Min(at, stretches.Count - 1)].Air.At(hour), bed.ExhaustC);
    }
}
