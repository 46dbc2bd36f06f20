namespace WitherAdvisor.Weather;

/// <summary>What a reading tells at all.</summary>
internal static class Told
{
    /// <summary>The humidity, in one of its three ways.</summary>
    public static bool Humidity(WeatherReading reading) =>
        (reading.DewPointC ?? reading.WetBulbC ?? reading.RelativeHumidity) is not null;

    /// <summary>
    /// The humidity without the reading's own dry bulb. Wet bulb and relative humidity mean something only beside the
    /// dry bulb they were taken with: 80 % at 20 °C is not 80 % at 18 °C.
    /// </summary>
    public static bool HumidityByItself(WeatherReading reading) => reading.DewPointC is not null;

    /// <summary>Any value.</summary>
    public static bool Anything(WeatherReading reading) => Humidity(reading)
        || (reading.DryBulbC ?? reading.RainMm ?? reading.WindMPerS ?? reading.StationPressurePa ?? reading.ShortwaveWPerM2) is not null;
}
