namespace WitherAdvisor.Readings.Hourly;

/// <summary>
/// Values that hold for a time before a reading, allotted to the hours of the grid by overlap and never drawn out over
/// hours that nobody read.
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

    /// <summary>Of values each of the hour before.</summary>
    public static HourSums Of(ReadOnlySpan<double> position, ReadOnlySpan<double> values, int hours)
    {
        var lengthH = new double[values.Length];
        Array.Fill(lengthH, 1);
        return Of(position, values, lengthH, hours);
    }

    /// <summary>Of sums each of a time before its reading; those of more than an hour are left out.</summary>
    /// <param name="lengthH">Of that time.</param>
    public static HourSums Of(ReadOnlySpan<double> position, ReadOnlySpan<double> values, ReadOnlySpan<double> lengthH, int hours)
    {
        var sums = new HourSums(hours);
        for (int at = 0; at < values.Length; at++)
        {
            if (!double.IsNaN(values[at]) && lengthH[at] <= 1)
            {
                int hour = (int)Math.Ceiling(position[at]);
                double inHour = Math.Min(position[at] - (hour - 1), lengthH[at]);
                sums.Add(hour, inHour, values[at] / lengthH[at]);
                sums.Add(hour - 1, lengthH[at] - inHour, values[at] / lengthH[at]);
            }
        }

        sums.LevelOverlaps();
        return sums;
    }

    private void Add(int hour, double share, double perHour)
    {
        if (hour >= 1 && hour < Amount.Length)
        {
            Amount[hour] += share * perHour;
            Covered[hour] += share;
        }
    }

    /// <summary>Reports of the hour before, at odd times, tell of some minutes twice: take their mean.</summary>
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
