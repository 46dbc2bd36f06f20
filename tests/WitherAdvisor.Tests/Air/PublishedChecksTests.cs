using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

/// <summary>Handbook tables, worked examples and libraries; each line of the file names its own source and tolerance.</summary>
public sealed class PublishedChecksTests
{
    public static TheoryData<ReferenceRow> Checks => [.. ReferenceRow.ReadAll("moist-air/checks.csv")];

    [Theory]
    [MemberData(nameof(Checks))]
    public void Moist_air_agrees_with_the_published_value(ReferenceRow check)
    {
        double expected = check.Number("expected");
        double tolerance = check.Number("tolerance") * (check.Text("tolerance_kind") == "relative" ? Math.Abs(expected) : 1);
        MoistAirFormulation[] formulations = check.Text("formulation") switch
        {
            "real_gas" => [MoistAirFormulation.RealGas],
            "ideal_gas" => [MoistAirFormulation.IdealGas],
            "any" => [MoistAirFormulation.RealGas, MoistAirFormulation.IdealGas],
            string other => throw new InvalidDataException($"unknown formulation {other}"),
        };

        foreach (MoistAirFormulation formulation in formulations)
        {
            double actual = Compute(check.Text("quantity"), check.Inputs("inputs"), formulation);
            Assert.InRange(actual, expected - tolerance, expected + tolerance);
        }
    }

    private static double Compute(string quantity, ReferenceRow inputs, MoistAirFormulation formulation) => quantity switch
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
        "dry_air_kg_per_s" => DryAirKgPerS(inputs, "m3_per_s", State(inputs, formulation)),
        "heating_kw" => HeatingKW(inputs, State(inputs, formulation)),
        "mixed_dry_bulb_c" => Mixed(inputs, formulation).DryBulbC,
        "mixed_wet_bulb_c" => Mixed(inputs, formulation).WetBulbC,
        "mixed_humidity_ratio" => Mixed(inputs, formulation).HumidityRatio,
        "mixed_enthalpy_j_per_kg" => 1000 * Mixed(inputs, formulation).EnthalpyKJPerKg,
        "mixed_relative_humidity" => Mixed(inputs, formulation).RelativeHumidity,
        _ => throw new InvalidDataException($"unknown quantity {quantity}"),
    };

    private static AirState State(ReferenceRow inputs, MoistAirFormulation formulation)
    {
        double pressurePa = inputs.Cells.ContainsKey("p") ? inputs.Number("p") : StandardAtmosphere.SeaLevelPressurePa;
        if (inputs.Cells.ContainsKey("w"))
        {
            return new(inputs.Number("t"), inputs.Number("w"), pressurePa, formulation);
        }

        return inputs.Cells.ContainsKey("twb")
            ? AirState.FromWetBulb(inputs.Number("t"), inputs.Number("twb"), pressurePa, formulation)
            : AirState.FromRelativeHumidity(inputs.Number("t"), inputs.Number("rh"), pressurePa, formulation);
    }

    private static AirState AtDifference(ReferenceRow inputs, MoistAirFormulation formulation) =>
        AirState.FromWetBulb(
            inputs.Number("t"), inputs.Number("t") - inputs.Number("hd"), inputs.Number("p"), formulation);

    private static double DryAirKgPerS(ReferenceRow inputs, string flow, AirState state) =>
        inputs.Number(flow) / state.SpecificVolumeM3PerKg;

    private static double HeatingKW(ReferenceRow inputs, AirState ambient)
    {
        AirState heated = ambient with { DryBulbC = inputs.Number("to") };
        double dryAirKgPerS = DryAirKgPerS(inputs, "inlet_m3_per_s", ambient);
        return HotAirMix.HeatKW(ambient, heated, dryAirKgPerS * heated.SpecificVolumeM3PerKg);
    }

    private static AirState Mixed(ReferenceRow inputs, MoistAirFormulation formulation)
    {
        AirState first = State(inputs, formulation);
        AirState second = AirState.FromRelativeHumidity(
            inputs.Number("other_t"), inputs.Number("other_rh"), inputs.Number("p"), formulation);
        return AdiabaticMixing.Mix(
            first, DryAirKgPerS(inputs, "m3_per_s", first), second, DryAirKgPerS(inputs, "other_m3_per_s", second));
    }
}
