using WitherAdvisor.Air;

namespace WitherAdvisor.Readings;

/// <summary>Takes out of a reading what no weather on earth can be, so that a slip of the pen is unknown, not believed.</summary>
internal static class ScreenedReading
{
    /// <summary>Reports in whole degrees can put dew point or wet bulb this much over the dry bulb.</summary>
    private const double RoundingK = 1;

    /// <summary>Feeds have been seen to give a relative humidity a little over 1.</summary>
    private const double MostRelativeHumidity = 1.05;

    /// <summary>The reading without its impossible values; itself where all can be.</summary>
    public static WeatherReading Of(WeatherReading reading)
    {
        bool possible = Within(reading.DryBulbC, -60, 60)
            && Within(reading.DewPointC, -90, HighestHumid(reading))
            && Within(reading.WetBulbC, -70, HighestHumid(reading))
            && Within(reading.RelativeHumidity, 0, MostRelativeHumidity)
            && Within(reading.RainMm, 0, 500)
            && Within(reading.WindMPerS, 0, 120)
            && Within(reading.StationPressurePa, 50_000, 110_000)
            && Within(reading.ShortwaveWPerM2, 0, 1_500);
        return possible ? reading : Without(reading);
    }

    /// <summary>Humidity ratio of a screened reading, kg/kg, at its own pressure or else the site's; not a number where unknown.</summary>
    public static double HumidityRatio(WeatherReading reading, double sitePressurePa)
    {
        double pressurePa = reading.StationPressurePa ?? sitePressurePa;
        if (reading.DewPointC is double dewPointC)
        {
            double dryBulbC = reading.DryBulbC ?? dewPointC;
            return AirState.FromDewPoint(dryBulbC, Math.Min(dewPointC, dryBulbC), pressurePa).HumidityRatio;
        }

        if (reading.DryBulbC is not double dryC)
        {
            return double.NaN;
        }

        if (reading.WetBulbC is double wetBulbC)
        {
            return FromWetBulb(dryC, Math.Min(wetBulbC, dryC), pressurePa, reading.Instrument);
        }

        return reading.RelativeHumidity is double share
            ? AirState.FromRelativeHumidity(dryC, Math.Min(share, 1), pressurePa).HumidityRatio
            : double.NaN;
    }

    /// <summary>Two bulbs that no air can show on the instrument leave the humidity unknown.</summary>
    private static double FromWetBulb(double dryBulbC, double wetBulbC, double pressurePa, PsychrometerKind? instrument)
    {
        AirState? air = instrument is { } kind
            ? Psychrometer.Air(dryBulbC, wetBulbC, pressurePa, kind)
            : AirState.FromWetBulb(dryBulbC, wetBulbC, pressurePa);
        return air?.HumidityRatio ?? double.NaN;
    }

    private static WeatherReading Without(WeatherReading reading)
    {
        WeatherReading dry = reading with { DryBulbC = Screen(reading.DryBulbC, -60, 60) };
        return dry with
        {
            DewPointC = Screen(dry.DewPointC, -90, HighestHumid(dry)),
            WetBulbC = Screen(dry.WetBulbC, -70, HighestHumid(dry)),
            RelativeHumidity = Screen(dry.RelativeHumidity, 0, MostRelativeHumidity),
            RainMm = Screen(dry.RainMm, 0, 500),
            WindMPerS = Screen(dry.WindMPerS, 0, 120),
            StationPressurePa = Screen(dry.StationPressurePa, 50_000, 110_000),
            ShortwaveWPerM2 = Screen(dry.ShortwaveWPerM2, 0, 1_500),
        };
    }

    private static double HighestHumid(WeatherReading reading) => (reading.DryBulbC + RoundingK) ?? 40;

    private static bool Within(double? value, double low, double high) => value is null || (value >= low && value <= high);

    private static double? Screen(double? value, double low, double high) => Within(value, low, high) ? value : null;
}
