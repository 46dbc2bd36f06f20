namespace WitherAdvisor.Readings.Hourly;

/// <summary>
/// Whole hours of UTC. Instant 0 is the start; hour i, from 1 to <paramref name="Hours"/>, is the hour that ends at
/// instant i.
/// </summary>
/// <param name="FirstHour">Whole hours from the beginning of year 1 (UTC) to instant 0.</param>
/// <param name="Hours">How many.</param>
public readonly record struct HourGrid(long FirstHour, int Hours)
{
    /// <summary>Longest stretch, hours: a year and a bit.</summary>
    public const int MostHours = 400 * 24;

    private static readonly long LastHourOfCalendar = DateTimeOffset.MaxValue.UtcTicks / TimeSpan.TicksPerHour;

    /// <summary>Start of the grid.</summary>
    public DateTimeOffset Start => InstantOf(0);

    /// <summary>The least grid that holds a stretch of time; its start is moved up where it would be too long.</summary>
    public static HourGrid Around(DateTimeOffset from, DateTimeOffset to)
    {
        long last = HourAtOrAfter(to);
        long first = Math.Min(from.UtcTicks / TimeSpan.TicksPerHour, last);
        return EndingAt(last, (int)Math.Min(last - first, MostHours));
    }

    /// <summary>So many hours that end at the whole hour at or after an instant.</summary>
    public static HourGrid EndingAtOrAfter(DateTimeOffset to, int hours) => EndingAt(HourAtOrAfter(to), hours);

    /// <summary>The time of an instant on the grid, held within the calendar.</summary>
    public DateTimeOffset InstantOf(int hour) =>
        new(Math.Clamp(FirstHour + hour, 0, LastHourOfCalendar) * TimeSpan.TicksPerHour, TimeSpan.Zero);

    /// <summary>Where a time falls, hours after instant 0; below 0 before it.</summary>
    public double PositionOf(DateTimeOffset time) =>
        (time.UtcTicks - FirstHour * TimeSpan.TicksPerHour) / (double)TimeSpan.TicksPerHour;

    private static HourGrid EndingAt(long lastHour, int hours) => new(lastHour - hours, hours);

    private static long HourAtOrAfter(DateTimeOffset to) =>
        (to.UtcTicks + TimeSpan.TicksPerHour - 1) / TimeSpan.TicksPerHour;
}
