using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

public sealed class PsychrometerTests
{
    // FAO-56 (Allen et al. 1998), example 4: an aspirated psychrometer at 1,200 m (87.9 kPa) reads 25.6 and
    // 19.5 °C; e°(19.5) = 2.267 kPa and the vapour pressure is 1.91 kPa. FAO-56 takes vapour as an ideal gas.
    [Fact]
    public void The_worked_example_of_fao_56_comes_out()
    {
        double vapourPressurePa = Psychrometer.VapourPressurePa(
            25.6, 19.5, 87_900, PsychrometerKind.Aspirated, MoistAirFormulation.IdealGas);

        Assert.Equal(1.91, vapourPressurePa / 1000, 0.005);
    }

    // FAO-56, text under eq. 16.
    [Theory]
    [InlineData(PsychrometerKind.Aspirated, 0.000662)]
    [InlineData(PsychrometerKind.Screen, 0.000800)]
    [InlineData(PsychrometerKind.Unventilated, 0.001200)]
    public void The_coefficients_are_those_of_fao_56(PsychrometerKind kind, double coefficient) =>
        Assert.Equal(coefficient, Psychrometer.CoefficientPerK(kind));

    [Fact]
    public void Equal_bulbs_mean_saturated_air()
    {
        AirState? air = Psychrometer.Air(18, 18, 84_556, PsychrometerKind.Unventilated);

        Assert.NotNull(air);
        Assert.Equal(1, air.Value.RelativeHumidity, 1e-9);
    }

    [Fact]
    public void The_same_pair_means_drier_air_where_the_bulb_hangs_still()
    {
        double aspirated = Psychrometer.Air(25, 20, 101_325, PsychrometerKind.Aspirated)!.Value.RelativeHumidity;
        double still = Psychrometer.Air(25, 20, 101_325, PsychrometerKind.Unventilated)!.Value.RelativeHumidity;

        Assert.True(still < aspirated - 0.05);
    }

    [Theory]
    [InlineData(20, 21)]
    [InlineData(40, 5)]
    public void A_pair_no_air_can_have_is_refused(double dryBulbC, double wetBulbC) =>
        Assert.Null(Psychrometer.Air(dryBulbC, wetBulbC, 101_325, PsychrometerKind.Aspirated));

    [Fact]
    public void Every_kind_has_a_coefficient() =>
        Assert.All(Enum.GetValues<PsychrometerKind>(), kind => Assert.True(Psychrometer.CoefficientPerK(kind) > 0));
}
