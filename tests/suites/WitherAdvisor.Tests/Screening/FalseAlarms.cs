using System.Globalization;
using System.Text;
using WitherAdvisor.Readings;
using WitherAdvisor.Screening;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Tests.Screening;

/// <summary>What the rules say of real weather, looked over every day with the ninety days before it, as advice looks at it.</summary>
internal static class FalseAlarms
{
    private const int HistoryDays = 90;

    public static readonly IReadOnlyList<string> Codes =
    [
        "gauge_dry", "gauge_repeats", "rain_like_inches", "rain_too_heavy", "hours_shifted",
        "thermometer_still", "humidity_still", "wind_always_calm", "pressure_of_sea_level",
    ];

    /// <summary>Alarms of each rule: days on which it speaks where it was silent the day before.</summary>
    public static IReadOnlyDictionary<string, int> Of(Site site, IReadOnlyList<WeatherReading> readings)
    {
        Dictionary<string, int> alarms = Codes.ToDictionary(code => code, _ => 0);
        HashSet<string> before = [];
        WeatherReading[] byTime = [.. readings.OrderBy(reading => reading.Time)];
        for (DateTimeOffset now = byTime[0].Time.AddDays(7); now <= byTime[^1].Time; now = now.AddDays(1))
        {
            WeatherReading[] known = [.. byTime.Where(reading => reading.Time > now.AddDays(-HistoryDays) && reading.Time <= now)];
            HashSet<string> today = [.. ScreenedWeather.Of(site, known).Faults.Select(fault => fault.Code)];
            foreach (string code in today.Except(before))
            {
                alarms[code]++;
            }

            before = today;
        }

        return alarms;
    }

    public static string Document()
    {
        var text = new StringBuilder();
        text.AppendLine("""
            # False alarms over real years

            Written by `UPDATE_FALSE_ALARMS=1 dotnet run -c Release --project tests/suites/WitherAdvisor.Tests -- -class "*FalseAlarmTests"`.

            Each rule that looks for faults in weather is run over real weather (`fixtures/airports`, `fixtures/seattle`), every day with the 90
            days before it. An alarm is a day on which it speaks and was silent the day before. Alarms a year; allowed is 1.

            Seattle has days only: their hours are made (temperature between its extremes, the dew point of the lowest, rain over six
            hours), so it says nothing of the shape of its days. No series has pressure or radiation of its station.

            """);
        text.AppendLine($"| weather | {string.Join(" | ", Codes.Select(code => $"`{code}`"))} |");
        text.AppendLine($"|---|{string.Concat(Codes.Select(_ => "---|"))}");
        foreach ((string name, Site site, double years, IReadOnlyList<WeatherReading> readings) in RealWeather.All)
        {
            IReadOnlyDictionary<string, int> alarms = Of(site, readings);
            text.AppendLine($"| {name} | {string.Join(" | ", Codes.Select(code => (alarms[code] / years).ToString("0.##", CultureInfo.InvariantCulture)))} |");
        }

        return text.ToString();
    }
}
