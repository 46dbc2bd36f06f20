using FsCheck;
using FsCheck.Fluent;
using WitherAdvisor.Air;

namespace WitherAdvisor.Tests.Air;

/// <summary>Air of any loft: −5 to 50 °C, 1 to 100 % relative humidity, 0 to 3,000 m, both formulations.</summary>
public static class AnyAir
{
    public static Arbitrary<AirState> Air()
    {
        Gen<AirState> air =
            from dryBulbC in Between(-5, 50)
            from relativeHumidity in Between(0.01, 1)
            from elevationM in Between(0, 3_000)
            from formulation in Gen.Elements(MoistAirFormulation.RealGas, MoistAirFormulation.IdealGas)
            select AirState.FromRelativeHumidity(
                dryBulbC, relativeHumidity, StandardAtmosphere.PressurePa(elevationM), formulation);
        return air.ToArbitrary();
    }

    /// <summary>Whole steps from end to end, so that both ends are drawn too.</summary>
    public static Gen<double> Between(double low, double high) =>
        Gen.Choose(0, 1_000).Select(step => low + (high - low) * step / 1_000);
}
