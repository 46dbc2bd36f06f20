using WitherAdvisor.Air;
using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Evaporation;

/// <summary>What the air of each hour asks of soil and of wet leaf. Entry i is the hour that ends at instant i; entry 0 is unused.</summary>
internal sealed class HourlyDemand
{
    private const double PaPerKPa = 1000;

    /// <summary>Air is never quite still over a field (FAO-56, ch. 3).</summary>
    private const double LeastWindMPerS = 0.5;

    /// <summary>Mean over 2,000 stations, taken where wind is unknown (FAO-56, ch. 3).</summary>
    private const double UsualWindAtTwoMetresMPerS = 2;

    /// <summary>Taken where no reading of the air is known at all (assumed: the mild humid air that tea wants).</summary>
    private const double UsualDryBulbC = 20;

    private static readonly double TenToTwoMetres = FaoAir.WindAtTwoMetres(1, 10);

    private HourlyDemand(int hours)
    {
        ReferenceMm = new double[hours + 1];
        WetLeafMm = new double[hours + 1];
        DayDryingKPaMPerS = new double[hours + 1];
        IsDay = new bool[hours + 1];
    }

    /// <summary>ET_0, mm, 0 or above.</summary>
    public double[] ReferenceMm { get; }

    /// <summary>From leaf that is wet all over, mm; below 0 dew forms.</summary>
    public double[] WetLeafMm { get; }

    /// <summary>Vapour-pressure deficit times wind at 10 m, kPa·m/s; not a number by night and where either is unknown.</summary>
    public double[] DayDryingKPaMPerS { get; }

    /// <summary>Whether the sun is up in any part of the hour.</summary>
    public bool[] IsDay { get; }

    /// <summary>Works through every hour of a series at a site.</summary>
    public static HourlyDemand Of(HourlySeries series, Site site)
    {
        double[] dryBulbC = ClockHourFill.Of(series.DryBulbC, UsualDryBulbC);
        double[] humidityRatio = HumidityFill.Of(series, dryBulbC, site.PressurePa);
        double[] windMPerS = ClockHourFill.Of(series.WindMPerS, UsualWindAtTwoMetresMPerS / TenToTwoMetres);
        HourlySun sun = HourlySun.Of(series, site, dryBulbC);
        double pressureKPa = site.PressurePa / PaPerKPa;
        var demand = new HourlyDemand(series.Grid.Hours);
        for (int hour = 1; hour <= series.Grid.Hours; hour++)
        {
            double meanC = (dryBulbC[hour - 1] + dryBulbC[hour]) / 2;
            double ratio = (humidityRatio[hour - 1] + humidityRatio[hour]) / 2;
            double wind = (windMPerS[hour - 1] + windMPerS[hour]) / 2;
            double vapourKPa = pressureKPa * ratio / (MoistAir.MolarMassRatio + ratio);
            double net = NetRadiation.Shortwave(sun.SunlightMJPerM2[hour])
                - NetRadiation.LongwaveOfHour(meanC, vapourKPa, sun.Clearness[hour]);
            bool isDay = sun.OutsideMJPerM2[hour] > 0;
            HourOfAir air = HourOfAir.Of(
                meanC, vapourKPa, Math.Max(wind * TenToTwoMetres, LeastWindMPerS), net, isDay, pressureKPa);
            demand.IsDay[hour] = isDay;
            demand.ReferenceMm[hour] = Math.Max(ReferenceEvapotranspiration.OfHourMm(air), 0);
            demand.WetLeafMm[hour] = ReferenceEvapotranspiration.OfHourFromWetLeafMm(air);
            demand.DayDryingKPaMPerS[hour] = isDay && IsKnown(series, hour) ? air.DeficitKPa * wind : double.NaN;
        }

        return demand;
    }

    private static bool IsKnown(HourlySeries series, int hour) =>
        !double.IsNaN(series.DryBulbC[hour] + series.HumidityRatio[hour] + series.WindMPerS[hour]);
}
