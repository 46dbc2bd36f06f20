using FsCheck.Fluent;
using FsCheck.Xunit;
using FsCheck;
using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

[Properties(Arbitrary = [typeof(AnyAir)], MaxTest = 1000)]
public sealed class HotAirMixTests
{
    private const double HotAirC = 52.8;

    [Property]
    public Property Heating_keeps_the_humidity_ratio_and_the_dew_point() =>
        Prop.ForAll(AnyAir.Air(), AnyAir.Between(0, 1).ToArbitrary(), (ambient, share) =>
        {
            AirState plenum = HotAirMix.Plenum(ambient, HotAirC, share);

            Assert.Equal(ambient.HumidityRatio, plenum.HumidityRatio, 1e-15);
            Assert.Equal(ambient.DewPointC, plenum.DewPointC, 2e-9);
            Assert.InRange(plenum.DryBulbC, ambient.DryBulbC - 1e-9, HotAirC + 1e-9);
        });

    [Property]
    public Property The_share_found_for_a_plenum_gives_that_plenum() =>
        Prop.ForAll(AnyAir.Air(), AnyAir.Between(0, 1).ToArbitrary(), (ambient, share) =>
        {
            AirState plenum = HotAirMix.Plenum(ambient, HotAirC, share);

            Assert.Equal(share, HotAirMix.Share(ambient, HotAirC, plenum.DryBulbC), 1e-10);
        });

    [Property]
    public Property The_plenum_for_a_hygrometric_difference_has_it_or_is_the_ambient_air() =>
        Prop.ForAll(AnyAir.Air(), AnyAir.Between(0, 12).ToArbitrary(), (ambient, wantedK) =>
        {
            AirState plenum = HotAirMix.PlenumForHygrometricDifference(ambient, wantedK);

            Assert.Equal(ambient.HumidityRatio, plenum.HumidityRatio);
            if (plenum.DryBulbC > ambient.DryBulbC)
            {
                Assert.Equal(wantedK, plenum.HygrometricDifferenceK, 1e-8);
            }
            else
            {
                Assert.True(ambient.HygrometricDifferenceK >= wantedK - 1e-8);
            }
        });

    [Property]
    public Property More_hygrometric_difference_never_needs_less_heat() =>
        Prop.ForAll(AnyAir.Air(), AnyAir.Between(0, 11).ToArbitrary(), (ambient, wantedK) =>
        {
            AirState less = HotAirMix.PlenumForHygrometricDifference(ambient, wantedK);
            AirState more = HotAirMix.PlenumForHygrometricDifference(ambient, wantedK + 1);

            Assert.True(more.DryBulbC >= less.DryBulbC);
        });

    // Near boiling, humidity ratios change sign; a solver that looks there answers about 100 °C.
    [Fact]
    public void A_hot_afternoon_high_up_gets_a_plenum_of_this_world()
    {
        AirState ambient = AirState.FromRelativeHumidity(40, 0.9, StandardAtmosphere.PressurePa(3_000));

        AirState plenum = HotAirMix.PlenumForHygrometricDifference(ambient, 5);

        Assert.InRange(plenum.DryBulbC, 40, 46);
        Assert.Equal(5, plenum.HygrometricDifferenceK, 1e-8);
    }

    [Fact]
    public void No_share_is_the_ambient_air_and_all_of_it_the_hot_air()
    {
        AirState ambient = AirState.FromRelativeHumidity(18, 0.95, StandardAtmosphere.PressurePa(1_500));

        Assert.Equal(18, HotAirMix.Plenum(ambient, HotAirC, 0).DryBulbC, 1e-12);
        Assert.Equal(HotAirC, HotAirMix.Plenum(ambient, HotAirC, 1).DryBulbC, 1e-12);
    }

    [Fact]
    public void Heat_demand_is_nothing_where_nothing_is_heated()
    {
        AirState ambient = AirState.FromRelativeHumidity(20, 0.5, StandardAtmosphere.SeaLevelPressurePa);

        Assert.Equal(0, HotAirMix.HeatKW(ambient, ambient, 10));
    }
}
