namespace WitherAdvisor.Readings.Hourly;

/// <summary>
/// Values that hold for the hour before a reading, allotted to the hours of the grid by overlap and never drawn out
/// over hours that nobody read.
/// </summary>
internal sealed class HourSums
{
    private const double Whole = 1 - 1e-9;

    private HourSums(int hours)
    {
        Amount = new double[hours + 1];
        Covered = new double[hours + 1];
    }

    /// <summary>What was read in each hour; entry 0 is unused.</summary>
    public double[] Amount { get; }

    /// <summary>Share of each hour that was read, 0 to 1.</summary>
    public double[] Covered { get; }

    public static HourSums Of(ReadOnlySpan<double> position, ReadOnlySpan<double> values, int hours)
    {
        var sums = new HourSums(hours);
        for (int at = 0; at < values.Length; at++)
        {
            if (!double.IsNaN(values[at]))
            {
                int hour = (int)Math.Ceiling(position[at]);
                double inHour = position[at] - (hour - 1);
                sums.Add(hour, inHour, values[at]);
                sums.Add(hour - 1, 1 - inHour, values[at]);
            }
        }

        sums.LevelOverlaps();
        return sums;
    }

    private void Add(int hour, double share, double value)
    {
        if (hour >= 1 && hour < Amount.Length)
        {
            Amount[hour] += share * value;
            Covered[hour] += share;
        }
    }

    /// <summary>Half-hourly reports of the hour before tell of each half hour twice: take their mean.</summary>
    private void LevelOverlaps()
    {
        for (int hour = 1; hour < Amount.Length; hour++)
        {
            if (Covered[hour] > Whole)
            {
                Amount[hour] /= Covered[hour];
                Covered[hour] = 1;
            }
        }
    }
}
