using System.Globalization;
using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>The library's bed run through a case of fixtures/bed/growing-bed-cases.json: each hour with its lot laid, before its turn.</summary>
internal sealed class GrowingBedCourse
{
    private const double SecondsPerHour = 3600;
    private const int MostHours = 40;

    private readonly Inputs row;
    private readonly IReadOnlyList<LaidLot> lots;
    private readonly LeafBed bed;
    private readonly double target;
    private int laid = 1;

    public GrowingBedCourse(Inputs row, int layers, double stepS)
    {
        this.row = row;
        lots = [.. Lots(row)];
        bed = new LeafBed(Setup(layers, stepS));
        target = Moisture.DryBasis(row.Number("target_wb"));
        int stepsPerHour = (int)Math.Round(SecondsPerHour / stepS);
        for (int step = 0; step < MostHours * stepsPerHour && HoursToTarget is null; step++)
        {
            At((double)step / stepsPerHour, isWholeHour: step % stepsPerHour == 0);
            Step((double)step / stepsPerHour, 1.0 / stepsPerHour);
        }
    }

    public double? HoursToTarget { get; private set; }

    /// <summary>Of tissue moisture, wet basis, when all lots are on.</summary>
    public double LargestSpread { get; private set; }

    public List<double> WeightByHour { get; } = [];

    public List<double> MoistureByHour { get; } = [];

    public List<double> SpreadByHour { get; } = [];

    public static AirState Plenum(Inputs row, int stage) => Ambient(row) with { DryBulbC = row.Number($"stages.{stage}.plenum_c") };

    private double LastLotHour => lots[^1].Hour;

    private static AirState Ambient(Inputs row) => AirState.FromRelativeHumidity(
        row.Number("ambient_c"), row.Number("ambient_rh"), StandardAtmosphere.PressurePa(row.Number("elevation_m")), MoistAirFormulation.IdealGas);

    /// <summary>The cases state loads without their surface water.</summary>
    private static IEnumerable<LaidLot> Lots(Inputs row)
    {
        for (int i = 0; row.Has($"lots.{i}.at_h"); i++)
        {
            string lot = $"lots.{i.ToString(CultureInfo.InvariantCulture)}.";
            var leaf = new LeafState(row.Number(lot + "moisture_wb"), row.Number(lot + "surface_water_kg_per_kg"));
            yield return new(row.Number(lot + "at_h"), leaf, row.Number(lot + "load_kg_m2") * (1 + leaf.SurfaceWaterKgPerKg));
        }
    }

    private BedSetup Setup(int layers, double stepS)
    {
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
        return new(
            lots[0].Leaf, lots[0].DryMassKgPerM2, row.Number("airflow_m3_s_m2"), pressurePa,
            new SaturationTable(pressurePa, MoistAirFormulation.IdealGas), coefficients, layers, stepS);
    }

    private void At(double hour, bool isWholeHour)
    {
        while (laid < lots.Count && hour >= lots[laid].Hour)
        {
            bed.Lay(lots[laid++]);
        }

        LargestSpread = hour >= LastLotHour ? Math.Max(LargestSpread, Spread()) : 0;
        if (isWholeHour)
        {
            WeightByHour.Add(bed.DryMassKgPerM2 * (1 + bed.MeanWaterDryBasis));
            MoistureByHour.Add(Moisture.WetBasis(bed.MeanWaterDryBasis));
            SpreadByHour.Add(Spread());
        }

        double sinceLast = hour - LastLotHour;
        if (sinceLast > 0 && Math.Abs(Math.IEEERemainder(sinceLast, row.Number("turn_h"))) < 1e-9)
        {
            bed.Turn();
        }
    }

    private void Step(double from, double hours)
    {
        int stage = 0;
        while (from >= row.Number($"stages.{stage}.to_h"))
        {
            stage++;
        }

        AirState plenum = Plenum(row, stage);
        var inlet = new InletAir(plenum.DryBulbC, plenum.HumidityRatio);
        double water = bed.MeanWaterDryBasis;
        bed.Step(hours * SecondsPerHour, inlet, inlet);
        double after = bed.MeanWaterDryBasis;
        if (from >= LastLotHour && after <= target)
        {
            HoursToTarget = from + hours * (water - target) / (water - after);
        }
    }

    private double Spread()
    {
        double low = double.MaxValue;
        double high = double.MinValue;
        foreach (double tissue in bed.TissueDryBasis)
        {
            low = Math.Min(low, tissue);
            high = Math.Max(high, tissue);
        }

        return Moisture.WetBasis(high) - Moisture.WetBasis(low);
    }
}
