
namespace WitherAdvisor.Readings.Sources;

/// <summary>Tells of a gauge's total when it fell, by what a feed says of the same stretch. How much fell the gauge knows better.</summary>
/// <remarks>
/// To lay a day's total on its hours as another record of the same day has them is the method of fragments (Breinl and Di
/// Baldassarre 2019, J. Hydrol. Reg. Stud. 21). Here that record is a model's, whose rain over land comes some 3 h early
/// (Dong et al. 2023, J. Climate 36; for ERA5 doi 10.5194/egusphere-2026-432): it is believed in parts of
/// <see cref="PartH"/> and not by the hour.
/// </remarks>
internal sealed class RainPattern
{
    /// <summary>Longest part of a stretch that a feed's rain is summed over, h.</summary>
    public const double PartH = 6;

    /// <summary>Share of each part that the feed must tell of.</summary>
    private const double LeastKnown = 0.5;

    private const double MinutesInHour = 60;

    /// <summary>Longest that a feed gathers rain for.</summary>
    private static readonly TimeSpan LongestStep = TimeSpan.FromHours(RainSteps.LongestBySpacingH);

    private readonly List<WeatherReading> fed;
    private readonly List<long> ticks;

    private RainPattern(List<WeatherReading> fed)
    {
        this.fed = fed;
        ticks = [.. fed.Select(reading => reading.Time.UtcTicks)];
    }

    /// <summary>Of instants by time, each with its rows best first: only what feeds and forecasts say of rain is taken.</summary>
    public static RainPattern Of(IEnumerable<List<SourcedReading>> instants) => new(
    [
        .. instants.Select(rows => rows.Find(row => row.Source != WeatherSource.Observed && row.Reading.RainMm is not null)?.Reading)
            .OfType<WeatherReading>(),
    ]);

    /// <summary>The total with its pattern; without one where no feed tells of all its parts.</summary>
    public RainTotal On(RainTotal total)
    {
        int parts = (int)Math.Ceiling((total.To - total.From).TotalHours / PartH);
        if (!total.IsPossible || parts is < 2 or > RainTotal.MostParts)
        {
            return total;
        }

        TimeSpan part = (total.To - total.From) / parts;
        double?[] known = [.. Enumerable.Range(0, parts).Select(at => Known(total.From + at * part, total.From + (at + 1) * part))];
        return known.Contains(null) ? total : total with { PatternMm = [.. known.OfType<double>()] };
    }

    /// <summary>Rain of a part, mm; null where too little of it is known.</summary>
    private double? Known(DateTimeOffset from, DateTimeOffset to)
    {
        double lengthH = (to - from).TotalHours;
        double mm = 0;
        double knownH = 0;
        int found = ticks.BinarySearch(from.UtcTicks);
        for (int at = found < 0 ? ~found : found + 1; at < fed.Count && fed[at].Time - to < LongestStep; at++)
        {
            double endsH = (fed[at].Time - from).TotalHours;
            double stepH = (fed[at].RainMinutes ?? MinutesInHour) / MinutesInHour;
            double overlapH = Math.Max(Math.Min(endsH, lengthH) - Math.Max(endsH - stepH, 0), 0);
            mm += overlapH / stepH * fed[at].RainMm!.Value;
            knownH += overlapH;
        }

        return knownH < LeastKnown * lengthH ? null : mm * lengthH / knownH;
    }
}
