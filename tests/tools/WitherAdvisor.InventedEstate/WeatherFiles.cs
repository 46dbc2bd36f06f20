using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace WitherAdvisor.InventedEstate;

/// <summary>Weather as the service reads it.</summary>
public static class WeatherFiles
{
    private const string Header = "time,dry_bulb_c,dew_point_c,rain_mm,wind_m_per_s,station_pressure_hpa,shortwave_w_per_m2\n";

    /// <summary>Hourly readings as CSV.</summary>
    public static string Csv(IEnumerable<HourOfWeather> hours)
    {
        StringBuilder csv = new(Header);
        foreach (HourOfWeather hour in hours)
        {
            csv.Append(CultureInfo.InvariantCulture,
                $"{Instants.Text(hour.Time)},{hour.DryBulbC:0.0},{hour.DewPointC:0.0},{hour.RainMm:0.0},{hour.WindMPerS:0.0},{hour.StationPressureHpa:0.0},{hour.ShortwaveWPerM2:0}\n");
        }

        return csv.ToString();
    }

    /// <summary>Rain by day, stated by hand, up to the first reading.</summary>
    public static JsonArray RainTotals(Stretch stretch)
    {
        DateTimeOffset end = stretch.Hours[0].Time.AddHours(-1);
        int days = stretch.RainOfDaysBefore.Count;
        return [.. stretch.RainOfDaysBefore.Select((rainMm, day) => new JsonObject
        {
            ["from"] = Instants.Text(end.AddDays(day - days)),
            ["to"] = Instants.Text(end.AddDays(day - days + 1)),
            ["rain_mm"] = rainMm,
        })];
    }
}
