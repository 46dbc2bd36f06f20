using WitherAdvisor.Air;
using WitherAdvisor.Weather.Hours;

namespace WitherAdvisor.Weather.Sources;

/// <summary>
/// What is foretold, moved towards the air that was read last. The bulbs at the trough are the air of the loft; a forecast is
/// that of a cell of the map, and what it misses now it goes on missing for some hours (Schuhen, Thorarinsdottir and Lenkoski
/// 2019, arXiv 1910.05101).
/// </summary>
/// <param name="Readings">What is foretold; moved from the last reading on.</param>
/// <param name="DryBulbK">By how much at the time of that reading, K; 0 where forecast and reading agree.</param>
/// <param name="DewPointK">The same of the dew point, K.</param>
internal sealed record MovedForecast(IReadOnlyList<WeatherReading> Readings, double DryBulbK, double DewPointK)
{
    /// <summary>Hours in which half of the move wears off (from memory).</summary>
    public const double HalvesInH = 4;

    /// <summary>What a forecast may miss by without being taken for wrong, K.</summary>
    public const double AgreeingK = 0.5;

    /// <summary>Most that a forecast is moved by, K: what differs more is a slip of one or the other.</summary>
    private const double MostK = 10;

    /// <summary>Hours after which nothing of the move is worth a word.</summary>
    private const double MovedForH = 24;

    /// <summary>Farthest that a forecast is drawn back to the reading, h.</summary>
    private const double ReachH = 1.5;

    /// <summary>Whether reading and forecast disagree.</summary>
    public bool IsMoved => DryBulbK != 0 || DewPointK != 0;

    /// <summary>Moves a forecast.</summary>
    /// <param name="readings">The last of them that tells the air counts, where it was read from 3 h before loading on.</param>
    public static MovedForecast Of(
        IReadOnlyList<WeatherReading> forecast, IReadOnlyList<WeatherReading> readings, DateTimeOffset loadedAt, double sitePressurePa)
    {
        Point[] read = Points(readings.Where(reading => (loadedAt - reading.Time).TotalHours <= StaleWeather.OldH), sitePressurePa);
        if (read is not [.., var last])
        {
            return new(forecast, 0, 0);
        }

        Point[] foretold = Points(forecast.Where(reading => Math.Abs((reading.Time - last.Time).TotalHours) <= MovedForH), sitePressurePa);
        if (Foretold(foretold, last.Time) is not { } missed)
        {
            return new(forecast, 0, 0);
        }

        double dryBulbK = Beyond(last.DryBulbC - missed.DryBulbC);
        double dewPointK = Beyond(last.DewPointC - missed.DewPointC);
        if (dryBulbK == 0 && dewPointK == 0)
        {
            return new(forecast, 0, 0);
        }

        Dictionary<DateTimeOffset, Point> later = foretold.Where(point => point.Time > last.Time).ToDictionary(point => point.Time);
        return new([.. forecast.Select(reading => later.TryGetValue(reading.Time, out Point point) ? Moved(reading, point) : reading)], dryBulbK, dewPointK);

        WeatherReading Moved(WeatherReading reading, Point point)
        {
            double left = Math.Pow(2, -(point.Time - last.Time).TotalHours / HalvesInH);
            double dryBulbC = point.DryBulbC + dryBulbK * left;
            double dewPointC = Math.Min(point.DewPointC + dewPointK * left, dryBulbC);
            return reading with { DryBulbC = dryBulbC, DewPointC = dewPointC, WetBulbC = null, RelativeHumidity = null, Instrument = null };
        }
    }

    /// <summary>What of a difference lies beyond agreement.</summary>
    private static double Beyond(double differenceK) => Math.CopySign(Math.Clamp(Math.Abs(differenceK) - AgreeingK, 0, MostK), differenceK);

    /// <summary>What the forecast has for a time, drawn straight through the two of its hours that are nearest; null where it is too far.</summary>
    private static Point? Foretold(Point[] foretold, DateTimeOffset time)
    {
        int next = Array.FindIndex(foretold, point => point.Time > time);
        int first = next > 0 && foretold[next].Time - foretold[next - 1].Time <= LongestGap ? next - 1 : next;
        if (next < 0 || first + 1 >= foretold.Length || (foretold[next].Time - time).TotalHours > ReachH)
        {
            return null;
        }

        (Point a, Point b) = (foretold[first], foretold[first + 1]);
        double share = (time - a.Time) / (b.Time - a.Time);
        return b.Time - a.Time > LongestGap
            ? null
            : new(time, a.DryBulbC + share * (b.DryBulbC - a.DryBulbC), a.DewPointC + share * (b.DewPointC - a.DewPointC));
    }

    private static TimeSpan LongestGap => TimeSpan.FromHours(InstantValues.LongestGapH);

    /// <summary>The air of those that tell it, by time; of one time the last counts.</summary>
    private static Point[] Points(IEnumerable<WeatherReading> readings, double sitePressurePa) =>
    [
        .. from reading in readings
           let screened = ScreenedReading.Of(reading)
           where screened.DryBulbC is not null
           let humidityRatio = ScreenedReading.HumidityRatio(screened, sitePressurePa)
           where !double.IsNaN(humidityRatio)
           let air = new AirState(screened.DryBulbC!.Value, humidityRatio, screened.StationPressurePa ?? sitePressurePa)
           group new Point(reading.Time, air.DryBulbC, air.DewPointC) by reading.Time.UtcTicks into instant
           orderby instant.Key
           select instant.Last(),
    ];

    private readonly record struct Point(DateTimeOffset Time, double DryBulbC, double DewPointC);
}
