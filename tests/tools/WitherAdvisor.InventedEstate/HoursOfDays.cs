namespace WitherAdvisor.InventedEstate;

/// <summary>Turns days into hours. Plain arithmetic only, so that every machine rounds alike.</summary>
public static class HoursOfDays
{
    private const int CoolestHour = 6;
    private const int WarmestHour = 14;
    private const double MeanStationPressureHpa = 845.6;
    private const double ClearNoonWPerM2 = 1_020;
    private const double BucketTipMm = 0.2;

    /// <summary>Hourly readings from 01:00 of the first day to 24:00 of the last but one: a day's evening leans on the next.</summary>
    public static IReadOnlyList<HourOfWeather> Make(DateTimeOffset firstMidnight, IReadOnlyList<Day> days, SplitMix64 random)
    {
        List<HourOfWeather> hours = [];
        double dewPointDriftK = 0;
        for (int index = 0; index < days.Count - 1; index++)
        {
            for (int hour = 1; hour <= 24; hour++)
            {
                dewPointDriftK = 0.8 * dewPointDriftK + random.Around(0, 0.2);
                DateTimeOffset time = firstMidnight.AddDays(index).AddHours(hour);
                hours.Add(Reading(time, hour, days[Math.Max(index - 1, 0)], days[index], days[index + 1], dewPointDriftK, random));
            }
        }

        return hours;
    }

    private static HourOfWeather Reading(
        DateTimeOffset time, int hour, Day before, Day today, Day after, double dewPointDriftK, SplitMix64 random)
    {
        double warmth = Warmth(hour);
        double highestC = hour < CoolestHour ? before.HighestC : today.HighestC;
        double lowestC = hour > WarmestHour ? after.LowestC : today.LowestC;
        double rainMm = Rain(today, hour, random);
        double dryBulbC = lowestC + (highestC - lowestC) * warmth + random.Around(0, 0.15) - (rainMm > 0 ? 0.4 : 0);
        double dewPointC = today.DewPointC + (after.DewPointC - today.DewPointC) * hour / 24 + dewPointDriftK;
        double wettestC = dryBulbC - random.Between(0.2, 0.6);
        double dampestWhileRainingC = dryBulbC - random.Between(0.4, 1.2);
        return new(
            time,
            Rounded(dryBulbC, 10),
            Rounded(Math.Min(rainMm > 0 ? Math.Max(dewPointC, dampestWhileRainingC) : dewPointC, wettestC), 10),
            Rounded(rainMm, 10),
            Rounded(Math.Max(today.NightWindMPerS + (today.DayWindMPerS - today.NightWindMPerS) * warmth + random.Around(0, 0.3), 0.1), 10),
            Rounded(MeanStationPressureHpa + Tide(hour) + random.Around(0, 0.15), 10),
            Rounded(Sunshine(hour) * ClearNoonWPerM2 * (1 - 0.82 * Math.Clamp(today.Cloud + random.Around(0, 0.06), 0, 1)), 1));
    }

    /// <summary>0 at the coolest hour, 1 at the warmest, smooth between.</summary>
    private static double Warmth(int hour)
    {
        double x = hour switch
        {
            < CoolestHour => 1 - (hour + 24 - WarmestHour) / 16.0,
            <= WarmestHour => (hour - CoolestHour) / 8.0,
            _ => 1 - (hour - WarmestHour) / 16.0,
        };
        return x * x * (3 - 2 * x);
    }

    /// <summary>Share of the clear noon's radiation in the hour before: a parabola from six to six, as near the equator.</summary>
    private static double Sunshine(int hour)
    {
        double fromNoon = (hour - 12.5) / 6;
        return Math.Max(1 - fromNoon * fromNoon, 0);
    }

    /// <summary>The tide of the tropical atmosphere: highest about ten, lowest about four, morning and evening. hPa.</summary>
    private static double Tide(int hour)
    {
        double x = Math.Abs((hour + 2) % 12 - 6) / 6.0;
        return 1.2 * (2 * x * x * (3 - 2 * x) - 1);
    }

    private static double Rain(Day day, int hour, SplitMix64 random)
    {
        double meanMm = day.Showers.Where(shower => shower.FallsInHourBefore(hour)).Sum(shower => shower.MmPerHour);
        return Math.Round(meanMm * random.Between(0.4, 1.6) / BucketTipMm) * BucketTipMm;
    }

    private static double Rounded(double value, int parts) => Math.Round(value * parts) / parts;
}
