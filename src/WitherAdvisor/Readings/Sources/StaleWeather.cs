using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Readings.Sources;

/// <summary>Says where the weather before loading is old, or forecast and not read.</summary>
internal static class StaleWeather
{
    /// <summary>Readings this old, h, still tell of loading: no longer gap is drawn across either.</summary>
    public const double OldH = InstantValues.LongestGapH;

    private static readonly Assumption.ForecastUsed NothingTaken = new(0, 0, 0, 0, 0);

    /// <summary>What has to be said; nothing where all was read.</summary>
    /// <param name="readings">As given; those after loading do not count.</param>
    /// <param name="forecast">What was taken where nothing was read, up to loading.</param>
    public static IEnumerable<Assumption> Of(
        IReadOnlyList<WeatherReading> readings, IReadOnlyList<WeatherReading> forecast, DateTimeOffset loadedAt)
    {
        DateTimeOffset? newest = NewestObserved(readings, loadedAt);
        bool stale = newest is null || (loadedAt - newest.Value).TotalHours > OldH;
        if (stale)
        {
            yield return Stale(newest, Hours(forecast, reading => IsWeather(reading) && !(reading.Time <= newest)), loadedAt);
        }

        // What stands in for the stale end is said above.
        List<WeatherReading> between = [.. forecast.Where(reading => !stale || reading.Time <= newest)];
        Assumption.ForecastUsed taken = Taken(between);
        if (taken != NothingTaken)
        {
            yield return taken;
        }
    }

    /// <summary>When temperature, humidity or rain was last read, up to a time; null where never.</summary>
    public static DateTimeOffset? NewestObserved(IReadOnlyList<WeatherReading> readings, DateTimeOffset until)
    {
        DateTimeOffset? newest = null;
        foreach (WeatherReading reading in readings.Where(reading => reading.Time <= until && !(reading.Time <= newest)))
        {
            newest = IsWeather(ScreenedReading.Of(reading)) ? reading.Time : newest;
        }

        return newest;
    }

    /// <summary>Wind or pressure alone says nothing of what befell the leaf.</summary>
    private static bool IsWeather(WeatherReading reading) =>
        reading.DryBulbC is not null || reading.RainMm is not null || reading.HasHumidity;

    private static int Hours(IReadOnlyList<WeatherReading> readings, Func<WeatherReading, bool> tells) =>
        readings.Where(tells).Select(reading => reading.Time.UtcTicks / TimeSpan.TicksPerHour).Distinct().Count();

    private static Assumption.WeatherStale Stale(DateTimeOffset? newest, int forecast, DateTimeOffset loadedAt) =>
        new(newest is { } read ? (loadedAt - read).TotalHours : null, forecast);

    private static Assumption.ForecastUsed Taken(List<WeatherReading> forecast) => new(
        Hours(forecast, reading => reading.DryBulbC is not null),
        Hours(forecast, reading => reading.HasHumidity),
        Hours(forecast, reading => reading.RainMm is not null),
        Hours(forecast, reading => reading.WindMPerS is not null),
        Hours(forecast, reading => reading.ShortwaveWPerM2 is not null));
}
