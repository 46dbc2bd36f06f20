using WitherAdvisor.Air;
using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Evaporation;

/// <summary>Humidity of hours in which nobody told it.</summary>
internal static class HumidityFill
{
    /// <summary>Where nothing at all is known of the air, kg/kg (assumed: the mild humid air that tea wants).</summary>
    private const double UsualHumidityRatio = 0.012;

    private const int HoursInDay = 24;

    /// <summary>Mean of the same clock hour where any humidity is known; else the dew point is the least temperature of 24 h.</summary>
    /// <param name="dryBulbC">At instants, without gaps, °C.</param>
    /// <remarks>FAO-56 (Allen et al. 1998), eq. 48.</remarks>
    public static double[] Of(HourlySeries series, double[] dryBulbC, double pressurePa) =>
        Array.TrueForAll(series.HumidityRatio, double.IsNaN) && Array.Exists(series.DryBulbC, known => !double.IsNaN(known))
            ? [.. Enumerable.Range(0, dryBulbC.Length).Select(hour => MoistAir.SaturatedHumidityRatio(LeastOfDay(dryBulbC, hour), pressurePa))]
            : ClockHourFill.Of(series.HumidityRatio, UsualHumidityRatio);

    private static double LeastOfDay(double[] dryBulbC, int hour)
    {
        int first = hour / HoursInDay * HoursInDay;
        return dryBulbC.AsSpan(first, Math.Min(HoursInDay, dryBulbC.Length - first)).ToArray().Min();
    }
}
