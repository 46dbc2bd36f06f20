namespace WitherAdvisor.Readings.Sources;

/// <summary>The last air that was read at the site, and what others say of that time.</summary>
internal static class LastObserved
{
    /// <summary>The air that others have for the times just before and just after it; nothing where it was never read.</summary>
    /// <param name="instants">By time, each with its rows best first.</param>
    public static IReadOnlyList<WeatherReading> Beside(List<List<SourcedReading>> instants)
    {
        int last = instants.FindLastIndex(rows => rows.Exists(row => row.Source == WeatherSource.Observed && HasAir(row.Reading)));
        return last < 0
            ? []
            : [.. new[] { First(Enumerable.Reverse(instants.Take(last + 1))), First(instants.Skip(last + 1)) }.OfType<SourcedReading>().Select(AirOf)];

        SourcedReading? First(IEnumerable<List<SourcedReading>> from) =>
            from.Select(rows => rows.Find(row => row.Source != WeatherSource.Observed && HasAir(row.Reading))).FirstOrDefault(row => row is not null);
    }

    private static bool HasAir(WeatherReading reading) => reading.DryBulbC is not null && reading.HasHumidity;

    private static WeatherReading AirOf(SourcedReading row) => new(
        row.Reading.Time, row.Reading.DryBulbC, row.Reading.DewPointC, row.Reading.WetBulbC, row.Reading.RelativeHumidity,
        StationPressurePa: row.Reading.StationPressurePa, Instrument: row.Reading.Instrument);
}
