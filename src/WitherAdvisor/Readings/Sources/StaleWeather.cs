using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Readings.Sources;

/// <summary>Says where the weather before loading is old, or foretold and not read.</summary>
internal static class StaleWeather
{
    /// <summary>Readings this old, h, still tell of loading: no longer gap is drawn across either.</summary>
    public const double OldH = InstantValues.LongestGapH;

    /// <summary>The readings that together tell most: the air by its two bulbs, and rain.</summary>
    public const string WhatHelpsMost =
        "Dry bulb and wet bulb read now, and whether it has rained since, would help most.";

    /// <summary>What has to be said; nothing where all was read.</summary>
    /// <param name="readings">As given; those after loading do not count.</param>
    /// <param name="foretold">What was taken where nothing was read, up to loading.</param>
    public static IEnumerable<Assumption> Of(
        IReadOnlyList<WeatherReading> readings, IReadOnlyList<WeatherReading> foretold, DateTimeOffset loadedAt)
    {
        DateTimeOffset? newest = NewestRead(readings, loadedAt);
        bool stale = newest is null || (loadedAt - newest.Value).TotalHours > OldH;
        if (stale)
        {
            yield return Stale(newest, Hours(foretold, reading => IsWeather(reading) && !(reading.Time <= newest)), loadedAt);
        }

        // What stands in for the stale end is said above.
        List<WeatherReading> between = [.. foretold.Where(reading => !stale || reading.Time <= newest)];
        string counts = string.Join(", ", Counts(between));
        if (counts.Length > 0)
        {
            yield return new("foretold_taken",
                $"Before loading, what was foretold was taken where nothing was read: {counts}.");
        }
    }

    /// <summary>When temperature, humidity or rain was last read, up to a time; null where never.</summary>
    public static DateTimeOffset? NewestRead(IReadOnlyList<WeatherReading> readings, DateTimeOffset until)
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
        reading.DryBulbC is not null || reading.RainMm is not null || reading.TellsHumidity;

    private static int Hours(IReadOnlyList<WeatherReading> readings, Func<WeatherReading, bool> tells) =>
        readings.Where(tells).Select(reading => reading.Time.UtcTicks / TimeSpan.TicksPerHour).Distinct().Count();

    private static Assumption Stale(DateTimeOffset? newest, int foretold, DateTimeOffset loadedAt)
    {
        string hours = newest is { } read ? $" in the {(loadedAt - read).TotalHours:0.#} h" : "";
        string instead = foretold > 0
            ? $"what was foretold was taken for {foretold} of those hours"
            : "nothing was foretold for those hours either";
        return new("weather_stale", $"Nothing was read{hours} before loading: {instead}. {WhatHelpsMost}");
    }

    private static IEnumerable<string> Counts(List<WeatherReading> foretold)
    {
        (string Name, int Hours)[] counts =
        [
            ("temperature", Hours(foretold, reading => reading.DryBulbC is not null)),
            ("humidity", Hours(foretold, reading => reading.TellsHumidity)),
            ("rain", Hours(foretold, reading => reading.RainMm is not null)),
            ("wind", Hours(foretold, reading => reading.WindMPerS is not null)),
            ("radiation", Hours(foretold, reading => reading.ShortwaveWPerM2 is not null)),
        ];
        return counts.Where(value => value.Hours > 0).Select(value => $"{value.Name} {value.Hours} h");
    }
}
