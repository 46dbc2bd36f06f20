namespace WitherAdvisor.Readings.Sources;

/// <summary>The best that is known of one instant, value by value.</summary>
/// <param name="Best">Every known value.</param>
/// <param name="Origins">Where each is from.</param>
public sealed record ComposedReading(WeatherReading Best, ReadingOrigins Origins)
{
    /// <summary>Only what was observed or analysed; null where nothing was.</summary>
    public WeatherReading? Observed => Only(forecast: false);

    /// <summary>Only what is forecast and neither observed nor analysed; null where nothing is.</summary>
    public WeatherReading? Forecast => Only(forecast: true);

    private WeatherReading? Only(bool forecast)
    {
        bool Is(ValueOrigin? origin) => origin?.IsForecast == forecast;
        WeatherReading reading = new(
            Best.Time,
            Is(Origins.DryBulb) ? Best.DryBulbC : null,
            Is(Origins.Humidity) ? Best.DewPointC : null,
            Is(Origins.Humidity) ? Best.WetBulbC : null,
            Is(Origins.Humidity) ? Best.RelativeHumidity : null,
            Is(Origins.Rain) ? Best.RainMm : null,
            Is(Origins.Wind) ? Best.WindMPerS : null,
            Is(Origins.StationPressure) ? Best.StationPressurePa : null,
            Is(Origins.Shortwave) ? Best.ShortwaveWPerM2 : null,
            Is(Origins.Humidity) ? Best.Instrument : null,
            Is(Origins.Rain) ? Best.RainMinutes : null,
            Is(Origins.Rain) ? Best.RainMinutesFrom : null,
            Is(Origins.DryBulb) ? Best.WeatherCode : null,
            Is(Origins.DryBulb) ? Best.VisibilityM : null);
        return reading.TellsAnything ? reading : null;
    }
}
