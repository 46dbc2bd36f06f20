using WitherAdvisor.Evaporation;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>A day of FAO-56 worked through: sun, radiation, evapotranspiration. MJ/m², kPa, mm.</summary>
internal sealed record FaoDay(SolarDay Sun, double Sunlight, double ClearSky, double Longwave, double EvapotranspirationMm)
{
    public static FaoDay Of(Inputs inputs)
    {
        SolarDay sun = SolarDay.Of((int)inputs.Number("doy"), inputs.Number("lat"));
        if (!inputs.Has("tmax"))
        {
            return new(sun, 0, 0, 0, 0);
        }

        double sunlight = Evaporation.Sunlight.FromSunshine(sun.RadiationMJPerM2, inputs.Number("sun"), sun.DaylightH);
        double clearSky = Evaporation.Sunlight.ClearSky(sun.RadiationMJPerM2, inputs.Number("z"));
        double vapour = VapourKPa(inputs);
        double longwave = NetRadiation.LongwaveOfDay(
            inputs.Number("tmax"), inputs.Number("tmin"), vapour, NetRadiation.Clearness(sunlight, clearSky));
        double available = NetRadiation.Shortwave(sunlight) - longwave - inputs.Number("g", 0);
        double mm = ReferenceEvapotranspiration.OfDayMm(
            inputs.Number("tmax"), inputs.Number("tmin"), vapour,
            inputs.Number("height") > 2 ? FaoAir.WindAtTwoMetres(inputs.Number("wind"), inputs.Number("height")) : inputs.Number("wind"),
            available, FaoAir.PressureKPa(inputs.Number("z")));
        return new(sun, sunlight, clearSky, longwave, mm);
    }

    public static double VapourKPa(Inputs inputs) => inputs.Has("ea")
        ? inputs.Number("ea")
        : FaoAir.VapourPressureOfDayKPa(inputs.Number("tmin"), inputs.Number("tmax"), inputs.Number("rh_max"), inputs.Number("rh_min"));

    public double Value(string quantity) => quantity switch
    {
        "inverse_distance" => Sun.InverseDistance,
        "declination_rad" => Sun.DeclinationRad,
        "sunset_angle_rad" => Sun.SunsetAngleRad,
        "seasonal_correction_h" => Sun.SeasonalCorrectionH,
        "outside_mj_per_m2" => Sun.RadiationMJPerM2,
        "daylight_h" => Sun.DaylightH,
        "sunlight_mj_per_m2" => Sunlight,
        "clear_sky_mj_per_m2" => ClearSky,
        "net_shortwave_mj_per_m2" => NetRadiation.Shortwave(Sunlight),
        "net_longwave_mj_per_m2" => Longwave,
        "net_radiation_mj_per_m2" => NetRadiation.Shortwave(Sunlight) - Longwave,
        "evapotranspiration_mm" => EvapotranspirationMm,
        _ => throw new InvalidDataException($"unknown quantity {quantity}"),
    };
}
