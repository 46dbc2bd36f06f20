using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>The library's bed run through a case of fixtures/bed/bed-cases.json, hour by hour, each hour before its turn.</summary>
internal sealed class BedCaseCourse
{
    private const double SecondsPerHour = 3600;
    private const int MostHours = 40;
    private const double SurfaceDryShare = 0.01;

    private readonly LeafBed bed;
    private readonly double surfaceDryAt;
    private readonly double target;

    public BedCaseCourse(Inputs row, int layers, double stepS)
    {
        AirState plenum = Plenum(row);
        bed = new LeafBed(Setup(row, layers, stepS));
        target = Moisture.DryBasis(row.Number("target_wb"));
        surfaceDryAt = SurfaceDryShare * bed.MeanSurfaceDryBasis;
        HoursToSurfaceDry = surfaceDryAt > 0 ? null : 0;
        Note();
        int steps = (int)Math.Ceiling(SecondsPerHour / stepS);
        var inlet = new InletAir(plenum.DryBulbC, plenum.HumidityRatio);
        for (int hour = 0; hour < MostHours; hour++)
        {
            if (hour > 0 && hour % row.Number("turn_h") == 0)
            {
                bed.Turn();
            }

            for (int i = 0; i < steps; i++)
            {
                Step(SecondsPerHour / steps, inlet, hour + (double)i / steps, 1.0 / steps);
            }

            Note();
        }
    }

    public double? HoursToTarget { get; private set; }

    public double? HoursToSurfaceDry { get; private set; }

    /// <summary>Of total water, wet basis, up to the target.</summary>
    public double LargestSpread { get; private set; }

    public List<double> MoistureByHour { get; } = [];

    public List<double> SpreadByHour { get; } = [];

    public static AirState Plenum(Inputs row) => Ambient(row) with { DryBulbC = row.Number("plenum_c") };

    private static AirState Ambient(Inputs row) => AirState.FromRelativeHumidity(
        row.Number("ambient_c"), row.Number("ambient_rh"), StandardAtmosphere.PressurePa(row.Number("elevation_m")), MoistAirFormulation.IdealGas);

    private static BedSetup Setup(Inputs row, int layers, double stepS)
    {
        var leaf = new LeafState(row.Number("moisture_wb"), row.Number("surface_water_kg_per_kg"));
        double pressurePa = StandardAtmosphere.PressurePa(row.Number("elevation_m"));
        var coefficients = new WitherCoefficients
        {
            SpecificLeafAreaM2PerKgDry = row.Number("leaf.A"),
            BoundaryLayerConductanceMPerS = row.Number("leaf.gb"),
            CuticularConductanceMPerS = row.Number("leaf.g0"),
            EquilibriumMoistureDryBasis = row.Number("leaf.Xe"),
            ReferenceMoistureDryBasis = row.Number("leaf.Xref"),
            SurfaceCapacityKgPerKg = row.Number("surface_capacity_kg_per_kg"),
            TurnBlend = row.Number("turn_blend"),
        };

        // The cases state the load without its surface water.
        double dryMass = row.Number("load_kg_m2") * (1 - leaf.TissueMoistureWetBasis);
        return new(
            leaf, dryMass, row.Number("airflow_m3_s_m2"), pressurePa,
            new SaturationTable(pressurePa, MoistAirFormulation.IdealGas), coefficients, layers, stepS);
    }

    private void Step(double seconds, InletAir inlet, double from, double hours)
    {
        double water = bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;
        bed.Step(seconds, inlet, inlet);
        double after = bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;
        if (HoursToSurfaceDry is null && bed.MeanSurfaceDryBasis < surfaceDryAt)
        {
            HoursToSurfaceDry = from + hours;
        }

        if (HoursToTarget is null)
        {
            LargestSpread = Math.Max(LargestSpread, Spread());
            HoursToTarget = after <= target ? from + hours * (water - target) / (water - after) : null;
        }
    }

    private void Note()
    {
        MoistureByHour.Add(Moisture.WetBasis(bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis));
        SpreadByHour.Add(Spread());
    }

    private double Spread()
    {
        double low = double.MaxValue;
        double high = double.MinValue;
        for (int i = 0; i < bed.TissueDryBasis.Length; i++)
        {
            double moisture = Moisture.WetBasis(bed.TissueDryBasis[i] + bed.SurfaceDryBasis[i]);
            low = Math.Min(low, moisture);
            high = Math.Max(high, moisture);
        }

        return high - low;
    }
}
