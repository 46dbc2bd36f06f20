using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Tests.LeafAtLoading;

/// <summary>Invented hourly weather of a hill at 75° E, where solar time is UTC + 5 h, for tests that ask what the sky does to leaf.</summary>
public sealed record InventedDays
{
    /// <summary>Site time.</summary>
    public static readonly TimeSpan Offset = TimeSpan.FromHours(5);

    public static readonly Site Site = new(1500, 7, 75, Site.UsualHotAirC, WitherStyle.Short);

    /// <summary>Midnight (site time) that the last day begins with.</summary>
    public static readonly DateTimeOffset LastMidnight = new(2026, 3, 10, 0, 0, 0, Offset);

    public double MeanC { get; init; } = 19;

    /// <summary>Half of the day's range, K.</summary>
    public double SwingK { get; init; } = 4.5;

    public double DewPointC { get; init; } = 14.5;

    public double WindMPerS { get; init; } = 2;

    /// <summary>Share of a plain sine of 1,000 W/m² at noon that is measured; null where radiation is not measured.</summary>
    public double? Light { get; init; }

    public static InventedDays Ordinary { get; } = new();

    public static InventedDays Wet { get; } = new() { MeanC = 16, SwingK = 1.5, DewPointC = 15 };

    public static InventedDays DryWindy { get; } = new() { MeanC = 20, SwingK = 5, DewPointC = 8, WindMPerS = 5 };

    /// <summary>A time of the last day, hours after its midnight; below 0 on the day before.</summary>
    public static DateTimeOffset At(double hour) => LastMidnight.AddHours(hour);

    /// <summary>Leaf plucked between two hours of the last day and loaded when plucking ends.</summary>
    public static PluckedLeaf Plucked(double fromHour, double toHour) => new(At(fromHour), At(toHour), At(toHour));

    /// <summary>A reading each hour from so many days before the last midnight to the end of the last day.</summary>
    /// <param name="rainMm">Rain of the hour that ends so many hours after the last midnight; null where unknown.</param>
    public IReadOnlyList<WeatherReading> Hours(int days, Func<int, double?> rainMm) =>
        [.. Between(-24 * days, 24, rainMm)];

    /// <summary>A reading each hour between two hours of the last day, both included; below 0 on days before.</summary>
    public IEnumerable<WeatherReading> Between(int from, int to, Func<int, double?> rainMm) =>
        Enumerable.Range(from, to - from + 1).Select(hour => Reading(hour, rainMm(hour)));

    public IReadOnlyList<WeatherReading> DryHours(int days) => Hours(days, _ => 0);

    private WeatherReading Reading(int hour, double? rainMm)
    {
        double dryBulbC = MeanC + SwingK * Math.Cos((hour - 14) * Math.PI / 12);
        double sun = Math.Max(-Math.Cos((hour - 0.5) * Math.PI / 12), 0);
        return new(
            At(hour), dryBulbC, Math.Min(DewPointC, dryBulbC), RainMm: rainMm, WindMPerS: WindMPerS, ShortwaveWPerM2: 1000 * sun * Light);
    }
}
