using WitherAdvisor.Documentation;

namespace WitherAdvisor.Words.Model;

/// <summary>The equations of the model, in words.</summary>
public static class EquationWording
{
    /// <summary>What it gives.</summary>
    public static string Title(string code) => code switch
    {
        "saturation_pressure" => "Saturation pressure of water vapour over water and ice",
        "enhancement" => "What air adds to it: moist air as real gas",
        "humidity_ratio" => "Humidity ratio",
        "wet_bulb" => "Thermodynamic wet bulb",
        "enthalpy" => "Enthalpy, kJ per kg of dry air",
        "specific_volume" => "Specific volume, m³ per kg of dry air",
        "pressure_at_elevation" => "Pressure at an elevation, where none was measured",
        "hot_air_share" => "Share of hot air in the mix, by mass",
        "reference_evapotranspiration" => "Reference evapotranspiration by the hour, mm",
        "soil_stress" => "Drought stress of the bush from its soil water",
        "tissue_moisture" => "Water in the leaf, wet basis",
        "canopy_store" => "Water on the leaf of the bush, mm per leaf area",
        "fog_deposit" => "What fog lays on leaf, mm by the hour",
        "rain_of_steps" => "Of how long a time a reading's rain is",
        "radiation_from_temperature" => "Radiation of a day where nobody measured it",
        "demand_error" => "Standard deviation of evapotranspiration where parts of the weather are guessed, as a share",
        "moved_forecast" => "The air of the coming hours, dry bulb and dew point alike, °C",
        "surface_water" => "Water on plucked leaf, kg/kg",
        "deficit" => "What the air in a layer can take up, Pa",
        "wet_fraction" => "Wet share of the leaf",
        "cuticle" => "Conductance of the leaf's cuticle, m/s: falls as the leaf dries",
        "film" => "What the air film would pass, times (s + γ)",
        "surface_drying" => "Water off the leaf, kg per kg dry and second",
        "tissue_drying" => "Water out of the leaf, kg per kg dry and second",
        "march" => "Air on its way up through the bed",
        "leaf_temperature" => "Temperature of the leaf by layer, °C",
        "turn" => "A turn by hand",
        "heat" => "Heat mixed in, kW",
        "moisture_after" => "Moisture after a wither from the outturn",
        "fan_power" => "Power of the fan, kW",
        "choice" => "How a plan is chosen",
        "cases" => "Cases that may be true",
        "percentiles" => "P10, P50 and P90 from few cases",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this equation."),
    };

    /// <summary>As text; in words where only words tell the rule.</summary>
    public static string Formula(ModelEquation equation) => equation.Formula ?? Rule(equation.Code);

    private static string Rule(string code) => code switch
    {
        "choice" => "the site's wanted air where it is ready in time; gentler (less heat, then a slower fan, then a fan that stands part of the time) where it would be ready too soon, by just as much; harsher where it would be late, as far as the costs below pay for it",
        "rain_of_steps" => "as the reading says; else the step of a regular row of readings, up to 6 h; else the hour before",
        "cases" => "mirrored draws of a lattice, bent to normal",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No words for this rule."),
    };
}
