namespace WitherAdvisor.Readings.Sources;

/// <summary>Rain as it was observed, by gauge and by readings: a feed does not talk over it.</summary>
internal sealed class RainOfSources
{
    private readonly IReadOnlyList<RainTotal> totals;
    private readonly ObservedTimes readings;

    private RainOfSources(IReadOnlyList<RainTotal> totals, ObservedTimes readings)
    {
        this.totals = totals;
        this.readings = readings;
    }

    /// <summary>The same rows, each with the time that its rain is of: the spacing of readings is that of one source.</summary>
    public static IReadOnlyList<SourcedReading> Stated(IReadOnlyList<SourcedReading> rows)
    {
        SourcedReading[] stated = [.. rows];
        foreach (IGrouping<(WeatherSource, string?), int> source in Enumerable.Range(0, stated.Length).GroupBy(at => (rows[at].Source, rows[at].Feed)))
        {
            int[] byTime = [.. source.OrderBy(at => rows[at].Reading.Time)];
            IReadOnlyList<WeatherReading> withTimes = RainSteps.Stated([.. byTime.Select(at => rows[at].Reading)]);
            for (int place = 0; place < byTime.Length; place++)
            {
                stated[byTime[place]] = rows[byTime[place]] with { Reading = withTimes[place] };
            }
        }

        return stated;
    }

    public static RainOfSources Observed(IReadOnlyList<SourcedReading> rows, IReadOnlyList<RainTotal> totals)
    {
        List<WeatherReading> observed = [.. rows.Where(row => row.Source == WeatherSource.Observed).Select(row => row.Reading)];
        return new([.. totals, .. RainSteps.LongTotals(observed)], ObservedTimes.Of(observed, reading => reading.RainMm is not null));
    }

    /// <summary>Whether it tells of the hour before a time.</summary>
    public bool Tells(DateTimeOffset time) => readings.AnyNear(time) || GaugedRain.Tells(totals, time);
}
