using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Canopy;

/// <summary>What fog lays on leaf, and drizzle too fine for a gauge, mm by the hour.</summary>
/// <remarks>
/// Droplets are laid by deposition velocity times liquid water: half of u*²/u (Lovett 1984; Beswick et al. 1991) times 0.1 g/m³ (0.05 to 0.3),
/// so as the wind; measured on low vegetation about 0.02 mm/h, 0.005 to 0.1 (from memory of fog-interception studies). While it is foggy
/// leaf does not dry: leaf-wetness rules keep it wet at 90 % and over (Sentelhas et al. 2008).
/// </remarks>
internal sealed class FogDeposit
{
    /// <summary>mm/h at <see cref="UsualWindMPerS"/>.</summary>
    public const double UsualMmPerH = 0.02;
    public const double LeastMmPerH = 0.005;
    public const double MostMmPerH = 0.1;
    public const double UsualWindMPerS = 2;

    /// <summary>Factor either way within which the truth lies two times in three (derived from the range).</summary>
    public const double ErrorFactor = 2;

    /// <summary>Fog told by a visibility below this, m, with air this humid (World Meteorological Organization: fog is below 1 km).</summary>
    public const double FogVisibilityM = 1000;
    public const double FogHumidity = 0.97;

    /// <summary>Without either, fog is what keeps air this humid for so many hours.</summary>
    public const double SaturatedHumidity = 0.99;
    public const int SaturatedH = 3;

    /// <summary>Air that stays so for longer than a night is fog; before, it may be the dew of a clear one, which the sun takes.</summary>
    public const int LongerThanNightH = 14;

    private FogDeposit(int hours)
    {
        Mm = new double[hours + 1];
        IsSeen = new bool[hours + 1];
        KeepsWet = new bool[hours + 1];
    }

    /// <summary>Laid in each hour; 0 where there is no fog.</summary>
    public double[] Mm { get; }

    /// <summary>Whether somebody saw it; else humidity alone tells.</summary>
    public bool[] IsSeen { get; }

    /// <summary>Whether leaf does not dry meanwhile.</summary>
    public bool[] KeepsWet { get; }

    /// <summary>As little as it may be: nothing where only humidity tells of fog.</summary>
    public double[] Least => [.. Mm.Select((mm, hour) => IsSeen[hour] ? mm / ErrorFactor : 0)];

    /// <summary>As much as it may be.</summary>
    public double[] Most => [.. Mm.Select(mm => mm * ErrorFactor)];

    public static FogDeposit Of(HourlySeries series)
    {
        var fog = new FogDeposit(series.Grid.Hours);
        int saturated = 0;
        for (int hour = 1; hour <= series.Grid.Hours; hour++)
        {
            double humidity = series.RelativeHumidity(hour);
            saturated = humidity >= SaturatedHumidity ? saturated + 1 : 0;
            SkySeen? sky = series.SkyOf(hour);
            double rainMm = series.Rain.ObservedMm[hour] + series.Rain.StatedMm[hour];
            fog.IsSeen[hour] = sky is { } seen && (seen.IsFog || (seen.VisibilityM < FogVisibilityM && humidity >= FogHumidity));
            fog.KeepsWet[hour] = fog.IsSeen[hour] || saturated >= LongerThanNightH;
            if (sky?.DrizzleMmPerH is { } drizzleMm && rainMm < drizzleMm)
            {
                fog.IsSeen[hour] = true;
                fog.Mm[hour] = drizzleMm;
            }
            else if (fog.IsSeen[hour] || (saturated >= SaturatedH && !(sky?.VisibilityM >= FogVisibilityM)))
            {
                fog.Mm[hour] = Math.Clamp(UsualMmPerH * (series.WindAtMPerS(hour) ?? UsualWindMPerS) / UsualWindMPerS, LeastMmPerH, MostMmPerH);
            }
        }

        return fog;
    }
}
