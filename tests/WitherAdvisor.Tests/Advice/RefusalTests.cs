using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>Where no plan keeps the limits, the limit that binds is named, and the relief that is named relieves.</summary>
public sealed class RefusalTests
{
    private static readonly AdviceRequest Ordinary = InventedBatch.Measured(19, 0.82, 0.775, 0.05);

    [Fact]
    public void Ambient_air_over_35_degrees_binds_until_the_evening_cools_it()
    {
        AdviceRequest hot = InventedBatch.Measured(37, 0.6, 0.775, 0.05) with { Forecast = Evening(37, 28, 0.6, 0.6) };
        AdviceOutcome.CannotAdvise refused = InventedBatch.Refused(hot);

        LimitNotice binding = Assert.Single(refused.Binding);
        Assert.Equal(LimitKind.PlenumDryBulb, binding.Limit);
        Assert.Equal(WitherStyle.HighestPlenumC, binding.Allowed);
        Assert.InRange(binding.Reached!.Value, WitherStyle.HighestPlenumC, 37);
        InventedBatch.Advised(LoadedLater(hot, Amount(refused, ReliefKind.StartLater)));
    }

    [Fact]
    public void Ambient_air_over_the_wet_bulb_ceiling_binds_until_the_evening_damps_it()
    {
        AdviceRequest dry = InventedBatch.Measured(32, 0.24, 0.775, 0) with { Forecast = Evening(32, 24, 0.24, 0.6) };
        AdviceOutcome.CannotAdvise refused = InventedBatch.Refused(dry);

        LimitNotice binding = Assert.Single(refused.Binding);
        Assert.Equal(LimitKind.HygrometricDifference, binding.Limit);
        Assert.Equal(dry.Site.Style.HygrometricDifferenceCeilingK, binding.Allowed);
        Assert.True(binding.Reached > binding.Allowed);
        InventedBatch.Advised(LoadedLater(dry, Amount(refused, ReliefKind.StartLater)));
    }

    [Fact]
    public void Leaf_too_old_at_loading_is_past_relief()
    {
        AdviceOutcome.CannotAdvise refused = InventedBatch.Refused(Older(Ordinary, 21));

        LimitNotice binding = Assert.Single(refused.Binding);
        Assert.Equal(LimitKind.LongestTimeSincePlucking, binding.Limit);
        Assert.Equal(Ordinary.Site.Style.LongestHoursSincePlucking, binding.Allowed);
        Assert.Equal(25, binding.Reached!.Value, 1e-9);
        Assert.Empty(refused.Reliefs);
    }

    [Fact]
    public void Leaf_that_would_grow_too_old_is_spread_thinner()
    {
        AdviceRequest old = Older(Ordinary, 15);
        AdviceOutcome.CannotAdvise refused = InventedBatch.Refused(old);

        Assert.Equal(LimitKind.LongestTimeSincePlucking, Assert.Single(refused.Binding).Limit);
        InventedBatch.Advised(Spread(old, Amount(refused, ReliefKind.SpreadThinner)));
    }

    [Fact]
    public void Leaf_that_would_be_ready_before_its_chemical_wither_is_spread_thicker_or_loaded_later()
    {
        AdviceRequest thin = InventedBatch.Measured(24, 0.55, 0.74, 0, greenKgPerM2: 10);
        AdviceOutcome.CannotAdvise refused = InventedBatch.Refused(thin);

        Assert.Equal(LimitKind.ShortestTimeSincePlucking, Assert.Single(refused.Binding).Limit);
        Assert.NotEmpty(refused.Reliefs);
        foreach (Relief relief in refused.Reliefs)
        {
            InventedBatch.Advised(relief.Kind == ReliefKind.SpreadThicker
                ? Spread(thin, relief.Amount!.Value)
                : LoadedLater(thin, Amount(refused, ReliefKind.StartLater)));
        }
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

    private static double Amount(AdviceOutcome.CannotAdvise refused, ReliefKind kind) =>
        refused.Reliefs.Single(relief => relief.Kind == kind).Amount!.Value;

    private static AdviceRequest LoadedLater(AdviceRequest request, double hours) =>
        request with { Batch = request.Batch with { LoadedAt = request.Batch.LoadedAt.AddHours(hours) } };

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
