using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

/// <summary>Moist air computed with npm psychrolib 1.1.1 (ideal gas), and a published table of relative humidity.</summary>
public sealed class ReferenceStatesTests
{
    private const double RatioTolerance = 1e-5;
    private const double TemperatureToleranceK = 0.002;

    public static TheoryData<ReferenceRow> States => [.. ReferenceRow.ReadAll("moist-air/reference-states.csv")];

    public static TheoryData<ReferenceRow> HumidityTable => [.. ReferenceRow.ReadAll("moist-air/relative-humidity-table.csv")];

    [Theory]
    [MemberData(nameof(States))]
    public void Ideal_gas_air_agrees_with_psychrolib(ReferenceRow row)
    {
        AirState air = AirState.FromRelativeHumidity(
            row.Number("tdb_C"), row.Number("rh"), row.Number("pressure_Pa"), MoistAirFormulation.IdealGas);

        AssertClose(row, "w_kg_per_kgda", air.HumidityRatio);
        AssertClose(row, "psat_tdb_Pa", Saturation.PressurePa(air.DryBulbC));
        AssertClose(row, "pv_Pa", air.VapourPressurePa);
        AssertClose(row, "h_kJ_per_kgda", air.EnthalpyKJPerKg);
        AssertClose(row, "v_m3_per_kgda", air.SpecificVolumeM3PerKg);
        AssertClose(row, "rho_kg_per_m3", air.DensityKgPerM3);
        AssertClose(row, "w_sat_kg_per_kgda", MoistAir.SaturatedHumidityRatio(air.DryBulbC, air.PressurePa, air.Formulation));
        Assert.Equal(row.Number("vpd_Pa"), air.VapourPressureDeficitPa, 0.002);
        Assert.Equal(row.Number("twb_C"), air.WetBulbC, TemperatureToleranceK);
        Assert.Equal(row.Number("depression_C"), air.HygrometricDifferenceK, TemperatureToleranceK);
        Assert.Equal(row.Number("tdp_C"), air.DewPointC, TemperatureToleranceK);
    }

    [Theory]
    [MemberData(nameof(States))]
    public void Pressure_follows_from_elevation(ReferenceRow row) =>
        Assert.Equal(row.Number("pressure_Pa"), StandardAtmosphere.PressurePa(row.Number("altitude_m")), 0.006);

    [Theory]
    [MemberData(nameof(HumidityTable))]
    public void Depression_gives_the_relative_humidity_of_the_published_table(ReferenceRow row)
    {
        double dryBulbC = row.Number("dry_bulb_c");
        AirState air = AirState.FromWetBulb(
            dryBulbC, dryBulbC - row.Number("depression_k"), StandardAtmosphere.SeaLevelPressurePa);

        Assert.Equal(row.Number("relative_humidity_percent"), 100 * air.RelativeHumidity, 2.0);
    }

    private static void AssertClose(ReferenceRow row, string column, double actual)
    {
        double expected = row.Number(column);
        Assert.Equal(expected, actual, RatioTolerance * expected);
    }
}
