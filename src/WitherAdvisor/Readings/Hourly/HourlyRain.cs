namespace WitherAdvisor.Readings.Hourly;

/// <summary>Rain by the hour, mm, from readings and from totals stated by hand; what neither tells is unknown, not dry.</summary>
internal sealed class HourlyRain
{
    private const double LeastFreeH = 1e-9;

    private readonly double[] covered;

    private HourlyRain(HourSums read)
    {
        covered = read.Covered;
        ObservedMm = read.Amount;
        StatedMm = new double[covered.Length];
        StatedEarlyMm = new double[covered.Length];
        Known = (double[])covered.Clone();
    }

    /// <summary>From readings; entry 0 of every array is unused.</summary>
    public double[] ObservedMm { get; }

    /// <summary>
    /// From totals, spread evenly over the hours of their stretch, or of each part that a feed tells of, without a reading:
    /// the hour it fell in is not known.
    /// </summary>
    public double[] StatedMm { get; }

    /// <summary>The same, had it all fallen in the first half of those hours.</summary>
    public double[] StatedEarlyMm { get; }

    /// <summary>Share of each hour whose rain is known one way or the other, 0 to 1.</summary>
    public double[] Known { get; }

    /// <summary>Totals that no gauge can have shown; left out.</summary>
    public int ImpossibleTotals { get; private set; }

    /// <summary>Whether any total was laid on its hours as a feed tells of them.</summary>
    public bool IsLaidByFeed { get; private set; }

    public static HourlyRain Of(ReadingTimeline timeline, IReadOnlyList<RainTotal> totals, HourGrid grid)
    {
        var rain = new HourlyRain(HourSums.Of(timeline.Position, timeline.RainMm, timeline.RainH, grid.Hours));
        foreach (RainTotal total in rain.ShortestFirst([.. totals, .. Long(timeline, grid)]))
        {
            rain.Spread(total, grid.PositionOf(total.From), grid.PositionOf(total.To));
        }

        return rain;
    }

    /// <summary>Share of an hour whose rain is known only as part of a longer total.</summary>
    public double StatedShare(int hour) => Known[hour] - covered[hour];

    /// <summary>Readings that tell rain of more than an hour.</summary>
    private static IEnumerable<RainTotal> Long(ReadingTimeline timeline, HourGrid grid)
    {
        for (int at = 0; at < timeline.RainH.Length; at++)
        {
            if (timeline.RainH[at] > 1)
            {
                DateTimeOffset to = grid.Start.AddHours(timeline.Position[at]);
                yield return new(to.AddHours(-timeline.RainH[at]), to, timeline.RainMm[at]);
            }
        }
    }

    /// <summary>A short total tells more of its hours than a long one that holds it.</summary>
    private List<RainTotal> ShortestFirst(IReadOnlyList<RainTotal> totals)
    {
        var possible = new List<RainTotal>(totals.Count);
        foreach (RainTotal total in totals)
        {
            if (total.IsPossible)
            {
                possible.Add(total);
            }
            else
            {
                ImpossibleTotals++;
            }
        }

        possible.Sort(static (a, b) =>
            ((a.To - a.From), a.From, a.RainMm).CompareTo(((b.To - b.From), b.From, b.RainMm)));
        return possible;
    }

    private void Spread(RainTotal total, double from, double to)
    {
        double leftMm = Math.Max(total.RainMm - ToldMm(from, to), 0);
        double[] shares = Shares(total.PatternMm ?? [], from, to);
        double partH = (to - from) / shares.Length;
        for (int part = 0; part < shares.Length; part++)
        {
            SpreadEvenly(leftMm * shares[part], from + part * partH, from + (part + 1) * partH);
        }

        Cover(from, to);
    }

    /// <summary>What falls to each part of a stretch by what a feed tells of it; one part where it tells of no rain in the hours that are free.</summary>
    private double[] Shares(IReadOnlyList<double> patternMm, double from, double to)
    {
        double[] shares = new double[patternMm.Count];
        double partH = (to - from) / shares.Length;
        for (int part = 0; part < shares.Length; part++)
        {
            shares[part] = Math.Max(patternMm[part], 0) * FreeH(from + part * partH, from + (part + 1) * partH);
        }

        double sum = shares.Sum();
        if (!(sum is > 0 and < double.PositiveInfinity))
        {
            return [1];
        }

        IsLaidByFeed = true;
        return [.. shares.Select(share => share / sum)];
    }

    /// <summary>Rain told of a stretch so far, mm.</summary>
    private double ToldMm(double from, double to)
    {
        double mm = 0;
        for (int hour = FirstHour(from); hour <= LastHour(to); hour++)
        {
            mm += Overlap(hour, from, to) * (ObservedMm[hour] + StatedMm[hour]);
        }

        return mm;
    }

    /// <summary>Hours of a stretch of which nothing is told so far; what lies outside the grid is free.</summary>
    private double FreeH(double from, double to)
    {
        double freeH = to - from;
        for (int hour = FirstHour(from); hour <= LastHour(to); hour++)
        {
            freeH -= Overlap(hour, from, to) * Known[hour];
        }

        return freeH > LeastFreeH ? freeH : 0;
    }

    private void SpreadEvenly(double mm, double from, double to)
    {
        double freeH = FreeH(from, to);
        if (freeH > 0)
        {
            double beforeGridH = Math.Max(Math.Min(0, to) - from, 0);
            Fill(from, to, mm / freeH, freeH / 2 - beforeGridH);
        }
    }

    private void Fill(double from, double to, double mmPerH, double earlyH)
    {
        for (int hour = FirstHour(from); hour <= LastHour(to); hour++)
        {
            double freeH = Overlap(hour, from, to) * (1 - Known[hour]);
            double early = Math.Clamp(earlyH, 0, freeH);
            StatedMm[hour] += mmPerH * freeH;
            StatedEarlyMm[hour] += 2 * mmPerH * early;
            earlyH -= freeH;
        }
    }

    /// <summary>Once all parts of a stretch are filled: two of them may share an hour.</summary>
    private void Cover(double from, double to)
    {
        for (int hour = FirstHour(from); hour <= LastHour(to); hour++)
        {
            Known[hour] += Overlap(hour, from, to) * (1 - Known[hour]);
        }
    }

    private int FirstHour(double from) => (int)Math.Clamp(Math.Floor(from) + 1, 1, Known.Length);

    private int LastHour(double to) => (int)Math.Clamp(Math.Ceiling(to), 0, Known.Length - 1);

    private static double Overlap(int hour, double from, double to) => Math.Min(hour, to) - Math.Max(hour - 1, from);
}
