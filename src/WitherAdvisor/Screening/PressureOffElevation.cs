using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>Station pressure that the elevation cannot have: weather moves it by a few per cent, reduction to sea level by more.</summary>
internal static class PressureOffElevation
{
    /// <summary>Share of the standard atmosphere's (derived: 870 and 1084 hPa, the extremes at sea level, are −14 and +7 % of it; short of storms ± 5 %).</summary>
    public const double MostShare = 0.06;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather)
    {
        double usualPa = weather.UsualPressurePa;
        bool IsOff(WeatherReading reading) => Math.Abs((reading.StationPressurePa ?? usualPa) / usualPa - 1) > MostShare;
        List<WeatherReading> off = [.. weather.Readings.Where(IsOff)];
        if (off.Count > 0)
        {
            yield return new(
                new Assumption.PressureOfSeaLevel(off[0].StationPressurePa!.Value, usualPa, off.Count),
                off[0].Time, off[^1].Time, IsOff, WeatherFinding.WithoutPressure);
        }
    }
}
