using WitherAdvisor.InventedEstate;
using WitherAdvisor.Readings;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>How weather is seen: through instruments that err, with hours that nobody read, and ahead through a forecast.</summary>
internal static class Observed
{
    private const double PaPerHpa = 100;

    /// <summary>The weather itself.</summary>
    public static WeatherReading Truly(HourOfWeather hour) => new(
        hour.Time, hour.DryBulbC, hour.DewPointC, RainMm: hour.RainMm, WindMPerS: hour.WindMPerS,
        StationPressurePa: hour.StationPressureHpa * PaPerHpa, ShortwaveWPerM2: hour.ShortwaveWPerM2);

    /// <summary>The weather of the fields: sun and dryness by a factor those of the station.</summary>
    public static WeatherReading AtTheField(HourOfWeather hour, double demandFactor) => Truly(hour with
    {
        DewPointC = hour.DryBulbC - demandFactor * (hour.DryBulbC - hour.DewPointC),
        ShortwaveWPerM2 = hour.ShortwaveWPerM2 * demandFactor,
    });

    /// <summary>As a loft's station reads it; in two histories of ten a stretch of up to a day and a half is missing.</summary>
    public static List<WeatherReading> Read(IReadOnlyList<HourOfWeather> hours, SplitMix64 random)
    {
        var readings = hours.Select(hour => Noisy(hour, 0.2, 0.3, 0.10, random)).ToList();
        if (random.NextFraction() < 0.2)
        {
            int length = (int)random.Between(4, 36);
            readings.RemoveRange(readings.Count - length - (int)random.Between(0, 120), length);
        }

        return readings;
    }

    /// <summary>As forecast: the whole night wrong by as much, in dry bulb and in dew point.</summary>
    public static List<WeatherReading> Forecast(IReadOnlyList<HourOfWeather> hours, SplitMix64 random)
    {
        double dryBulbK = random.Around(0, 0.8);
        double dewPointK = random.Around(0, 0.8);
        return [.. hours.Select(hour => Noisy(
            hour with { DryBulbC = hour.DryBulbC + dryBulbK, DewPointC = hour.DewPointC + dewPointK }, 0.3, 0.3, 0.5, random))];
    }

    private static WeatherReading Noisy(HourOfWeather hour, double dryBulbK, double dewPointK, double rain, SplitMix64 random)
    {
        double dryBulbC = hour.DryBulbC + random.Around(0, dryBulbK);
        return Truly(hour) with
        {
            DryBulbC = dryBulbC,
            DewPointC = Math.Min(hour.DewPointC + random.Around(0, dewPointK), dryBulbC),
            RainMm = hour.RainMm * Math.Exp(random.Around(0, rain)),
            WindMPerS = hour.WindMPerS * Math.Exp(random.Around(0, 0.2)),
        };
    }
}
