using WitherAdvisor.Advice;
using WitherAdvisor.Air;
using WitherAdvisor.Plans;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>Practice published by the UPASI Tea Research Foundation (South India), whose troughs run on little heat.</summary>
public sealed class PublishedPracticeTests
{
    /// <summary>62 % is in the middle of the published South Indian target of 60 to 65 %.</summary>
    private static readonly WitherStyle SouthIndian = WitherStyle.Long with { TargetMoistureWetBasis = 0.62 };

    // UPASI: a trough wither on mostly ambient air takes 16 to 18 h; 2.5 to 3 kg/ft² (27 to 32 kg/m²), 45 cfm/ft².
    [Theory]
    [InlineData(24, 0.85)]
    [InlineData(22, 0.90)]
    [InlineData(25, 0.80)]
    public void Low_down_at_a_difference_of_3_degrees_the_long_style_takes_16_to_18_hours(double dryBulbC, double humidity)
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(
            InventedBatch.Measured(dryBulbC, humidity, 0.78, 0, elevationM: 300, style: SouthIndian));

        Assert.Equal(3, advice.Plan.MeanHygrometricDifferenceK, 0.25);
        Assert.InRange(advice.Plan.StopHour, 16, 18);
        Assert.Equal(0.62, advice.Curve[^1].MeanMoistureWetBasis, 0.002);
    }

    // UPASI: hot air is mixed in when the difference is below 3 °C.
    [Fact]
    public void Hot_air_is_mixed_in_below_a_difference_of_3_degrees_and_not_above()
    {
        AdviceOutcome.Advised damp = InventedBatch.Advised(
            InventedBatch.Measured(24, RelativeHumidityAt(24, 1.5), 0.78, 0, elevationM: 300, style: SouthIndian));
        AdviceOutcome.Advised dry = InventedBatch.Advised(
            InventedBatch.Measured(24, RelativeHumidityAt(24, 3.5), 0.78, 0, elevationM: 300, style: SouthIndian));

        Assert.True(damp.Plan.HeatKWh > 0);
        Assert.All(damp.Plan.Settings.Where(setting => setting.Stage == StageKind.Main), setting => Assert.True(setting.HotAirShare > 0));
        Assert.Equal(0, dry.Plan.HeatKWh, 1e-6);
    }

    // UPASI: on rain-wet leaf the heaters run with the fans for the first two hours.
    [Fact]
    public void Rain_wet_leaf_is_heated_from_the_start()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(
            InventedBatch.Measured(22, 0.95, 0.80, 0.2, elevationM: 300, style: SouthIndian));

        Assert.Equal(StageKind.SurfaceDrying, advice.Plan.Stages[0].Kind);
        Assert.True(advice.Plan.Stages[0].ToHour >= 2);
        Assert.All(advice.Plan.Settings.Where(setting => setting.Hour <= 2), setting => Assert.True(setting.HotAirShare > 0));
    }

    private static double RelativeHumidityAt(double dryBulbC, double differenceK) =>
        AirState.FromWetBulb(dryBulbC, dryBulbC - differenceK, StandardAtmosphere.PressurePa(300)).RelativeHumidity;
}
