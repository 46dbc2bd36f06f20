using WitherAdvisor.Air;
using WitherAdvisor.Leaf;
using WitherAdvisor.Troughs;
using Xunit;

namespace WitherAdvisor.Tests.Troughs;

/// <summary>One instant of a bed against another program's march through 3,000 layers; see fixtures/bed/README.md.</summary>
public sealed class BedMarchTests
{
    private const int Layers = 400;
    private const double SecondsPerHour = 3600;
    private const double GasConstant = 8.314;
    private const double FreshLeafM2PerKg = 4.5;
    private const double FreshMoistureWetBasis = 0.78;
    private const double DryBulbC = 25;
    private const double DifferenceK = 3;

    /// <summary>The rows name no film of air about the leaf: one this conductive, m/s, holds nothing back.</summary>
    private const double NoFilm = 1e3;

    public static TheoryData<ReferenceRow> Rows => [.. ReferenceRow.ReadAll("bed/bed-march.csv")];

    [Theory]
    [MemberData(nameof(Rows))]
    public void An_instant_of_the_bed_agrees_with_another_programs_march(ReferenceRow row)
    {
        BedSetup setup = Setup(row.Number("load_kg_per_m2"), row.Number("skin_conductance_mol_per_m2_s"));
        AirState plenum = AirState.FromWetBulb(DryBulbC, DryBulbC - DifferenceK, setup.PressurePa);
        LayerRates rates = new(Layers);
        // At the reference moisture the skin has its reference conductance in every layer.
        double[] tissue = [.. Enumerable.Repeat(setup.Coefficients.ReferenceMoistureDryBasis, Layers)];

        new LayerExchange(setup).March(new(plenum.DryBulbC, plenum.HumidityRatio), tissue, new double[Layers], 1, rates);

        double rate = SecondsPerHour * setup.DryMassKgPerM2 * rates.Tissue.Average();
        Assert.InRange(rate / row.Number("rate_kg_per_h_m2"), 0.96, 1.04);
        Assert.Equal(row.Number("air_out_c"), rates.ExhaustC, 0.1);
        Assert.Equal(row.Number("top_over_bottom"), rates.Tissue[^1] / rates.Tissue[0], 0.03);
    }

    private static BedSetup Setup(double loadKgPerM2, double skinMolPerM2S)
    {
        double pressurePa = StandardAtmosphere.SeaLevelPressurePa;
        double m3PerMol = GasConstant * (DryBulbC + Saturation.KelvinAtZeroC) / pressurePa;
        return new(
            new LeafState(FreshMoistureWetBasis, 0), loadKgPerM2 * (1 - FreshMoistureWetBasis), Trough.UsualAirflowM3PerSM2, pressurePa,
            new SaturationTable(pressurePa, MoistAirFormulation.RealGas),
            new WitherCoefficients
            {
                LeafAreaM2PerKgDry = FreshLeafM2PerKg / (1 - FreshMoistureWetBasis),
                BoundaryConductanceMPerS = NoFilm,
                SkinConductanceMPerS = skinMolPerM2S * m3PerMol,
            },
            Layers, 1);
    }
}
