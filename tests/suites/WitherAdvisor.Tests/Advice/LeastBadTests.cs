using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>Where no plan keeps the limits, the least bad one says which it breaks, and the relief that is named relieves.</summary>
public sealed class LeastBadTests
{
    private static readonly AdviceRequest Ordinary = InventedBatch.Measured(19, 0.82, 0.775, 0.05);

    [Fact]
    public void Ambient_air_over_35_degrees_is_no_reason_to_refuse_while_the_leaf_stays_under()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Measured(36.5, 0.35, 0.775, 0.05));

        Assert.Empty(advice.Broken);
        Assert.Equal(0, advice.Plan.HeatKWh, 1e-9);
        Assert.All(advice.Curve, point => Assert.InRange(point.BottomLeafC!.Value, 20, WitherStyle.HighestPlenumC));
    }

    [Fact]
    public void Air_that_takes_the_leaf_itself_past_its_limit_has_the_least_bad_plan_and_says_when()
    {
        AdviceRequest hot = InventedBatch.Measured(42, 0.45, 0.775, 0.05) with { Forecast = Evening(42, 26, 0.45, 0.8) };
        AdviceOutcome.Advised leastBad = InventedBatch.Advised(hot);

        LimitNotice binding = leastBad.Broken.Single(limit => limit.Limit == LimitKind.LeafTemperature);
        Assert.Equal(WitherStyle.HighestPlenumC, binding.Allowed);
        Assert.InRange(binding.Reached!.Value, WitherStyle.HighestPlenumC, 42);
        Relief shade = leastBad.Reliefs.Single(relief => relief.Kind == ReliefKind.Shade);
        Assert.Equal(shade.Amount, leastBad.Curve.Last(point => point.BottomLeafC > WitherStyle.HighestPlenumC || point.TopLeafC > WitherStyle.HighestPlenumC).Hour);
        Assert.True(shade.Amount < leastBad.Plan.StopHour);
    }

    [Fact]
    public void Ambient_air_over_the_ceiling_of_heated_air_is_let_in_as_it_is()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Measured(32, 0.24, 0.775, 0));

        Assert.Empty(advice.Broken);
        Assert.Equal(0, advice.Plan.HeatKWh, 1e-9);
    }

    [Fact]
    public void Leaf_too_old_at_loading_has_the_least_bad_plan()
    {
        AdviceOutcome.Advised leastBad = InventedBatch.Advised(Older(Ordinary, 21));

        LimitNotice binding = leastBad.Broken.Single(limit => limit.Limit == LimitKind.LongestTimeSincePlucking);
        Assert.Equal(Ordinary.Site.Style.LongestHoursSincePlucking, binding.Allowed!.Value, 1e-9);
        Assert.Equal(25 + leastBad.Plan.StopHour, binding.Reached!.Value, 1e-9);
        Assert.InRange(leastBad.Plan.StopHour, 4, 7);
    }

    [Fact]
    public void Leaf_that_would_grow_too_old_is_spread_thinner()
    {
        AdviceRequest old = Older(Ordinary, 15);
        AdviceOutcome.Advised leastBad = InventedBatch.Advised(old);

        Assert.Contains(leastBad.Broken, limit => limit.Limit == LimitKind.LongestTimeSincePlucking);
        Assert.Empty(InventedBatch.Advised(Spread(old, leastBad.Reliefs.Single(relief => relief.Kind == ReliefKind.SpreadThinner).Amount!.Value)).Broken);
    }

    [Fact]
    public void Leaf_that_would_be_ready_before_its_chemical_wither_is_dried_gently()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Measured(24, 0.55, 0.74, 0, greenKgPerM2: 10));

        Assert.Empty(advice.Broken);
        Assert.True(advice.Plan.RunShare < 1 || advice.Plan.Stages[^1].Kind == StageKind.Holding);
        Assert.Contains(advice.Notices, notice => notice.Limit == LimitKind.ShortestTimeSincePlucking);
    }

    [Fact]
    public void Without_any_air_known_one_reading_at_the_loft_is_enough()
    {
        AdviceRequest unknown = Ordinary with { Readings = [], Forecast = [] };
        AdviceOutcome.CannotAdvise refused = InventedBatch.Refused(unknown);

        Assert.Equal(LimitKind.AmbientAir, Assert.Single(refused.Binding).Limit);
        Assert.Equal(ReliefKind.ReadAmbientAir, Assert.Single(refused.Reliefs).Kind);
        AdviceOutcome.Advised advised = InventedBatch.Advised(unknown with
        {
            Readings = [new WeatherReading(InventedBatch.LoadedAt, DryBulbC: 19, WetBulbC: 17)],
        });
        Assert.Contains(advised.Assumptions, assumption => assumption.Code == "air_not_forecast");
    }

    [Fact]
    public void A_plan_that_comes_too_late_for_rolling_says_how_thin_a_spread_would_not()
    {
        AdviceRequest pressed = Ordinary with { Batch = Ordinary.Batch with { ReadyBy = InventedBatch.LoadedAt.AddHours(6.75) } };
        AdviceOutcome.Advised late = InventedBatch.Advised(pressed);

        Assert.Contains(late.Notices, notice => notice.Limit == LimitKind.ReadyBy && notice.Reached > notice.Allowed);
        double load = late.Reliefs.Single(relief => relief.Kind == ReliefKind.SpreadThinner).Amount!.Value;
        Assert.True(InventedBatch.Advised(Spread(pressed, load)).Plan.StopHour <= 7 + 0.1);
    }

    /// <summary>Air that cools evenly over five hours.</summary>
    private static List<WeatherReading> Evening(double loadedC, double laterC, double humidity, double laterHumidity) =>
        [.. Enumerable.Range(1, 40).Select(hour =>
        {
            double share = Math.Min(hour / 5.0, 1);
            return new WeatherReading(
                InventedBatch.LoadedAt.AddHours(hour), DryBulbC: loadedC + share * (laterC - loadedC),
                RelativeHumidity: humidity + share * (laterHumidity - humidity));
        })];

    private static AdviceRequest Older(AdviceRequest request, double hours) => request with
    {
        Batch = request.Batch with
        {
            PluckedFrom = request.Batch.PluckedFrom.AddHours(-hours),
            PluckedTo = request.Batch.PluckedTo.AddHours(-hours),
        },
    };

    private static AdviceRequest Spread(AdviceRequest request, double kgPerM2) =>
        request with { Batch = request.Batch with { GreenWeightKg = kgPerM2 * request.Trough.AreaM2 } };
}
