using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Review;

/// <summary>Each value of each hour with how it came to be known.</summary>
/// <param name="read">Only what was read.</param>
/// <param name="told">The same hours, with what was foretold where nobody read.</param>
internal sealed class KnownHours(HourlySeries read, HourlySeries told)
{
    public HourGrid Grid => told.Grid;

    /// <summary>Of weather made one, on a grid.</summary>
    public static KnownHours On(HourGrid grid, ComposedWeather weather, Site site)
    {
        IReadOnlyList<WeatherReading> foretold = GapFilling.Of(weather.Weather, weather.RainTotals, weather.Forecast);
        return new(
            HourlySeries.On(grid, weather.Weather, weather.RainTotals, site.PressurePa),
            HourlySeries.On(grid, [.. foretold, .. weather.Weather], weather.RainTotals, site.PressurePa));
    }

    /// <summary>At an instant; water on the leaf is left to the caller.</summary>
    public ReviewHour At(int hour, DateTimeOffset now, ReviewValue surfaceWaterKgPerKg)
    {
        DateTimeOffset time = Grid.InstantOf(hour);
        AirState? air = told.AirAt(time);
        ReviewValue Of(double? value) => value is double known ? ReviewValue.Known(known, Air(hour)) : ReviewValue.Unknown(WhyUnknown.Untold);
        return new(
            time,
            time > now,
            Known(told.DryBulbC[hour], Temperature(hour)),
            Of(air?.DewPointC),
            Of(air?.WetBulbC),
            Of(air?.HygrometricDifferenceK),
            told.RainMm(hour) is double rainMm ? ReviewValue.Known(rainMm, Rain(hour)) : ReviewValue.Unknown(WhyUnknown.Untold),
            Known(told.WindMPerS[hour], Wind(hour)),
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
        ValueStanding least = ValueStanding.Read;
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
        if (read.RainMm(hour) is not null)
        {
            return read.Rain.StatedShare(hour) > read.Rain.Known[hour] / 2 ? ValueStanding.Filled : ValueStanding.Read;
        }

        return told.RainMm(hour) is null ? ValueStanding.Unknown : ValueStanding.Foretold;
    }

    private ValueStanding Temperature(int hour) =>
        Standing(read.DryBulbRead[hour], told.DryBulbRead[hour], read.DryBulbC[hour], told.DryBulbC[hour]);

    private ValueStanding Humidity(int hour) =>
        Standing(read.HumidityRead[hour], told.HumidityRead[hour], read.HumidityRatio[hour], told.HumidityRatio[hour]);

    private ValueStanding Wind(int hour) =>
        Standing(read.WindRead[hour], told.WindRead[hour], read.WindMPerS[hour], told.WindMPerS[hour]);

    /// <summary>A line drawn between readings gives way to a forecast of the hour between them, as in the estimate.</summary>
    private static ValueStanding Standing(bool isRead, bool isTold, double read, double told) =>
        isRead ? ValueStanding.Read
        : !isTold && !double.IsNaN(read) ? ValueStanding.Filled
        : double.IsNaN(told) ? ValueStanding.Unknown
        : ValueStanding.Foretold;

    private static ReviewValue Known(double value, ValueStanding standing) =>
        double.IsNaN(value) ? ReviewValue.Unknown(WhyUnknown.Untold) : ReviewValue.Known(value, standing);
}
