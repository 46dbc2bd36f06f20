namespace WitherAdvisor.Weather.Hours;

/// <summary>Rain by the hour, mm, from readings and from totals stated by hand; what neither tells is unknown, not dry.</summary>
internal sealed class HourlyRain
{
    private const double LeastFreeH = 1e-9;

    private readonly double[] covered;

    private HourlyRain(HourSums read)
    {
        covered = read.Covered;
        ReadMm = read.Amount;
        StatedMm = new double[covered.Length];
        StatedEarlyMm = new double[covered.Length];
        Known = (double[])covered.Clone();
    }

    /// <summary>From readings; entry 0 of every array is unused.</summary>
    public double[] ReadMm { get; }

    /// <summary>From totals, spread evenly over the hours of their stretch without a reading: the hour it fell in is not known.</summary>
    public double[] StatedMm { get; }

    /// <summary>The same, had it all fallen in the first half of those hours.</summary>
    public double[] StatedEarlyMm { get; }

    /// <summary>Share of each hour whose rain is known one way or the other, 0 to 1.</summary>
    public double[] Known { get; }

    /// <summary>Totals that no gauge can have shown; left out.</summary>
    public int ImpossibleTotals { get; private set; }

    public static HourlyRain Of(ReadingTimeline timeline, IReadOnlyList<RainTotal> totals, HourGrid grid)
    {
        var rain = new HourlyRain(HourSums.Of(timeline.Position, timeline.RainMm, grid.Hours));
        foreach (RainTotal total in rain.ShortestFirst(totals))
        {
            rain.Spread(total.RainMm, grid.PositionOf(total.From), grid.PositionOf(total.To));
        }

        return rain;
    }

    /// <summary>Share of an hour whose rain is known only as part of a longer total.</summary>
    public double StatedShare(int hour) => Known[hour] - covered[hour];

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

    private void Spread(double totalMm, double from, double to)
    {
        int first = (int)Math.Clamp(Math.Floor(from) + 1, 1, Known.Length);
        int last = (int)Math.Clamp(Math.Ceiling(to), 0, Known.Length - 1);
        double toldMm = 0;
        double freeInsideH = 0;
        double insideH = 0;
        for (int hour = first; hour <= last; hour++)
        {
            double overlap = Overlap(hour, from, to);
            toldMm += overlap * (ReadMm[hour] + StatedMm[hour]);
            freeInsideH += overlap * (1 - Known[hour]);
            insideH += overlap;
        }

        double freeH = to - from - insideH + freeInsideH;
        if (freeH > LeastFreeH)
        {
            double mmPerH = Math.Max(totalMm - toldMm, 0) / freeH;
            double beforeGridH = Math.Max(Math.Min(0, to) - from, 0);
            Fill(first, last, from, to, mmPerH, freeH / 2 - beforeGridH);
        }
    }

    private void Fill(int first, int last, double from, double to, double mmPerH, double earlyH)
    {
        for (int hour = first; hour <= last; hour++)
        {
            double freeH = Overlap(hour, from, to) * (1 - Known[hour]);
            double early = Math.Clamp(earlyH, 0, freeH);
            StatedMm[hour] += mmPerH * freeH;
            StatedEarlyMm[hour] += 2 * mmPerH * early;
            Known[hour] += freeH;
            earlyH -= freeH;
        }
    }

    private static double Overlap(int hour, double from, double to) => Math.Min(hour, to) - Math.Max(hour - 1, from);
}
