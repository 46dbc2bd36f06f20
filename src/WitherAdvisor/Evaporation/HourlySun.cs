using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Evaporation;

/// <summary>Radiation by the hour: measured where it was, else from the day's range of temperature, diffuse light only while it rains.</summary>
internal sealed class HourlySun
{
    private const int HoursInDay = 24;
    private const double MJPerM2PerWattHour = 0.0036;

    /// <summary>A rain this small in the hour's reading still means a closed sky, mm.</summary>
    private const double LeastRainMm = 0.1;

    /// <summary>Rain of an hour in which it rains throughout, mm, to guess how many of a total's hours were rainy (from memory).</summary>
    private const double UsualRainMmPerH = 1;

    /// <summary>Below this much outside the atmosphere the sun stands too low to read the sky by, MJ/m² in the hour (height of 0.3 rad, ASCE-EWRI 2005, from memory).</summary>
    private const double LowSunMJPerM2 = 1.45;

    /// <summary>Range of temperature of a day on which too few hours are known, K (assumed).</summary>
    private const double UsualRangeK = 9;

    private const int LeastHoursForRange = 12;

    private HourlySun(int hours)
    {
        OutsideMJPerM2 = new double[hours + 1];
        SunlightMJPerM2 = new double[hours + 1];
        Clearness = new double[hours + 1];
    }

    /// <summary>R_a, MJ/m² in the hour.</summary>
    public double[] OutsideMJPerM2 { get; }

    /// <summary>R_s, MJ/m² in the hour.</summary>
    public double[] SunlightMJPerM2 { get; }

    /// <summary>
    /// R_s/R_so for the longwave term. It follows the day, not the single hour of rain, so that a shower never makes
    /// an hour's demand greater.
    /// </summary>
    public double[] Clearness { get; }

    /// <summary>Works through every hour of a series at a site.</summary>
    /// <param name="dryBulbC">At instants, without gaps, °C.</param>
    public static HourlySun Of(HourlySeries series, Site site, double[] dryBulbC)
    {
        var sun = new HourlySun(series.Grid.Hours);
        SolarDay day = default;
        double clearOfDay = 0;
        double clearnessSeen = 0;
        for (int hour = 1; hour <= series.Grid.Hours; hour++)
        {
            long hourEnd = series.Grid.FirstHour + hour;
            if (hour == 1 || hourEnd % HoursInDay == 0)
            {
                day = SolarDay.Of(series.Grid.InstantOf(hour).UtcDateTime.DayOfYear, site.LatitudeDeg);
            }

            if (hour % HoursInDay == 1)
            {
                clearOfDay = ClearnessByRange(series, site, dryBulbC, hour);
                clearnessSeen = hour == 1 ? clearOfDay : clearnessSeen;
            }

            double middle = day.HourAngleRad(hourEnd % HoursInDay - 0.5, site.LongitudeDeg);
            double outside = day.RadiationBetweenMJPerM2(middle - Math.PI / HoursInDay, middle + Math.PI / HoursInDay);
            double clearSky = Sunlight.ClearSky(outside, site.ElevationM);
            double? measured = series.ShortwaveWPerM2(hour) * MJPerM2PerWattHour;
            if (outside > LowSunMJPerM2)
            {
                clearnessSeen = measured is double seen ? NetRadiation.Clearness(seen, clearSky) : clearOfDay;
            }

            sun.OutsideMJPerM2[hour] = outside;
            sun.Clearness[hour] = clearnessSeen;
            sun.SunlightMJPerM2[hour] = measured ?? Guessed(outside, clearSky * clearOfDay, RainyShare(series.Rain, hour));
        }

        return sun;
    }

    private static double Guessed(double outside, double dry, double rainyShare) =>
        dry + rainyShare * (Math.Min(Sunlight.Overcast(outside), dry) - dry);

    private static double RainyShare(HourlyRain rain, int hour) => rain.ObservedMm[hour] >= LeastRainMm
        ? 1
        : Math.Min(rain.StatedMm[hour] / UsualRainMmPerH, 1);

    private static double ClearnessByRange(HourlySeries series, Site site, double[] dryBulbC, int firstHour)
    {
        double lowest = double.MaxValue;
        double highest = double.MinValue;
        int known = 0;
        int last = Math.Min(firstHour + HoursInDay - 1, series.Grid.Hours);
        for (int hour = firstHour; hour <= last; hour++)
        {
            lowest = Math.Min(lowest, dryBulbC[hour]);
            highest = Math.Max(highest, dryBulbC[hour]);
            known += double.IsNaN(series.DryBulbC[hour]) ? 0 : 1;
        }

        double rangeK = known >= LeastHoursForRange ? highest - lowest : UsualRangeK;
        return NetRadiation.Clearness(
            Sunlight.FromTemperatureRange(1, rangeK, site.ElevationM, Sunlight.UnknownPerRootK), Sunlight.ClearSky(1, site.ElevationM));
    }
}
