using WitherAdvisor.Advice;
using WitherAdvisor.Ambient;
using WitherAdvisor.Coefficients;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Readings;
using WitherAdvisor.Tests.Advice;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Ambient;

/// <summary>The air of the coming hours: forecast, else that of the day before, else the last that is known.</summary>
public sealed class ForecastAheadTests
{
    private const double Hours = 10;

    private static readonly DateTimeOffset LoadedAt = InventedDays.At(13);

    [Fact]
    public void A_night_that_is_forecast_to_its_end_leaves_nothing_to_say()
    {
        ForecastAhead ahead = Ahead([], Air(0, 12));

        Assert.True(ahead.IsComplete);
        Assert.Empty(ahead.Assumptions);
    }

    [Fact]
    public void Of_no_air_at_all_comes_no_night()
    {
        ForecastAhead ahead = Ahead([], []);

        Assert.Null(ahead.Ambient);
        Assert.False(ahead.IsComplete);
    }

    [Fact]
    public void The_same_hour_of_the_day_before_stands_in_and_is_counted()
    {
        ForecastAhead ahead = Ahead(Air(-24, 0), []);

        Assert.Equal(InventedDays.Ordinary.Between(-8, -8, _ => 0).Single().DryBulbC!.Value, ahead.Ambient!.Hours[3].DryBulbC, 1e-9);
        Assert.False(ahead.IsComplete);
        Assert.Equal([new Assumption.AirNotForecast(11, 12, 11, 0)], ahead.Assumptions);
    }

    [Fact]
    public void One_reading_alone_is_held_all_night()
    {
        ForecastAhead ahead = Ahead(Air(0, 0), []);

        Assert.All(ahead.Ambient!.Hours, air => Assert.Equal(ahead.Ambient.Hours[0], air));
        Assert.Equal([new Assumption.AirNotForecast(11, 12, 0, 11)], ahead.Assumptions);
    }

    [Fact]
    public void Air_read_before_loading_is_held_until_the_forecast_begins()
    {
        ForecastAhead ahead = Ahead(Air(-5, -5), Air(5, 12));

        double read = InventedDays.Ordinary.Between(8, 8, _ => 0).Single().DryBulbC!.Value;
        Assert.All(Enumerable.Range(0, 5), hour => Assert.Equal(read, ahead.Ambient!.Hours[hour].DryBulbC, 1e-9));
        Assert.NotEqual(read, ahead.Ambient!.Hours[5].DryBulbC, 0.5);
    }

    [Fact]
    public void A_night_that_is_not_forecast_is_less_sure()
    {
        LeafEstimate leaf = PlanBasis.Of(InventedBatch.Measured(18, 0.85, 0.78, 0.1)).Leaf;

        Assert.Equal(UncertainSpreads.ForecastAirK, UncertainSpreads.Of(leaf, new CoefficientSpreads(), forecast: true).NightAirK);
        Assert.Equal(UncertainSpreads.UnknownAirK, UncertainSpreads.Of(leaf, new CoefficientSpreads(), forecast: false).NightAirK);
    }

    [Fact]
    public void Past_the_last_hour_its_air_stays()
    {
        AmbientForecast night = Ahead([], Air(0, 12)).Ambient!;

        Assert.Equal(night.Hours[^1], night.At(1_000));
        Assert.Equal(night.Hours.Count - 1, night.LastHour);
        Assert.Equal(night.Hours[^1], Assert.Single(night.From(1_000).Hours));
    }

    private static ForecastAhead Ahead(IReadOnlyList<WeatherReading> read, IReadOnlyList<WeatherReading> forecast) =>
        ForecastAhead.Of(InventedDays.Site, LoadedAt, read, new(forecast, 0, 0), Hours);

    /// <summary>A reading each hour between two hours from loading.</summary>
    private static List<WeatherReading> Air(int from, int to) => [.. InventedDays.Ordinary.Between(13 + from, 13 + to, _ => 0)];
}
