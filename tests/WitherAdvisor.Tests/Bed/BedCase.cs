using System.Text.Json;
using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Tests.Bed;

/// <summary>One case of fixtures/bed/bed-cases.json, ready to be run.</summary>
internal sealed class BedCase
{
    private readonly JsonElement bed;

    private BedCase(JsonElement bed) => this.bed = bed;

    public double TurnHours => Number("turn_h");

    public double TargetDryBasis => Moisture.DryBasis(Number("target_wb"));

    public static IEnumerable<string> Ids => All().Select(bed => bed.GetProperty("id").GetString()!);

    public static BedCase Read(string id) => new(All().Single(bed => bed.GetProperty("id").GetString() == id));

    public double Number(string name) => bed.GetProperty(name).GetDouble();

    public double Expected(string name) => bed.GetProperty("result").GetProperty(name).GetDouble();

    public BedSetup Setup(BedResolution resolution)
    {
        var leaf = new LeafState(Number("moisture_wb"), Number("surface_water_kg_per_kg"));
        double pressurePa = StandardAtmosphere.PressurePa(Number("elevation_m"));
        // The cases state the load without its surface water.
        double dryMass = Number("load_kg_m2") * (1 - leaf.TissueMoistureWetBasis);
        return new(
            leaf, dryMass, Number("airflow_m3_s_m2"), pressurePa,
            new SaturationTable(pressurePa, MoistAirFormulation.IdealGas), Coefficients(), resolution.Layers, resolution.LongestStepS);
    }

    /// <summary>The plenum air of the case, held.</summary>
    public PlenumSchedule Air()
    {
        AirState ambient = AirState.FromRelativeHumidity(
            Number("ambient_c"), Number("ambient_rh"), StandardAtmosphere.PressurePa(Number("elevation_m")), MoistAirFormulation.IdealGas);
        return PlenumSchedule.ForDryBulb(new AmbientForecast([ambient, ambient]), Number("plenum_c"));
    }

    private WitherCoefficients Coefficients()
    {
        JsonElement leaf = bed.GetProperty("leaf");
        return new()
        {
            SpecificLeafAreaM2PerKgDry = leaf.GetProperty("A").GetDouble(),
            BoundaryLayerConductanceMPerS = leaf.GetProperty("gb").GetDouble(),
            CuticularConductanceMPerS = leaf.GetProperty("g0").GetDouble(),
            EquilibriumMoistureDryBasis = leaf.GetProperty("Xe").GetDouble(),
            ReferenceMoistureDryBasis = leaf.GetProperty("Xref").GetDouble(),
            SurfaceCapacityKgPerKg = Number("surface_capacity_kg_per_kg"),
            TurnBlend = Number("turn_blend"),
        };
    }

    private static List<JsonElement> All()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "fixtures", "bed", "bed-cases.json");
        using JsonDocument file = JsonDocument.Parse(File.ReadAllBytes(path));
        return [.. file.RootElement.GetProperty("cases").EnumerateArray().Select(bed => bed.Clone())];
    }
}
