using WitherAdvisor.Evaporation;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>
/// FAO-56's air and sun. Inputs: z in m; t, dry, wet, tmax, tmin in °C; rh, rh_max, rh_min fractions; ea in kPa; wind in
/// m/s at height in m; doy; lat, lon in degrees north and east; utc the hour in the middle; rs, g in MJ/m²; sun in h.
/// </summary>
public sealed class FaoRunner : IRunner
{
    public string Name => "fao56";

    public double Ours(ReferenceCase given)
    {
        Inputs inputs = given.Inputs;
        return given.Quantity switch
        {
            "pressure_kpa" => FaoAir.PressureKPa(inputs.Number("z")),
            "psychrometric_constant_kpa_per_k" => FaoAir.PsychrometricConstantKPaPerK(FaoAir.PressureKPa(inputs.Number("z"))),
            "saturation_kpa" => FaoAir.SaturationKPa(inputs.Number("t")),
            "mean_saturation_kpa" => (FaoAir.SaturationKPa(inputs.Number("tmax")) + FaoAir.SaturationKPa(inputs.Number("tmin"))) / 2,
            "slope_kpa_per_k" => FaoAir.SlopeKPaPerK(FaoAir.SaturationKPa(inputs.Number("t")), inputs.Number("t")),
            "psychrometer_vapour_kpa" => FaoAir.VapourPressureFromPsychrometerKPa(
                inputs.Number("dry"), inputs.Number("wet"), FaoAir.PressureKPa(inputs.Number("z"))),
            "vapour_of_day_kpa" => FaoDay.VapourKPa(inputs),
            "wind_at_2_m" => FaoAir.WindAtTwoMetres(inputs.Number("wind"), inputs.Number("height")),
            _ when given.Quantity.StartsWith("hour_", StringComparison.Ordinal) => FaoHour.Of(inputs).Value(given.Quantity),
            _ => FaoDay.Of(inputs).Value(given.Quantity),
        };
    }
}
