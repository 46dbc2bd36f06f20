
namespace WitherAdvisor.Readings.Sources;

/// <summary>What was forecast, without the values that somebody read.</summary>
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

        List<WeatherReading> observed = [.. readings.Select(ScreenedReading.Of)];
        ObservedTimes dryBulb = ObservedTimes.Of(observed, reading => reading.DryBulbC is not null);
        ObservedTimes humidity = ObservedTimes.Of(observed, reading => reading.HasHumidity);
        ObservedTimes rain = ObservedTimes.Of(observed, reading => reading.RainMm is not null);
        IReadOnlyList<RainTotal> totals = [.. rainTotals, .. RainSteps.LongTotals(observed)];
        ObservedTimes wind = ObservedTimes.Of(observed, reading => reading.WindMPerS is not null);
        ObservedTimes pressure = ObservedTimes.Of(observed, reading => reading.StationPressurePa is not null);
        ObservedTimes shortwave = ObservedTimes.Of(observed, reading => reading.ShortwaveWPerM2 is not null);
        return
        [
            .. forecast.Select(hour => Unobserved(hour) with
            {
                RainMm = rain.AnyNear(hour.Time) || GaugedRain.Tells(totals, hour.Time) ? null : hour.RainMm,
                WindMPerS = wind.AnyNear(hour.Time) ? null : hour.WindMPerS,
                StationPressurePa = pressure.AnyNear(hour.Time) ? null : hour.StationPressurePa,
                ShortwaveWPerM2 = shortwave.AnyNear(hour.Time) ? null : hour.ShortwaveWPerM2,
            }).Where(reading => reading.TellsAnything),
        ];

        WeatherReading Unobserved(WeatherReading hour)
        {
            bool withDryBulb = !dryBulb.AnyNear(hour.Time);
            bool withHumidity = !humidity.AnyNear(hour.Time);
            return hour with
            {
                DryBulbC = withDryBulb ? hour.DryBulbC : null,
                WeatherCode = withDryBulb ? hour.WeatherCode : null,
                VisibilityM = withDryBulb ? hour.VisibilityM : null,
                DewPointC = withHumidity ? hour.DewPointC : null,
                WetBulbC = withHumidity && withDryBulb ? hour.WetBulbC : null,
                RelativeHumidity = withHumidity && withDryBulb ? hour.RelativeHumidity : null,
                Instrument = withHumidity && withDryBulb ? hour.Instrument : null,
            };
        }
    }
}
