namespace WitherAdvisor.Readings.Hourly;

/// <summary>Fills unknown hours with the mean of the same clock hour on known days: the day's swing is the best guess there is.</summary>
internal static class ClockHourFill
{
    private const int HoursInDay = 24;

    /// <summary>A copy without gaps; where nothing at all is known, the value <paramref name="otherwise"/>.</summary>
    public static double[] Of(double[] values, double otherwise)
    {
        var sum = new double[HoursInDay];
        var count = new int[HoursInDay];
        double total = 0;
        int known = 0;
        for (int hour = 0; hour < values.Length; hour++)
        {
            if (!double.IsNaN(values[hour]))
            {
                sum[hour % HoursInDay] += values[hour];
                count[hour % HoursInDay]++;
                total += values[hour];
                known++;
            }
        }

        if (known == values.Length)
        {
            return values;
        }

        double mean = known > 0 ? total / known : otherwise;
        var filled = (double[])values.Clone();
        for (int hour = 0; hour < filled.Length; hour++)
        {
            if (double.IsNaN(filled[hour]))
            {
                int clock = hour % HoursInDay;
                filled[hour] = count[clock] > 0 ? sum[clock] / count[clock] : mean;
            }
        }

        return filled;
    }
}
