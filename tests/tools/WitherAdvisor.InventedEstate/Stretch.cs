namespace WitherAdvisor.InventedEstate;

/// <summary>A stretch of invented weather, and the rain of the weeks before it as a gauge read once a day tells it.</summary>
/// <param name="Hours">Hourly readings, without a gap.</param>
/// <param name="RainOfDaysBefore">Rain by day, mm, oldest first; the last day ends where the hourly readings begin.</param>
public sealed record Stretch(IReadOnlyList<HourOfWeather> Hours, IReadOnlyList<double> RainOfDaysBefore)
{
    /// <summary>The hour of the day at which the gauge is read.</summary>
    public const int GaugeHour = 8;

    /// <summary>Days of rain stated before the readings.</summary>
    public const int DaysBefore = 60;

    /// <summary>Readings after one time, up to another.</summary>
    public IEnumerable<HourOfWeather> Between(DateTimeOffset after, DateTimeOffset upTo) =>
        Hours.Where(hour => hour.Time > after && hour.Time <= upTo);
}
