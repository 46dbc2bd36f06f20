namespace WitherAdvisor.Readings;

/// <summary>Of how long a time a reading's rain is: as it says, else as the spacing of the readings beside it tells, else of the hour before.</summary>
/// <remarks>
/// A logger that reports every 15 min reports the rain of 15 min, a synoptic station every 6 h that of 6 h. Readings at odd
/// times tell the hour before, as airways reports do. Common practice, no published source.
/// </remarks>
internal static class RainSteps
{
    /// <summary>Of a reading that neither says nor stands in a regular row.</summary>
    public const double UsualH = 1;

    /// <summary>Longest step that spacing alone tells, h: a rain reading a day may as well be of its last hour.</summary>
    public const double LongestBySpacingH = 6;

    /// <summary>Readings nearer than this are one told twice, h.</summary>
    private const double ShortestH = 0.9 / 60;

    private const double ClockErrorH = 1.5 / 60;
    private const double ClockErrorShare = 0.05;
    private const double MinutesInHour = 60;

    /// <summary>Whether a row of that spacing tells more of a reading's rain than the hour before would.</summary>
    public static bool IsOther(double hours) => !Same(hours, UsualH);

    /// <summary>Length of each reading's rain, h; not a number where it tells no rain.</summary>
    /// <param name="position">Hours, rising.</param>
    /// <param name="rainMm">Not a number where unknown.</param>
    /// <param name="saidH">As the reading says, not a number where it does not.</param>
    public static double[] LengthsH(ReadOnlySpan<double> position, ReadOnlySpan<double> rainMm, ReadOnlySpan<double> saidH)
    {
        var lengths = new double[position.Length];
        Array.Fill(lengths, double.NaN);
        int[] told = Told(rainMm);
        for (int at = 0; at < told.Length; at++)
        {
            double said = saidH[told[at]];
            lengths[told[at]] = double.IsNaN(said) ? BySpacingH(position, told, at) : said;
        }

        return lengths;
    }

    /// <summary>Readings of one source by time, each that tells rain of another time than the hour before with its minutes.</summary>
    public static IReadOnlyList<WeatherReading> Stated(IReadOnlyList<WeatherReading> byTime)
    {
        double[] position = [.. byTime.Select(reading => reading.Time.UtcTicks / (double)TimeSpan.TicksPerHour)];
        double[] rainMm = [.. byTime.Select(reading => reading.RainMm ?? double.NaN)];
        double[] saidH = [.. byTime.Select(reading => reading.RainMinutes / MinutesInHour ?? double.NaN)];
        double[] lengths = LengthsH(position, rainMm, saidH);
        return [.. byTime.Select((reading, at) => reading.RainMinutes is null && IsOther(lengths[at]) && !double.IsNaN(lengths[at])
            ? reading with { RainMinutes = Math.Round(lengths[at] * MinutesInHour), RainMinutesFrom = RainMinutesOrigin.Spacing }
            : reading)];
    }

    /// <summary>Rain of more than an hour, as totals: the hour it fell in is not known.</summary>
    public static IEnumerable<RainTotal> LongTotals(IReadOnlyList<WeatherReading> readings) =>
        from reading in Stated([.. readings.OrderBy(reading => reading.Time)])
        where reading is { RainMm: not null, RainMinutes: > MinutesInHour }
        select new RainTotal(reading.Time.AddMinutes(-reading.RainMinutes!.Value), reading.Time, reading.RainMm!.Value);

    private static int[] Told(ReadOnlySpan<double> rainMm)
    {
        var told = new List<int>(rainMm.Length);
        for (int at = 0; at < rainMm.Length; at++)
        {
            if (!double.IsNaN(rainMm[at]))
            {
                told.Add(at);
            }
        }

        return [.. told];
    }

    private static double BySpacingH(ReadOnlySpan<double> position, int[] told, int at)
    {
        double before = Gap(position, told, at);
        double after = Gap(position, told, at + 1);
        if (before is >= ShortestH and < UsualH && (Same(before, Gap(position, told, at - 1)) || Same(before, after)))
        {
            return before;
        }

        // The first of a row, or the first after a hole in it.
        if (after is >= ShortestH and < UsualH && before >= ShortestH && Same(after, Gap(position, told, at + 2)))
        {
            return Math.Min(before, after);
        }

        return LongStepH(position, told, at) ?? UsualH;
    }

    /// <summary>Steps longer than the hour need a row of three: a few hours without a reading make two alike by chance.</summary>
    private static double? LongStepH(ReadOnlySpan<double> position, int[] told, int at)
    {
        for (int first = at - 2; first <= at + 1; first++)
        {
            double step = Gap(position, told, first);
            if (step > UsualH + ClockErrorH && step <= LongestBySpacingH + ClockErrorH
                && Same(step, Gap(position, told, first + 1)) && Same(step, Gap(position, told, first + 2)))
            {
                return Math.Min(step, Gap(position, told, at));
            }
        }

        return null;
    }

    /// <summary>Hours from the reading before to a reading; endless where either is missing.</summary>
    private static double Gap(ReadOnlySpan<double> position, int[] told, int at) =>
        at < 1 || at >= told.Length ? double.PositiveInfinity : position[told[at]] - position[told[at - 1]];

    private static bool Same(double aH, double bH) => Math.Abs(aH - bH) <= Math.Max(ClockErrorH, ClockErrorShare * aH);
}
