using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Readings.Sources;

/// <summary>What was read and what was forecast are told apart value by value.</summary>
public sealed class ForecastPartTests
{
    private static readonly WeatherReading Whole = new(InventedDays.At(5), 20, 15, 17, 0.7, 1, 2, 84_000, 300, PsychrometerKind.Sling);

    private static readonly WeatherReading Nothing = new(InventedDays.At(5));

    public static TheoryData<WeatherReading, WeatherReading> ReadAndLeft => new()
    {
        { Nothing, Whole },
        { Nothing with { DryBulbC = 19 }, Whole with { DryBulbC = null, WetBulbC = null, RelativeHumidity = null, Instrument = null } },
        { Nothing with { DewPointC = 14 }, Whole with { DewPointC = null, WetBulbC = null, RelativeHumidity = null, Instrument = null } },
        { Nothing with { RainMm = 0 }, Whole with { RainMm = null } },
        { Nothing with { WindMPerS = 3 }, Whole with { WindMPerS = null } },
        { Nothing with { StationPressurePa = 85_000 }, Whole with { StationPressurePa = null } },
        { Nothing with { ShortwaveWPerM2 = 100 }, Whole with { ShortwaveWPerM2 = null } },
    };

    [Theory]
    [MemberData(nameof(ReadAndLeft))]
    public void Only_what_nobody_read_is_left_of_what_was_forecast(WeatherReading read, WeatherReading left) =>
        Assert.Equal([left], GapFilling.Of([read], [], [Whole]));

    [Fact]
    public void Readings_need_not_come_in_order()
    {
        WeatherReading[] read = [.. new[] { 9, 5, 1, 8, 3 }.Select(hour => Nothing with { Time = InventedDays.At(hour), WindMPerS = 1 })];

        Assert.All(read, reading => Assert.Null(Assert.Single(GapFilling.Of(read, [], [Whole with { Time = reading.Time }])).WindMPerS));
    }

    public static TheoryData<int, WeatherReading> Origins => new()
    {
        { 0, Nothing with { DryBulbC = 20 } },
        { 1, Nothing with { DewPointC = 15, WetBulbC = 17, RelativeHumidity = 0.7, Instrument = PsychrometerKind.Sling } },
        { 2, Nothing with { RainMm = 1 } },
        { 3, Nothing with { WindMPerS = 2 } },
        { 4, Nothing with { StationPressurePa = 84_000 } },
        { 5, Nothing with { ShortwaveWPerM2 = 300 } },
    };

    [Theory]
    [MemberData(nameof(Origins))]
    public void A_value_is_read_or_forecast_by_its_origin(int place, WeatherReading alone)
    {
        ValueOrigin observed = new(WeatherSource.Observed, null, InventedDays.At(6));
        ValueOrigin forecast = new(WeatherSource.FeedForecast, "hill", InventedDays.At(1));

        Assert.Equal(alone, new ComposedReading(Whole, Only(place, forecast, observed)).Forecast);
        Assert.Equal(alone, new ComposedReading(Whole, Only(place, observed, forecast)).Observed);
        Assert.Null(new ComposedReading(alone, Only(place, observed, null)).Forecast);
    }

    [Theory]
    [MemberData(nameof(Origins))]
    public void Each_value_alone_tells_something(int place, WeatherReading alone)
    {
        Assert.True(alone.TellsAnything);
        Assert.Equal(place == 1, alone.HasHumidity);
        Assert.False(Nothing.TellsAnything);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(1, true)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(4, false)]
    [InlineData(5, false)]
    public void Temperature_humidity_and_rain_alone_are_news_of_the_weather(int place, bool isNews)
    {
        WeatherReading alone = Origins.ElementAt(place).Data.Item2;

        Assert.Equal(isNews ? alone.Time : null, StaleWeather.NewestObserved([alone], InventedDays.At(8)));
        Assert.Null(StaleWeather.NewestObserved([alone], InventedDays.At(4)));
    }

    private static ReadingOrigins Only(int place, ValueOrigin? there, ValueOrigin? elsewhere)
    {
        ValueOrigin? At(int i) => i == place ? there : elsewhere;
        return new(At(0), At(1), At(2), At(3), At(4), At(5));
    }
}
