using WitherAdvisor.Air;
using WitherAdvisor.ReferenceChecks.Cases;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>One value of moist air. Inputs: t, twb, to in °C; rh a fraction; p, pv in Pa; z in m; w in kg/kg; hd in K; flows in m³/s.</summary>
public sealed class MoistAirRunner : IRunner
{
    public string Name => "moist_air";

    public double Ours(ReferenceCase given)
    {
        Inputs inputs = given.Inputs;
        MoistAirFormulation formulation = Formulations.Of(inputs);
        return given.Quantity switch
        {
            "standard_pressure_pa" => StandardAtmosphere.PressurePa(inputs.Number("z")),
            "saturation_pressure_pa" => Saturation.PressurePa(inputs.Number("t")),
            "saturated_humidity_ratio" => MoistAir.SaturatedHumidityRatio(inputs.Number("t"), inputs.Number("p"), formulation),
            "saturated_enthalpy_j_per_kg" =>
                1000 * AirState.FromRelativeHumidity(inputs.Number("t"), 1, inputs.Number("p"), formulation).EnthalpyKJPerKg,
            "humidity_ratio_from_vapour_pressure" => MoistAir.HumidityRatio(inputs.Number("pv"), inputs.Number("p")),
            "enthalpy_j_per_kg" => 1000 * State(inputs, formulation).EnthalpyKJPerKg,
            "specific_volume_m3_per_kg" => State(inputs, formulation).SpecificVolumeM3PerKg,
            "humidity_ratio" or "humidity_ratio_from_wet_bulb" => State(inputs, formulation).HumidityRatio,
            "wet_bulb_c" => State(inputs, formulation).WetBulbC,
            "dew_point_c" => State(inputs, formulation).DewPointC,
            "relative_humidity" => State(inputs, formulation).RelativeHumidity,
            "relative_humidity_at_hygrometric_difference" => AtDifference(inputs, formulation).RelativeHumidity,
            "hygrometric_difference_gained_by_1_k_of_heat" => GainedByHeat(inputs, formulation),
            "dry_air_kg_per_s" => DryAirKgPerS(inputs, "m3_per_s", State(inputs, formulation)),
            "heating_kw" => HeatingKW(inputs, State(inputs, formulation)),
            "mixed_dry_bulb_c" => Mixed(inputs, formulation).DryBulbC,
            "mixed_wet_bulb_c" => Mixed(inputs, formulation).WetBulbC,
            "mixed_humidity_ratio" => Mixed(inputs, formulation).HumidityRatio,
            "mixed_enthalpy_j_per_kg" => 1000 * Mixed(inputs, formulation).EnthalpyKJPerKg,
            "mixed_relative_humidity" => Mixed(inputs, formulation).RelativeHumidity,
            _ => throw new InvalidDataException($"unknown quantity {given.Quantity}"),
        };
    }

    private static double PressurePa(Inputs inputs) =>
        inputs.Has("p") ? inputs.Number("p") : StandardAtmosphere.PressurePa(inputs.Number("z", 0));

    private static AirState State(Inputs inputs, MoistAirFormulation formulation)
    {
        double t = inputs.Number("t");
        return inputs.Has("w") ? new(t, inputs.Number("w"), PressurePa(inputs), formulation)
            : inputs.Has("twb") ? AirState.FromWetBulb(t, inputs.Number("twb"), PressurePa(inputs), formulation)
            : AirState.FromRelativeHumidity(t, inputs.Number("rh"), PressurePa(inputs), formulation);
    }

    private static AirState AtDifference(Inputs inputs, MoistAirFormulation formulation) =>
        AirState.FromWetBulb(inputs.Number("t"), inputs.Number("t") - inputs.Number("hd"), PressurePa(inputs), formulation);

    private static double GainedByHeat(Inputs inputs, MoistAirFormulation formulation)
    {
        AirState cool = State(inputs, formulation);
        return (cool with { DryBulbC = cool.DryBulbC + 1 }).HygrometricDifferenceK - cool.HygrometricDifferenceK;
    }

    private static double DryAirKgPerS(Inputs inputs, string flow, AirState state) => inputs.Number(flow) / state.SpecificVolumeM3PerKg;

    private static double HeatingKW(Inputs inputs, AirState ambient)
    {
        AirState heated = ambient with { DryBulbC = inputs.Number("to") };
        double dryAirKgPerS = DryAirKgPerS(inputs, "inlet_m3_per_s", ambient);
        return HotAirMix.HeatKW(ambient, heated, dryAirKgPerS * heated.SpecificVolumeM3PerKg);
    }

    private static AirState Mixed(Inputs inputs, MoistAirFormulation formulation)
    {
        AirState first = State(inputs, formulation);
        AirState second = AirState.FromRelativeHumidity(
            inputs.Number("other_t"), inputs.Number("other_rh"), PressurePa(inputs), formulation);
        return AdiabaticMixing.Mix(
            first, DryAirKgPerS(inputs, "m3_per_s", first), second, DryAirKgPerS(inputs, "other_m3_per_s", second));
    }
}
