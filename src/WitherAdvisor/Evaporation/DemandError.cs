using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Evaporation;

/// <summary>How far ET_0 may be off where parts of the weather were guessed: standard errors, relative.</summary>
/// <remarks>
/// Of ET_0 by the hour against ET_0 with every part measured: radiation from the range of temperature 24 %, dew point from the least
/// temperature 14 %, wind of 2 m/s 5 % (18 % in a dry spell, where wind does the drying), temperature alone 30 %. FAO-56 (Allen et al.
/// 1998), ch. 3, says what to take in their place; the sizes are from memory of comparisons of it.
/// </remarks>
internal static class DemandError
{
    /// <summary>Of the equation with every part measured (from memory).</summary>
    public const double OfEquation = 0.10;

    public const double WithoutRadiation = 0.24;
    public const double WithoutHumidity = 0.14;
    public const double WithoutWind = 0.05;
    public const double WithoutWindInDrySpell = 0.18;
    public const double TemperatureAlone = 0.30;

    /// <summary>Neither temperature nor humidity, nor therefore radiation: usual days stand in (from memory).</summary>
    public const double WithoutAir = 0.30;

    /// <summary>Share of the variance that is the same every day, so that no number of days averages it away (from memory).</summary>
    public const double LastingShare = 0.5;

    private const int HoursInDay = 24;

    /// <summary>Of an hour's demand where shares of the hours about it lack a part.</summary>
    public static double Of(in MissingShares missing, bool isDry)
    {
        double wind = missing.Wind * (isDry ? WithoutWindInDrySpell : WithoutWind);
        double parts = Root(missing.Radiation * WithoutRadiation, missing.Humidity * WithoutHumidity, wind);
        return Root(OfEquation, isDry ? parts : Math.Min(parts, TemperatureAlone), missing.Air * WithoutAir);
    }

    /// <summary>Of the demand of all days of a history together.</summary>
    public static double OfHistory(HourlySeries series, bool isDry)
    {
        double missing = Of(MissingShares.Of(series, 0, series.Grid.Hours), isDry);
        double guessed = missing * missing - OfEquation * OfEquation;
        double days = Math.Max(series.Grid.Hours / (double)HoursInDay, 1);
        return Math.Sqrt(OfEquation * OfEquation + guessed * (LastingShare + (1 - LastingShare) / days));
    }

    private static double Root(double first, double second, double third) => Math.Sqrt(first * first + second * second + third * third);
}
