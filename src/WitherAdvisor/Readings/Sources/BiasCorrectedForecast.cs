using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Readings.Sources;

/// <summary>
/// What is forecast, moved towards the air that was read last. The bulbs at the trough are the air of the loft; a forecast is
/// that of a cell of the map, and what it misses now it goes on missing for some hours (Schuhen, Thorarinsdottir and Lenkoski
/// 2019, arXiv 1910.05101).
/// </summary>
/// <param name="Readings">What is forecast; moved from the last reading on.</param>
/// <param name="DryBulbK">By how much at the time of that reading, K; 0 where forecast and reading agree.</param>
/// <param name="DewPointK">The same of the dew point, K.</param>
internal sealed record BiasCorrectedForecast(IReadOnlyList<WeatherReading> Readings, double DryBulbK, double DewPointK)
{
    /// <summary>Hours in which half of the move wears off (from memory).</summary>
    public const double HalvesInH = 4;

    /// <summary>What a forecast may miss by without being taken for wrong, K.</summary>
    public const double AgreeingK = 0.5;

    /// <summary>Most that a forecast is moved by, K: what differs more is a slip of one or the other.</summary>
    private const double MostK = 10;

    /// <summary>Hours after which nothing of the move is worth a word.</summary>
    private const double MovedForH = 24;

    /// <summary>Nothing is expected.</summary>
    public static BiasCorrectedForecast None { get; } = new([], 0, 0);

    /// <summary>Whether reading and forecast disagree.</summary>
    public bool IsMoved => DryBulbK != 0 || DewPointK != 0;

    /// <summary>Moves a forecast by what it says of the time of the last reading, just before and just after.</summary>
    /// <param name="readings">The last of them that tells the air counts, where it was read from 3 h before loading on.</param>
    /// <param name="forecast">All that was forecast, of hours that somebody read too.</param>
    /// <param name="unread">What of it is to be moved.</param>
    public static BiasCorrectedForecast Of(
        IReadOnlyList<WeatherReading> readings, IReadOnlyList<WeatherReading> forecast, IReadOnlyList<WeatherReading> unread,
        DateTimeOffset loadedAt, double sitePressurePa)
    {
        AirAtTime[] read = AirAtTime.Of(readings.Where(reading => (loadedAt - reading.Time).TotalHours <= StaleWeather.OldH), sitePressurePa);
        if (read is not [.., var last])
        {
            return new(unread, 0, 0);
        }

        IEnumerable<WeatherReading> near = forecast.Where(reading => (reading.Time - last.Time).Duration().TotalHours <= InstantValues.LongestGapH);
        if (ForecastAt(AirAtTime.Of(near, sitePressurePa), last.Time) is not { } expected)
        {
            return new(unread, 0, 0);
        }

        double dryBulbK = Beyond(last.DryBulbC - expected.DryBulbC);
        double dewPointK = Beyond(last.DewPointC - expected.DewPointC);
        return dryBulbK == 0 && dewPointK == 0 ? new(unread, 0, 0) : new([.. unread.Select(Moved)], dryBulbK, dewPointK);

        WeatherReading Moved(WeatherReading reading)
        {
            double sinceH = (reading.Time - last.Time).TotalHours;
            if (sinceH is <= 0 or > MovedForH || AirAtTime.Of([reading], sitePressurePa) is not [var air])
            {
                return reading;
            }

            double left = Math.Pow(2, -sinceH / HalvesInH);
            double dryBulbC = air.DryBulbC + dryBulbK * left;
            double dewPointC = Math.Min(air.DewPointC + dewPointK * left, dryBulbC);
            return reading with { DryBulbC = dryBulbC, DewPointC = dewPointC, WetBulbC = null, RelativeHumidity = null, Instrument = null };
        }
    }

    /// <summary>What of a difference lies beyond agreement.</summary>
    private static double Beyond(double differenceK) => Math.CopySign(Math.Clamp(Math.Abs(differenceK) - AgreeingK, 0, MostK), differenceK);

    /// <summary>What the forecast has for a time, drawn straight between the hours beside it; null where it does not reach to both sides.</summary>
    private static AirAtTime? ForecastAt(AirAtTime[] forecast, DateTimeOffset time)
    {
        int next = Array.FindIndex(forecast, air => air.Time > time);
        if (next < 1 || (forecast[next].Time - forecast[next - 1].Time).TotalHours > InstantValues.LongestGapH)
        {
            return null;
        }

        (AirAtTime a, AirAtTime b) = (forecast[next - 1], forecast[next]);
        double share = (time - a.Time) / (b.Time - a.Time);
        return new(time, a.DryBulbC + share * (b.DryBulbC - a.DryBulbC), a.DewPointC + share * (b.DewPointC - a.DewPointC));
    }
}
