namespace WitherAdvisor.Readings.Sources;

/// <summary>Makes one series of what many sources say of the same weather.</summary>
public static class WeatherComposition
{
    /// <summary>
    /// The best of each instant, value by value: from the best source that knows the value (in the order of
    /// <see cref="WeatherSource"/>), and within one source as saved last.
    /// </summary>
    /// <param name="readings">In any order. Of two of one source saved at once, the later in the list counts.</param>
    /// <param name="rainTotals">
    /// Rain read off a gauge: of its hours only observed rain is taken, so that a feed does not talk over the gauge. How the
    /// rain lay within those hours the feed may tell.
    /// </param>
    /// <remarks>
    /// The three humidities are one value. Told only as wet bulb or relative humidity it is taken only with the dry bulb
    /// of the same reading: 80 % at 20 °C is not 80 % at 18 °C. A dew point above another reading's dry bulb means
    /// saturated air.
    /// </remarks>
    public static ComposedWeather Of(IReadOnlyList<SourcedReading> readings, IReadOnlyList<RainTotal> rainTotals)
    {
        List<List<SourcedReading>> instants =
        [
            .. readings.Reverse()
                .GroupBy(row => row.Reading.Time.UtcTicks)
                .OrderBy(instant => instant.Key)
                .Select(instant => instant.OrderBy(row => row.Source).ThenByDescending(row => row.SavedAt).ToList()),
        ];
        RainPattern pattern = RainPattern.Of(rainTotals.Count > 0 ? instants : []);
        return new(
            [.. instants.Select(bestFirst => Compose(bestFirst, rainTotals)).Where(reading => reading.Best.TellsAnything)],
            [.. rainTotals.Select(pattern.On)],
            LastObserved.Beside(instants));
    }

    private static ComposedReading Compose(List<SourcedReading> bestFirst, IReadOnlyList<RainTotal> rainTotals)
    {
        DateTimeOffset time = bestFirst[0].Reading.Time;
        bool gauged = GaugedRain.Tells(rainTotals, time);
        SourcedReading? dryBulb = bestFirst.Find(row => row.Reading.DryBulbC is not null);
        SourcedReading? humidity = bestFirst.Find(row => row.Reading.DewPointC is not null
            || (row.Reading.HasHumidity && (dryBulb is null || ReferenceEquals(row, dryBulb))));
        SourcedReading? rain = bestFirst.Find(row => row.Reading.RainMm is not null && (row.Source == WeatherSource.Observed || !gauged));
        SourcedReading? wind = bestFirst.Find(row => row.Reading.WindMPerS is not null);
        SourcedReading? pressure = bestFirst.Find(row => row.Reading.StationPressurePa is not null);
        SourcedReading? shortwave = bestFirst.Find(row => row.Reading.ShortwaveWPerM2 is not null);
        WeatherReading best = HumidityBeside(dryBulb?.Reading, humidity?.Reading) with
        {
            Time = time,
            DryBulbC = dryBulb?.Reading.DryBulbC,
            RainMm = rain?.Reading.RainMm,
            WindMPerS = wind?.Reading.WindMPerS,
            StationPressurePa = pressure?.Reading.StationPressurePa,
            ShortwaveWPerM2 = shortwave?.Reading.ShortwaveWPerM2,
        };
        return new(best, new(Origin(dryBulb), Origin(humidity), Origin(rain), Origin(wind), Origin(pressure), Origin(shortwave)));
    }

    /// <summary>The three humidities of a reading, as they hold beside the dry bulb of another.</summary>
    private static WeatherReading HumidityBeside(WeatherReading? dryBulb, WeatherReading? humidity) =>
        humidity is null ? new(default)
        : dryBulb is null || ReferenceEquals(dryBulb, humidity) ? humidity
        : new(default, DewPointC: Math.Min(humidity.DewPointC!.Value, dryBulb.DryBulbC!.Value));

    private static ValueOrigin? Origin(SourcedReading? row) => row is null ? null : new(row.Source, row.Feed, row.SavedAt);
}
