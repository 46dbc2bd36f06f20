using FsCheck;
using FsCheck.Fluent;
using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Tests.Air;

namespace WitherAdvisor.Tests.Properties;

/// <summary>A loaded bed and air to blow through it, over all that the service takes, coefficients included.</summary>
/// <param name="Leaf">At loading.</param>
/// <param name="LoadKgPerM2">Leaf with its surface water.</param>
/// <param name="AirflowM3PerSM2">At the plenum state.</param>
/// <param name="Plenum">Air under the mesh.</param>
/// <param name="TurnEveryHours">Whole hours; infinite for no turn.</param>
/// <param name="TargetWetBasis">Moisture wanted.</param>
public sealed record AnyBed(
    LeafState Leaf, double LoadKgPerM2, double AirflowM3PerSM2, AirState Plenum, double TurnEveryHours, double TargetWetBasis,
    WitherCoefficients Coefficients)
{
    public static Arbitrary<AnyBed> Beds() => All.ToArbitrary();

    public double DryMassKgPerM2 => Leaf.DryMatterKg(LoadKgPerM2);

    public InletAir Inlet => new(Plenum.DryBulbC, Plenum.HumidityRatio);

    public BedSetup Setup(BedResolution resolution) => new(
        Leaf, DryMassKgPerM2, AirflowM3PerSM2, Plenum.PressurePa, new SaturationTable(Plenum.PressurePa, Plenum.Formulation),
        Coefficients, resolution.Layers, resolution.LongestStepS);

    private static Gen<AnyBed> All =>
        from moisture in AnyAir.Between(0.70, 0.85)
        from surface in Gen.Frequency((1, Gen.Constant(0.0)), (2, AnyAir.Between(0, 0.35)))
        from load in AnyAir.Between(8, 40)
        from airflow in AnyAir.Between(0.08, 0.5)
        from plenum in Plenums
        from turn in Gen.Elements(1, 2, 3, 4, 6, double.PositiveInfinity)
        from target in AnyAir.Between(0.5, 0.7)
        from coefficients in Coefficient
        select new AnyBed(new(moisture, surface), load, airflow, plenum, turn, target, coefficients);

    private static Gen<AirState> Plenums =>
        from dryBulbC in AnyAir.Between(5, 35)
        from humidity in AnyAir.Between(0.2, 1)
        from heatK in Gen.Frequency((1, Gen.Constant(0.0)), (2, AnyAir.Between(0, 12)))
        from elevationM in AnyAir.Between(0, 2_500)
        from formulation in Gen.Elements(MoistAirFormulation.RealGas, MoistAirFormulation.IdealGas)
        let ambient = AirState.FromRelativeHumidity(dryBulbC, humidity, StandardAtmosphere.PressurePa(elevationM), formulation)
        select ambient with { DryBulbC = ambient.DryBulbC + heatK };

    private static Gen<WitherCoefficients> Coefficient =>
        from shares in Gen.ArrayOf(AnyAir.Between(0, 1), CoefficientCatalogue.All.Count)
        select CoefficientCatalogue.All.Zip(shares).Aggregate(
            new WitherCoefficients(),
            (set, pair) => pair.First.With(set, pair.First.Low + pair.Second * (pair.First.High - pair.First.Low)));
}
