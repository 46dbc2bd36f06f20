using WitherAdvisor.Air;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>All that follows from dry bulb, relative humidity and elevation; columns as psychrolib's table has them.</summary>
public sealed class AirStateRunner : IRunner
{
    public string Name => "air_state";

    public double Ours(ReferenceCase given)
    {
        Inputs row = given.Inputs;
        AirState air = AirState.FromRelativeHumidity(
            row.Number("tdb_C"), row.Number("rh"), row.Number("pressure_Pa"), Formulations.Of(row));
        return given.Quantity switch
        {
            "pressure_Pa" => StandardAtmosphere.PressurePa(row.Number("altitude_m")),
            "psat_tdb_Pa" => Saturation.PressurePa(air.DryBulbC),
            "pv_Pa" => air.VapourPressurePa,
            "w_kg_per_kgda" => air.HumidityRatio,
            "twb_C" => air.WetBulbC,
            "tdp_C" => air.DewPointC,
            "h_kJ_per_kgda" => air.EnthalpyKJPerKg,
            "v_m3_per_kgda" => air.SpecificVolumeM3PerKg,
            "rho_kg_per_m3" => air.DensityKgPerM3,
            "vpd_Pa" => air.VapourPressureDeficitPa,
            "w_sat_kg_per_kgda" => MoistAir.SaturatedHumidityRatio(air.DryBulbC, air.PressurePa, air.Formulation),
            "depression_C" => air.HygrometricDifferenceK,
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }
}
