using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Review;

/// <summary>Each value of each hour with how it came to be known.</summary>
/// <param name="observed">Only what was observed.</param>
/// <param name="withForecast">The same hours, with what was forecast where nobody observed.</param>
internal sealed class KnownHours(HourlySeries observed, HourlySeries withForecast)
{
    public HourGrid Grid => withForecast.Grid;

    /// <summary>Of weather made one, on a grid.</summary>
    public static KnownHours On(HourGrid grid, ComposedWeather weather, Site site) =>
        On(grid, weather.Weather, GapFilling.Of(weather.Weather, weather.RainTotals, weather.Forecast), weather.RainTotals, site);

    /// <summary>On a grid.</summary>
    /// <param name="forecast">Only where nothing was observed.</param>
    public static KnownHours On(
        HourGrid grid, IReadOnlyList<WeatherReading> observed, IReadOnlyList<WeatherReading> forecast, IReadOnlyList<RainTotal> rainTotals, Site site) => new(
        HourlySeries.On(grid, observed, rainTotals, site.PressurePa),
        HourlySeries.On(grid, [.. forecast, .. observed], rainTotals, site.PressurePa));

    /// <summary>At an instant; water on the leaf is left to the caller.</summary>
    public ReviewHour At(int hour, DateTimeOffset now, ReviewValue surfaceWaterKgPerKg)
    {
        DateTimeOffset time = Grid.InstantOf(hour);
        AirState? air = withForecast.AirAt(time);
        ReviewValue Of(double? value) => value is double known
            ? ReviewValue.Known(known, Air(hour))
            : ReviewValue.Unknown(WhyUnknown.NeitherObservedNorForecast);
        return new(
            time,
            time > now,
            Known(withForecast.DryBulbC[hour], Temperature(hour)),
            Of(air?.DewPointC),
            Of(air?.WetBulbC),
            Of(air?.HygrometricDifferenceK),
            withForecast.RainMm(hour) is double rainMm ? ReviewValue.Known(rainMm, Rain(hour)) : ReviewValue.Unknown(WhyUnknown.NeitherObservedNorForecast),
            Known(withForecast.WindMPerS[hour], Wind(hour)),
            surfaceWaterKgPerKg);
    }

    public ValueStanding Of(WeatherQuantity quantity, int hour) => quantity switch
    {
        WeatherQuantity.Temperature => Temperature(hour),
        WeatherQuantity.Humidity => Humidity(hour),
        WeatherQuantity.Rain => Rain(hour),
        _ => Wind(hour),
    };

    /// <summary>Temperature and humidity together.</summary>
    public ValueStanding Air(int hour) => (ValueStanding)Math.Max((int)Temperature(hour), (int)Humidity(hour));

    /// <summary>The least sure of air and rain over so many hours up to an instant, holes counted as guessed.</summary>
    public ValueStanding LeastSure(int hour, int hours)
    {
        ValueStanding least = ValueStanding.Observed;
        for (int past = Math.Max(hour - hours, 0) + 1; past <= hour; past++)
        {
            foreach (ValueStanding standing in (ValueStanding[])[Air(past), Rain(past)])
            {
                ValueStanding counted = standing == ValueStanding.Unknown ? ValueStanding.Filled : standing;
                least = counted > least ? counted : least;
            }
        }

        return least;
    }

    public ValueStanding Rain(int hour)
    {
        if (observed.RainMm(hour) is not null)
        {
            return observed.Rain.StatedShare(hour) > observed.Rain.Known[hour] / 2 ? ValueStanding.Filled : ValueStanding.Observed;
        }

        return withForecast.RainMm(hour) is null ? ValueStanding.Unknown : ValueStanding.Forecast;
    }

    private ValueStanding Temperature(int hour) =>
        Standing(observed.DryBulbObserved[hour], withForecast.DryBulbObserved[hour], observed.DryBulbC[hour], withForecast.DryBulbC[hour]);

    private ValueStanding Humidity(int hour) =>
        Standing(observed.HumidityObserved[hour], withForecast.HumidityObserved[hour], observed.HumidityRatio[hour], withForecast.HumidityRatio[hour]);

    private ValueStanding Wind(int hour) =>
        Standing(observed.WindObserved[hour], withForecast.WindObserved[hour], observed.WindMPerS[hour], withForecast.WindMPerS[hour]);

    /// <summary>A line drawn between readings gives way to a forecast of the hour between them, as in the estimate.</summary>
    private static ValueStanding Standing(bool isObserved, bool isForecast, double observed, double withForecast) =>
        isObserved ? ValueStanding.Observed
        : !isForecast && !double.IsNaN(observed) ? ValueStanding.Filled
        : double.IsNaN(withForecast) ? ValueStanding.Unknown
        : ValueStanding.Forecast;

    private static ReviewValue Known(double value, ValueStanding standing) =>
        double.IsNaN(value) ? ReviewValue.Unknown(WhyUnknown.NeitherObservedNorForecast) : ReviewValue.Known(value, standing);
}
