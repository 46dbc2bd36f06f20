using WitherAdvisor.Air;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>Whether an instrument and its two bulbs fit each other.</summary>
internal static class InstrumentChecks
{
    /// <summary>Of a reading that brings no pressure: the least a site may have, since thin air allows the driest pairs.</summary>
    private const double LeastPressureHpa = 500;

    /// <summary>Below it a bulb may carry ice, which reads otherwise.</summary>
    private const double LowestWetBulbC = 0;

    public static IEnumerable<FieldError> Of(ReadingRequest reading)
    {
        if (reading.Instrument is not { } instrument)
        {
            yield break;
        }

        if (reading is not { DryBulbC: { } dryC, WetBulbC: { } wetC })
        {
            yield return FieldError.Of("instrument", $"\"{instrument.ToString().ToLowerInvariant()}\"", "left out where dry_bulb_c and wet_bulb_c are not both given");
        }
        else if (wetC < LowestWetBulbC)
        {
            yield return FieldError.Of("wet_bulb_c", $"{wetC}", $"{LowestWetBulbC} °C or above with an instrument, as ice reads otherwise");
        }
        else if (wetC <= dryC && IsDrierThanAir(dryC, wetC, reading.StationPressureHpa ?? LeastPressureHpa, instrument))
        {
            yield return FieldError.Of("wet_bulb_c", $"{wetC}", $"a wet bulb that air at {dryC} °C can show on this instrument; is the wick wet?");
        }
    }

    private static bool IsDrierThanAir(double dryC, double wetC, double pressureHpa, PsychrometerKind instrument) =>
        Psychrometer.VapourPressurePa(dryC, wetC, pressureHpa * Pressure.PascalPerHectopascal, instrument) <= 0;
}
