namespace WitherAdvisor.Readings.Sources;

/// <summary>The times at which one value was read.</summary>
internal sealed class ObservedTimes
{
    private readonly List<long> ticks;

    private ObservedTimes(List<long> ticks) => this.ticks = ticks;

    public static ObservedTimes Of(IReadOnlyList<WeatherReading> readings, Func<WeatherReading, bool> tells)
    {
        List<long> times = [.. readings.Where(tells).Select(reading => reading.Time.UtcTicks)];
        times.Sort();
        return new(times);
    }

    /// <summary>
    /// Whether the value was read less than an hour from a time. A report of 09:53 is the report of 10:00, and rain of
    /// the hour before either is largely the same rain.
    /// </summary>
    public bool AnyNear(DateTimeOffset time)
    {
        int at = ticks.BinarySearch(time.UtcTicks);
        int above = at >= 0 ? at : ~at;
        return (above < ticks.Count && ticks[above] - time.UtcTicks < TimeSpan.TicksPerHour)
            || (above > 0 && time.UtcTicks - ticks[above - 1] < TimeSpan.TicksPerHour);
    }
}
