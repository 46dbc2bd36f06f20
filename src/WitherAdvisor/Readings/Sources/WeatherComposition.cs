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
    /// rain lay within those hours the feed may tell. So it is where rain was observed less than an hour away.
    /// </param>
    /// <remarks>
    /// The three humidities are one value. Told only as wet bulb or relative humidity it is taken only with the dry bulb
    /// of the same reading: 80 % at 20 °C is not 80 % at 18 °C. A dew point above another reading's dry bulb means
    /// saturated air. Weather code and visibility are taken beside the dry bulb.
    /// </remarks>
    public static ComposedWeather Of(IReadOnlyList<SourcedReading> readings, IReadOnlyList<RainTotal> rainTotals)
    {
        IReadOnlyList<SourcedReading> rows = RainOfSources.Stated(readings);
        List<List<SourcedReading>> instants =
        [
            .. rows.Reverse()
                .GroupBy(row => row.Reading.Time.UtcTicks)
                .OrderBy(instant => instant.Key)
                .Select(instant => instant.OrderBy(row => row.Source).ThenByDescending(row => row.SavedAt).ToList()),
        ];
        RainOfSources observed = RainOfSources.Observed(rows, rainTotals);
        RainPattern pattern = RainPattern.Of(rainTotals.Count > 0 ? instants : []);
        return new(
            [.. instants.Select(bestFirst => Compose(bestFirst, observed)).Where(reading => reading.Best.TellsAnything)],
            [.. rainTotals.Select(pattern.On)],
            LastObserved.Beside(instants));
    }

    private static ComposedReading Compose(List<SourcedReading> bestFirst, RainOfSources observed)
    {
        DateTimeOffset time = bestFirst[0].Reading.Time;
        bool gauged = observed.Tells(time);
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
            RainMinutes = rain?.Reading.RainMinutes,
            RainMinutesFrom = rain?.Reading.RainMinutesFrom,
            WindMPerS = wind?.Reading.WindMPerS,
            StationPressurePa = pressure?.Reading.StationPressurePa,
            ShortwaveWPerM2 = shortwave?.Reading.ShortwaveWPerM2,
            WeatherCode = dryBulb?.Reading.WeatherCode,
            VisibilityM = dryBulb?.Reading.VisibilityM,
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
