using WitherAdvisor.Air;
using WitherAdvisor.Readings;

namespace WitherAdvisor.PlanSweep;

/// <summary>A made-up day that comes again and again: warmest at two in the afternoon, its water vapour as at dawn.</summary>
public sealed record Climate(string Name, double ElevationM, double LowC, double HighC, double HumidityAtDawn)
{
    public static IReadOnlyList<Climate> All { get; } =
    [
        new("coast, humid", 10, 25, 31, 0.95),
        new("plains, hot and dry", 120, 24, 39, 0.55),
        new("plains, rains", 120, 24, 30, 0.98),
        new("mid country", 600, 20, 28, 0.92),
        new("hills, ordinary", 1_200, 16, 23, 0.92),
        new("hills, dry wind", 1_500, 13, 24, 0.55),
        new("high, rain", 1_800, 13, 17, 0.99),
        new("high, cold and dry", 2_200, 5, 18, 0.60),
    ];

    public WeatherReading At(DateTimeOffset time)
    {
        const double WarmestHour = 14;
        const double HoursADay = 24;
        double swing = (1 + Math.Cos((time.TimeOfDay.TotalHours - WarmestHour) / HoursADay * 2 * Math.PI)) / 2;
        double dryBulbC = LowC + swing * (HighC - LowC);
        AirState dawn = AirState.FromRelativeHumidity(LowC, HumidityAtDawn, StandardAtmosphere.PressurePa(ElevationM));
        return new(time, DryBulbC: dryBulbC, DewPointC: Math.Min(dawn.DewPointC, dryBulbC), RainMm: 0, WindMPerS: 2);
    }
}
