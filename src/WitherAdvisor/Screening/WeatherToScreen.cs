using WitherAdvisor.Air;
using WitherAdvisor.Evaporation;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Screening;

/// <summary>Weather as it came in, by time, for the rules that look for faults in it.</summary>
internal sealed class WeatherToScreen
{
    private const int MinutesInHour = 60;
    private const double HoursInDay = 24;

    private readonly Site site;

    private WeatherToScreen(Site site, IReadOnlyList<WeatherReading> readings)
    {
        this.site = site;
        Readings = readings;
    }

    /// <summary>By time, without values that no weather can have; rain of another time than the hour says so.</summary>
    public IReadOnlyList<WeatherReading> Readings { get; }

    public double UsualPressurePa => StandardAtmosphere.PressurePa(site.ElevationM);

    public double ElevationM => site.ElevationM;

    public static WeatherToScreen Of(Site site, IReadOnlyList<WeatherReading> readings) =>
        new(site, RainSteps.Stated([.. readings.Select(ScreenedReading.Of).OrderBy(reading => reading.Time)]));

    /// <summary>Length of a reading's rain, h.</summary>
    public static double RainH(WeatherReading reading) => (reading.RainMinutes ?? MinutesInHour) / MinutesInHour;

    /// <summary>Relative humidity of a reading, 0 to 1; null where unknown.</summary>
    public double? RelativeHumidity(WeatherReading reading)
    {
        if (reading.DryBulbC is not { } dryBulbC)
        {
            return null;
        }

        if (reading is { RelativeHumidity: { } told, DewPointC: null, WetBulbC: null })
        {
            return told;
        }

        double ratio = ScreenedReading.HumidityRatio(reading, site.PressurePa);
        return double.IsNaN(ratio) ? null : new AirState(dryBulbC, ratio, reading.StationPressurePa ?? site.PressurePa).RelativeHumidity;
    }

    /// <summary>Hour of the day by the sun, 0 to 24.</summary>
    public double SolarHour(DateTimeOffset time)
    {
        double angle = SunOf(time).HourAngleRad(time.UtcDateTime.TimeOfDay.TotalHours, site.LongitudeDeg);
        return HoursInDay / 2 + angle * HoursInDay / 2 / Math.PI;
    }

    /// <summary>A number that all times of one solar day share.</summary>
    public long SolarDayNumber(DateTimeOffset time) =>
        (long)Math.Floor(time.UtcTicks / (double)TimeSpan.TicksPerDay + site.LongitudeDeg / 360);

    private SolarDay SunOf(DateTimeOffset time) => SolarDay.Of(time.UtcDateTime.DayOfYear, site.LatitudeDeg);
}
