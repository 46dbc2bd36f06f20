namespace WitherAdvisor.Readings.Sources;

/// <summary>Weather of many sources made one.</summary>
/// <param name="Readings">By time, one an instant; instants of which nothing is known are absent.</param>
/// <param name="RainTotals">As given, each with what a feed tells of when it fell.</param>
/// <param name="BesideLastObserved">
/// The air that sources other than the site's own have for the times just before and just after the last observed air: what a
/// forecast misses there it goes on missing.
/// </param>
/// <remarks>
/// An instant with some values read and others only forecast stands in both lists: its read values in
/// <see cref="Weather"/>, the others in <see cref="Forecast"/>. What is forecast completes, but never passes as read.
/// </remarks>
public sealed record ComposedWeather(
    IReadOnlyList<ComposedReading> Readings, IReadOnlyList<RainTotal> RainTotals, IReadOnlyList<WeatherReading> BesideLastObserved)
{
    /// <summary>What was observed or analysed, by time.</summary>
    public IReadOnlyList<WeatherReading> Weather { get; } = [.. Readings.Select(reading => reading.Observed).OfType<WeatherReading>()];

    /// <summary>What is only forecast, by time; of hours gone by too, where nobody read them.</summary>
    public IReadOnlyList<WeatherReading> Forecast { get; } = [.. Readings.Select(reading => reading.Forecast).OfType<WeatherReading>()];

    /// <summary>The same with what is forecast beside the last observed air, though that hour was read: an advice compares the two.</summary>
    public IReadOnlyList<WeatherReading> ForecastToCompare =>
        [.. BesideLastObserved.ExceptBy(Forecast.Select(reading => reading.Time), reading => reading.Time).Concat(Forecast).OrderBy(reading => reading.Time)];
}
