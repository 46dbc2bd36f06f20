using WitherAdvisor.Evaporation;
using Xunit;

namespace WitherAdvisor.Tests.Evaporation;

/// <summary>What the worked examples of FAO-56 do not reach; they stand in fixtures/fao56.</summary>
public sealed class ReferenceEvapotranspirationTests
{
    [Fact]
    public void A_dark_wet_day_does_not_turn_the_longwave_term_round()
    {
        // Without the bound a sky of R_s/R_so under 0.26 would warm the ground.
        Assert.Equal(0.3, NetRadiation.Clearness(1, 20));
        Assert.True(NetRadiation.LongwaveOfDay(15, 12, 1.5, NetRadiation.Clearness(1, 20)) > 0);
    }

    [Fact]
    public void Light_from_the_range_of_temperature_never_exceeds_a_clear_sky()
    {
        Assert.Equal(Sunlight.ClearSky(30, 1500), Sunlight.FromTemperatureRange(30, 60, 1500));
        Assert.Equal(0.16 * 3 * 30, Sunlight.FromTemperatureRange(30, 9, 1500), 1e-12);
    }
}
