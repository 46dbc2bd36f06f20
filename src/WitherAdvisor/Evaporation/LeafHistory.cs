using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Evaporation;

/// <summary>The weather up to plucking, by the hour and in whole days that end as plucking ends.</summary>
/// <param name="Series">What is known.</param>
/// <param name="Demand">What the air asked.</param>
/// <param name="PluckedFrom">Hours after the start of the series.</param>
/// <param name="PluckedTo">Hours after the start of the series.</param>
internal sealed record LeafHistory(HourlySeries Series, HourlyDemand Demand, double PluckedFrom, double PluckedTo)
{
    private const int HoursInDay = 24;

    /// <summary>Spells look back ten days, known or not.</summary>
    private const int FewestDays = 10;

    /// <summary>Soil forgets in three months.</summary>
    private const int MostDays = 120;

    private const double LongestPluckingH = 24;

    /// <summary>Hours of the history.</summary>
    public int Hours => Series.Grid.Hours;

    public static LeafHistory Of(
        Site site, IReadOnlyList<WeatherReading> readings, IReadOnlyList<RainTotal> rainTotals, PluckedLeaf leaf)
    {
        HourlySeries series = SeriesUpTo(site, readings, rainTotals, leaf.PluckedTo, FewestDays);
        double to = series.Grid.PositionOf(leaf.PluckedTo);
        double from = Math.Clamp(series.Grid.PositionOf(leaf.PluckedFrom), to - LongestPluckingH, to);
        return new(series, HourlyDemand.Of(series, site), from, to);
    }

    /// <summary>The weather up to a time, with enough before the last so many days to tell their spells.</summary>
    public static LeafHistory UpTo(
        Site site, IReadOnlyList<WeatherReading> readings, IReadOnlyList<RainTotal> rainTotals, DateTimeOffset to, int lastDays)
    {
        HourlySeries series = SeriesUpTo(site, readings, rainTotals, to, FewestDays + lastDays);
        return new(series, HourlyDemand.Of(series, site), series.Grid.Hours, series.Grid.Hours);
    }

    /// <summary>Mean over the plucking of a quantity given at instants: the batch is leaf of all its hours.</summary>
    public double MeanWhilePlucking(double[] atInstants)
    {
        if (PluckedTo - PluckedFrom < 1e-6)
        {
            return At(atInstants, PluckedTo);
        }

        double sum = 0;
        for (double from = PluckedFrom; from < PluckedTo;)
        {
            double to = Math.Min(Math.Floor(from) + 1, PluckedTo);
            sum += (to - from) * (At(atInstants, from) + At(atInstants, to)) / 2;
            from = to;
        }

        return sum / (PluckedTo - PluckedFrom);
    }

    private static double At(double[] atInstants, double position)
    {
        int below = (int)position;
        int above = Math.Min(below + 1, atInstants.Length - 1);
        return atInstants[below] + (atInstants[above] - atInstants[below]) * (position - below);
    }

    private static HourlySeries SeriesUpTo(
        Site site, IReadOnlyList<WeatherReading> readings, IReadOnlyList<RainTotal> rainTotals, DateTimeOffset to, int fewestDays)
    {
        int days = DaysKnown(readings, rainTotals, to, fewestDays);
        HourGrid grid = HourGrid.EndingAtOrAfter(to, days * HoursInDay);
        return HourlySeries.On(grid, readings, rainTotals, site.PressurePa);
    }

    private static int DaysKnown(
        IReadOnlyList<WeatherReading> readings, IReadOnlyList<RainTotal> rainTotals, DateTimeOffset to, int fewestDays)
    {
        long oldest = to.UtcTicks - fewestDays * TimeSpan.TicksPerDay;
        for (int at = 0; at < readings.Count; at++)
        {
            oldest = Math.Min(oldest, readings[at].Time.UtcTicks);
        }

        for (int at = 0; at < rainTotals.Count; at++)
        {
            oldest = Math.Min(oldest, rainTotals[at].From.UtcTicks);
        }

        // A feed of sixty days starts an hour or two late: that part of a day is not worth a guessed day.
        long days = (to.UtcTicks - oldest + TimeSpan.TicksPerDay / 2) / TimeSpan.TicksPerDay;
        return (int)Math.Clamp(days, fewestDays, Math.Max(fewestDays, MostDays));
    }
}
