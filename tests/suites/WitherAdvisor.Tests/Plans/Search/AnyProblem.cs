using FsCheck.Fluent;
using FsCheck;
using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Air;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>Any night, leaf, trough and style that the service takes, the silly ones too.</summary>
public static class AnyProblem
{
    public static Arbitrary<ProblemCase> Problem() => Cases.ToArbitrary();

    private static Gen<ProblemCase> Cases =>
        from night in Nights
        from moisture in AnyAir.Between(0.70, 0.85)
        from surface in Gen.Frequency((1, Gen.Constant(0.0)), (2, AnyAir.Between(0, 0.35)))
        from load in AnyAir.Between(8, 40)
        from airflow in AnyAir.Between(0.08, 0.5)
        from slowest in Gen.Elements(1, 0.7, 0.4)
        from style in Styles
        from shortest in AnyAir.Between(-3, 12)
        from longest in AnyAir.Between(1, 26)
        from readyBy in Gen.Frequency((1, Gen.Constant<double?>(null)), (1, AnyAir.Between(1, 24).Select(hour => (double?)hour)))
        select new ProblemCase(new(
            new LeafState(moisture, surface), load, new Trough(41, airflow, slowest), style, HeatSupply.Plenty(Site.UsualHotAirC), night, new WitherCoefficients(),
            shortest, longest, readyBy));

    private static Gen<WitherStyle> Styles =>
        from wanted in AnyAir.Between(1, 12)
        from ceiling in AnyAir.Between(4, 12)
        from wetCeiling in AnyAir.Between(4, 14)
        from target in AnyAir.Between(0.5, 0.7)
        from plenum in AnyAir.Between(25, 40)
        select new WitherStyle
        {
            WantedHygrometricDifferenceK = wanted,
            HygrometricDifferenceCeilingK = ceiling,
            WetLeafHygrometricDifferenceCeilingK = wetCeiling,
            TargetMoistureWetBasis = target,
            PlenumCeilingC = plenum,
        };

    private static Gen<AmbientForecast> Nights =>
        from meanC in AnyAir.Between(5, 36)
        from swingK in AnyAir.Between(0, 8)
        from humidity in AnyAir.Between(0.2, 1)
        from elevationM in AnyAir.Between(0, 2_500)
        select new AmbientForecast([.. Enumerable.Range(0, 33).Select(hour => Hour(meanC, swingK, humidity, elevationM, hour))]);

    private static AirState Hour(double meanC, double swingK, double humidity, double elevationM, int hour)
    {
        double pressurePa = StandardAtmosphere.PressurePa(elevationM);
        AirState mean = AirState.FromRelativeHumidity(meanC, humidity, pressurePa);
        double dryBulbC = meanC + swingK * Math.Cos(hour * Math.PI / 12);
        return mean with
        {
            DryBulbC = dryBulbC,
            HumidityRatio = Math.Min(mean.HumidityRatio, MoistAir.SaturatedHumidityRatio(dryBulbC, pressurePa)),
        };
    }
}
