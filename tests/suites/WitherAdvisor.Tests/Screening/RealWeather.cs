using System.Globalization;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Tests.Screening;

/// <summary>Real weather of fixtures/ as readings.</summary>
internal static class RealWeather
{
    private const double WarmestHour = 15;

    public static readonly Site Seattle = new(120, 47.4, -122.3, Site.UsualHotAirC, WitherStyle.Short);
    public static readonly Site Jfk = new(4, 40.64, -73.78, Site.UsualHotAirC, WitherStyle.Short);
    private static readonly Site Ewr = new(5, 40.69, -74.17, Site.UsualHotAirC, WitherStyle.Short);
    private static readonly Site Lga = new(7, 40.78, -73.87, Site.UsualHotAirC, WitherStyle.Short);
    private static readonly TimeSpan SeattleOffset = TimeSpan.FromHours(-8);

    /// <summary>Each series with its place and the years that it spans.</summary>
    public static IEnumerable<(string Name, Site Site, double Years, IReadOnlyList<WeatherReading> Readings)> All =>
    [
        ("airport EWR, 2013, hourly", Ewr, 1, Airport("EWR")),
        ("airport JFK, 2013, hourly", Jfk, 1, Airport("JFK")),
        ("airport LGA, 2013, hourly", Lga, 1, Airport("LGA")),
        ("Seattle, 2012 to 2015, hours made of days", Seattle, 4, SeattleHours()),
    ];

    public static IReadOnlyList<WeatherReading> Airport(string station) =>
    [
        .. ReferenceRow.ReadAll("airports/airports-2013.csv").Where(row => row.Text("station") == station).Select(row => new WeatherReading(
            DateTimeOffset.Parse(row.Text("time"), CultureInfo.InvariantCulture), Number(row, "dry_bulb_c"), Number(row, "dew_point_c"),
            RainMm: Number(row, "rain_mm"), WindMPerS: Number(row, "wind_m_per_s"))),
    ];

    private static double? Number(ReferenceRow row, string column) => row.Text(column).Length == 0 ? null : row.Number(column);

    /// <summary>Temperature between its extremes, the dew point of the lowest, a day's rain in its wettest-looking form: evenly over six hours.</summary>
    private static List<WeatherReading> SeattleHours() =>
    [
        .. ReferenceRow.ReadAll("seattle/seattle-weather.csv").SelectMany(day => Enumerable.Range(1, 24).Select(hour => new WeatherReading(
            new DateTimeOffset(DateTime.ParseExact(day.Text("date"), "yyyy-MM-dd", CultureInfo.InvariantCulture), SeattleOffset).AddHours(hour),
            Mean(day) + Swing(day) * Math.Cos((hour - WarmestHour) * Math.PI / 12),
            DewPointC: day.Number("temp_min"),
            RainMm: hour is > 12 and <= 18 ? day.Number("precipitation") / 6 : 0,
            WindMPerS: day.Number("wind")))),
    ];

    private static double Mean(ReferenceRow day) => (day.Number("temp_max") + day.Number("temp_min")) / 2;

    private static double Swing(ReferenceRow day) => (day.Number("temp_max") - day.Number("temp_min")) / 2;
}
