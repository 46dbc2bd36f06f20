using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.Sites;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>One instant of a bed under 25 °C with a hygrometric difference of 3 K: what it gives up and the air on top.</summary>
public sealed class BedInstantRunner : IRunner
{
    private const int Layers = 400;
    private const double SecondsPerHour = 3600;
    private const double GasConstant = 8.314;
    private const double FreshLeafM2PerKg = 4.5;
    private const double FreshMoistureWetBasis = 0.78;
    private const double DryBulbC = 25;
    private const double DifferenceK = 3;

    /// <summary>More than the leaf can hold in a film all over.</summary>
    private const double SoakedKgPerKg = 0.35;

    /// <summary>The march names no film of air about the leaf: one this conductive, m/s, holds nothing back.</summary>
    private const double NoFilm = 1e3;

    public string Name => "bed_instant";

    public double Ours(ReferenceCase given)
    {
        Inputs row = given.Inputs;
        double pressurePa = StandardAtmosphere.PressurePa(row.Number("z", 0));
        BedSetup setup = given.Quantity == "wet_bed_kg_per_h_m2_and_k" ? Wet(row, pressurePa) : ConstantCuticle(row, pressurePa);
        AirState plenum = AirState.FromWetBulb(DryBulbC, DryBulbC - DifferenceK, pressurePa);
        var bed = new LeafBed(setup);
        double before = bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;
        double tissue = bed.TissueDryBasis[0];
        bed.Step(1, new(plenum.DryBulbC, plenum.HumidityRatio), new(plenum.DryBulbC, plenum.HumidityRatio));
        double rate = SecondsPerHour * setup.DryMassKgPerM2 * (before - bed.MeanTissueDryBasis - bed.MeanSurfaceDryBasis);
        return given.Quantity switch
        {
            "wet_bed_kg_per_h_m2_and_k" => rate / DifferenceK,
            "rate_kg_per_h_m2" => rate,
            "air_out_c" => bed.ExhaustC,
            "top_over_bottom" => (tissue - bed.TissueDryBasis[^1]) / (tissue - bed.TissueDryBasis[0]),
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }

    private static BedSetup Wet(Inputs row, double pressurePa) => Setup(
        new(FreshMoistureWetBasis, SoakedKgPerKg), row.Number("load"), pressurePa, new WitherCoefficients());

    private static BedSetup ConstantCuticle(Inputs row, double pressurePa)
    {
        double m3PerMol = GasConstant * (DryBulbC + Saturation.KelvinAtZeroC) / pressurePa;
        return Setup(new(FreshMoistureWetBasis, 0), row.Number("load_kg_per_m2"), pressurePa, new WitherCoefficients
        {
            SpecificLeafAreaM2PerKgDry = FreshLeafM2PerKg / (1 - FreshMoistureWetBasis),
            BoundaryLayerConductanceMPerS = NoFilm,
            CuticularConductanceMPerS = row.Number("cuticular_conductance_mol_per_m2_s") * m3PerMol,
        });
    }

    private static BedSetup Setup(LeafState leaf, double loadKgPerM2, double pressurePa, WitherCoefficients coefficients) => new(
        leaf, loadKgPerM2 * (1 - FreshMoistureWetBasis), Trough.UsualAirflowM3PerSM2, pressurePa,
        new SaturationTable(pressurePa, MoistAirFormulation.RealGas), coefficients, Layers, 1);
}
