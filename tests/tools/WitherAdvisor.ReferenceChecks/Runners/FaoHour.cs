using WitherAdvisor.Evaporation;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>An hour of FAO-56 worked through. MJ/m², kPa, mm. By night R_s/R_so is stated, by day it follows from the light.</summary>
internal sealed record FaoHour(
    double Vapour, double HourAngle, double Outside, double ClearSky, double Clearness, double Net, double EvapotranspirationMm)
{
    public static FaoHour Of(Inputs inputs)
    {
        SolarDay sun = SolarDay.Of((int)inputs.Number("doy"), inputs.Number("lat"));
        double middle = sun.HourAngleRad(inputs.Number("utc"), inputs.Number("lon"));
        double outside = sun.RadiationBetweenMJPerM2(middle - Math.PI / 24, middle + Math.PI / 24);
        double clearSky = Sunlight.ClearSky(outside, inputs.Number("z"));
        double clearness = inputs.Has("clearness") ? inputs.Number("clearness") : NetRadiation.Clearness(inputs.Number("rs"), clearSky);
        double t = inputs.Number("t");
        double vapour = inputs.Number("rh") * FaoAir.SaturationKPa(t);
        double net = NetRadiation.Shortwave(inputs.Number("rs")) - NetRadiation.LongwaveOfHour(t, vapour, clearness);
        HourOfAir hour = HourOfAir.Of(t, vapour, inputs.Number("wind"), net, isDay: outside > 0, FaoAir.PressureKPa(inputs.Number("z")));
        return new(vapour, middle, outside, clearSky, clearness, net, ReferenceEvapotranspiration.OfHourMm(hour));
    }

    public double Value(string quantity) => quantity switch
    {
        "hour_vapour_kpa" => Vapour,
        "hour_angle_rad" => HourAngle,
        "hour_outside_mj_per_m2" => Outside,
        "hour_clear_sky_mj_per_m2" => ClearSky,
        "hour_clearness" => Clearness,
        "hour_net_radiation_mj_per_m2" => Net,
        "hour_evapotranspiration_mm" => EvapotranspirationMm,
        _ => throw new InvalidDataException($"unknown quantity {quantity}"),
    };
}
