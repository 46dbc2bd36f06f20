
namespace WitherAdvisor.Readings.Sources;

/// <summary>What was foretold, without the values that somebody read.</summary>
internal static class GapFilling
{
    /// <summary>
    /// Value by value: what was read less than an hour away is left out, and so is rain that a gauge tells of.
    /// Readings of which nothing remains are absent.
    /// </summary>
    public static IReadOnlyList<WeatherReading> Of(
        IReadOnlyList<WeatherReading> readings, IReadOnlyList<RainTotal> rainTotals, IReadOnlyList<WeatherReading> forecast)
    {
        if (forecast.Count == 0)
        {
            return forecast;
        }

        List<WeatherReading> read = [.. readings.Select(ScreenedReading.Of)];
        ReadTimes dryBulb = ReadTimes.Of(read, reading => reading.DryBulbC is not null);
        ReadTimes humidity = ReadTimes.Of(read, reading => reading.TellsHumidity);
        ReadTimes rain = ReadTimes.Of(read, reading => reading.RainMm is not null);
        ReadTimes wind = ReadTimes.Of(read, reading => reading.WindMPerS is not null);
        ReadTimes pressure = ReadTimes.Of(read, reading => reading.StationPressurePa is not null);
        ReadTimes shortwave = ReadTimes.Of(read, reading => reading.ShortwaveWPerM2 is not null);
        return
        [
            .. forecast.Select(foretold => Unread(foretold) with
            {
                RainMm = rain.AnyNear(foretold.Time) || GaugedRain.Tells(rainTotals, foretold.Time) ? null : foretold.RainMm,
                WindMPerS = wind.AnyNear(foretold.Time) ? null : foretold.WindMPerS,
                StationPressurePa = pressure.AnyNear(foretold.Time) ? null : foretold.StationPressurePa,
                ShortwaveWPerM2 = shortwave.AnyNear(foretold.Time) ? null : foretold.ShortwaveWPerM2,
            }).Where(reading => reading.TellsAnything),
        ];

        WeatherReading Unread(WeatherReading foretold)
        {
            bool withDryBulb = !dryBulb.AnyNear(foretold.Time);
            bool withHumidity = !humidity.AnyNear(foretold.Time);
            return foretold with
            {
                DryBulbC = withDryBulb ? foretold.DryBulbC : null,
                DewPointC = withHumidity ? foretold.DewPointC : null,
                WetBulbC = withHumidity && withDryBulb ? foretold.WetBulbC : null,
                RelativeHumidity = withHumidity && withDryBulb ? foretold.RelativeHumidity : null,
                Instrument = withHumidity && withDryBulb ? foretold.Instrument : null,
            };
        }
    }
}
