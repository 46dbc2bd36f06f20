using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Evaporation;

/// <summary>Share of hours, 0 to 1, that lack a part of the weather.</summary>
/// <param name="Radiation">Of daylight and night alike.</param>
/// <param name="Humidity">Where the temperature is known.</param>
/// <param name="Wind">At 10 m.</param>
/// <param name="Air">Temperature.</param>
internal readonly record struct MissingShares(double Radiation, double Humidity, double Wind, double Air)
{
    /// <summary>Of the hours of a series after one instant up to another.</summary>
    public static MissingShares Of(HourlySeries series, int after, int last)
    {
        (int sun, int humidity, int wind, int air) = (0, 0, 0, 0);
        for (int hour = after + 1; hour <= last; hour++)
        {
            bool isAirKnown = !double.IsNaN(series.DryBulbC[hour]);
            sun += series.ShortwaveWPerM2(hour) is null ? 1 : 0;
            humidity += isAirKnown && double.IsNaN(series.HumidityRatio[hour]) ? 1 : 0;
            wind += double.IsNaN(series.WindMPerS[hour]) ? 1 : 0;
            air += isAirKnown ? 0 : 1;
        }

        double hours = Math.Max(last - after, 1);
        return new(sun / hours, humidity / hours, wind / hours, air / hours);
    }
}
