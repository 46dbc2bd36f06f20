using WitherAdvisor.Advice;
using WitherAdvisor.Plans;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Explaining;

/// <summary>When to weigh, and what to do about a weight outside the band.</summary>
public sealed class WeighingCheckTests
{
    private static readonly WitherStyle Hasty = WitherStyle.Short with { ShortestHoursSincePlucking = 2, ShortestHoursSincePluckingInDryWindySpell = 2 };

    [Theory]
    [InlineData(2.5, 0)]
    [InlineData(4, 0)]
    [InlineData(8, 1)]
    [InlineData(28, 2)]
    public void No_check_comes_in_the_first_hour_or_the_last(double greenKgPerM2, int fewest)
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Measured(24, 0.45, 0.74, 0, greenKgPerM2, style: Hasty));

        Assert.All(advice.Checks, check => Assert.InRange(check.Hour, 1, advice.Plan.StopHour - 1));
        Assert.True(advice.Checks.Count >= fewest, $"{advice.Checks.Count} checks in {advice.Plan.StopHour} h");
    }

    [Fact]
    public void A_wither_of_a_few_hours_is_weighed_after_the_first()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Measured(24, 0.45, 0.74, 0, 8, style: Hasty));

        Assert.InRange(advice.Plan.StopHour, 2, 4.49);
        Assert.Equal(1, advice.Checks[0].Hour);
    }

    [Fact]
    public void Leaf_that_lags_gets_no_air_over_the_ceiling_of_its_difference()
    {
        WitherStyle style = WitherStyle.Short with { HygrometricDifferenceCeilingK = 7.4 };
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Measured(18, 0.85, 0.78, 0.1, style: style));

        Assert.All(advice.Checks, check => Assert.Null(check.IfHigh.PlenumDryBulbChangeK));
        Assert.Contains(advice.Checks, check => check.IfLow.PlenumDryBulbChangeK < 0);
    }

    [Fact]
    public void The_air_of_the_checks_own_hour_says_what_can_be_changed()
    {
        // Dry on the first hours, so that nothing is mixed in, and then a damp night with heat that can be taken back.
        AdviceRequest steady = InventedBatch.Measured(17, 0.93, 0.78, 0.1, style: WitherStyle.Long);
        AdviceRequest request = steady with
        {
            Readings = [.. steady.Readings.Where(reading => reading.Time < InventedBatch.LoadedAt), .. InventedBatch.Steady(0, 0, 25, 0.52)],
            Forecast = [.. InventedBatch.Steady(1, 3, 25, 0.52), .. InventedBatch.Steady(4, 36, 17, 0.93)],
        };

        AdviceOutcome.Advised advice = InventedBatch.Advised(request);

        AirSetting first = advice.Plan.Settings[0];
        Assert.Equal(first.Ambient.DryBulbC, first.Plenum.DryBulbC, 0.2);
        Assert.Contains(advice.Checks, check => check.Hour > 4 && check.IfLow.PlenumDryBulbChangeK < -0.3);
    }
}
