using WitherAdvisor.Evaporation;

namespace WitherAdvisor.Spells;

/// <summary>Daytime vapour-pressure deficit times wind, kPa·m/s: how hard the weather dries.</summary>
internal sealed class DryingPower
{
    private const int HoursInDay = 24;
    private const int DaysInMean = 3;
    private const int LeastHoursInDay = 4;
    private const double UpperQuarter = 0.75;

    private readonly double[] sum;
    private readonly int[] count;

    private DryingPower(int days)
    {
        sum = new double[days];
        count = new int[days];
    }

    public static DryingPower Of(HourlyDemand demand)
    {
        int days = (demand.DayDryingKPaMPerS.Length - 1) / HoursInDay;
        var power = new DryingPower(days);
        for (int hour = 1; hour <= days * HoursInDay; hour++)
        {
            double value = demand.DayDryingKPaMPerS[hour];
            if (!double.IsNaN(value))
            {
                power.sum[(hour - 1) / HoursInDay] += value;
                power.count[(hour - 1) / HoursInDay]++;
            }
        }

        return power;
    }

    /// <summary>Mean of one day; null where too few of its hours are known.</summary>
    public double? MeanOf(int day) => count[day] >= LeastHoursInDay ? sum[day] / count[day] : null;

    /// <summary>Mean of three days up to a day; null where too few of their hours are known.</summary>
    public double? MeanUpTo(int day)
    {
        double total = 0;
        int hours = 0;
        for (int past = Math.Max(day - DaysInMean + 1, 0); past <= day; past++)
        {
            total += sum[past];
            hours += count[past];
        }

        return hours >= LeastHoursInDay ? total / hours : null;
    }

    /// <summary>What the days' own upper quarter begins at, held near the usual threshold; that one where days are few.</summary>
    public double Threshold(SpellThresholds thresholds)
    {
        double usual = thresholds.DryingPowerKPaMPerS;
        double[] known = KnownDays();
        if (known.Length < Math.Max(thresholds.LeastDaysForOwnQuarter, 1))
        {
            return usual;
        }

        double place = UpperQuarter * (known.Length - 1);
        int below = (int)place;
        double above = known[Math.Min(below + 1, known.Length - 1)];
        double quarter = known[below] + (above - known[below]) * (place - below);
        return Math.Clamp(quarter, usual / thresholds.MostOwnQuarterFactor, usual * thresholds.MostOwnQuarterFactor);
    }

    private double[] KnownDays()
    {
        var means = new List<double>(sum.Length);
        for (int day = 0; day < sum.Length; day++)
        {
            if (MeanOf(day) is double mean)
            {
                means.Add(mean);
            }
        }

        means.Sort();
        return [.. means];
    }
}
