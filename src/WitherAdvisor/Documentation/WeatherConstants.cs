using WitherAdvisor.Canopy;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Evaporation;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Soil;

namespace WitherAdvisor.Documentation;

/// <summary>Constants of what the weather does to the leaf.</summary>
internal static class WeatherConstants
{
    private const ModelTopic Topic = ModelTopic.Weather;
    private const string Comparisons = "Standard error of ET_o against ET_o of every part measured, from memory of comparisons of FAO-56, ch. 3";

    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        new("crop_coefficient", Topic, RootZone.Tea.CropCoefficient, "", CoefficientStatus.Published, "FAO-56, table 12"),
        new("depletion_fraction", Topic, RootZone.Tea.DepletionFraction, "1", CoefficientStatus.Published, "FAO-56, table 22"),
        new("total_available_water", Topic, RootZone.Tea.TotalAvailableMm, "mm", CoefficientStatus.FromMemory, "1.2 m of roots (FAO-56, table 22: 0.9 to 1.5 m) in a loam (table 19, from memory)"),
        new("rain_share", Topic, CanopyRun.RainShare, "1", CoefficientStatus.FromMemory, "From memory"),
        new("caught_share", Topic, CanopyRun.CaughtShare, "1", CoefficientStatus.FromMemory, "From memory; the form after Merriam 1960 and Aston 1979"),
        new("fog_rate", Topic, FogDeposit.UsualMmPerH, "mm", CoefficientStatus.FromMemory, "0.005 to 0.1 mm/h on low vegetation, at 2 m/s, growing with wind (deposition after Lovett 1984; sizes from memory)"),
        new("fog_error", Topic, FogDeposit.ErrorFactor, "", CoefficientStatus.Derived, "From that range"),
        new("fog_humidity", Topic, FogDeposit.FogHumidity, "1", CoefficientStatus.CommonPractice, "With a visibility under 1 km, which is fog to the World Meteorological Organization"),
        new("saturated_humidity", Topic, FogDeposit.SaturatedHumidity, "1", CoefficientStatus.FromMemory, "For three hours, where nobody tells of fog"),
        new("radiation_per_root_kelvin", Topic, Sunlight.UnknownPerRootK, "", CoefficientStatus.Published, "FAO-56, eq. 50: 0.16 inland and 0.19 by the coast, half-way where nobody says"),
        new("least_clearness", Topic, NetRadiation.LeastClearness, "1", CoefficientStatus.Published, "ASCE-EWRI 2005, eq. 18 (from memory)"),
        new("usual_rain", Topic, WaterStressHistory.UsualRainMmPerH, "mm", CoefficientStatus.FromMemory, "3.6 mm a day in tea districts, for hours of which nothing is known"),
        new("error_without_radiation", Topic, DemandError.WithoutRadiation, "1", CoefficientStatus.FromMemory, Comparisons),
        new("error_without_humidity", Topic, DemandError.WithoutHumidity, "1", CoefficientStatus.FromMemory, Comparisons),
        new("error_without_wind", Topic, DemandError.WithoutWind, "1", CoefficientStatus.FromMemory, Comparisons),
        new("error_without_wind_in_drought", Topic, DemandError.WithoutWindInDrySpell, "1", CoefficientStatus.FromMemory, Comparisons),
        new("error_with_temperature_alone", Topic, DemandError.TemperatureAlone, "1", CoefficientStatus.FromMemory, Comparisons),
        new("lasting_error", Topic, DemandError.LastingShare, "1", CoefficientStatus.FromMemory, "From memory: climates differ, and so do the errors of a place from one day to the next"),
        new("exchange_share", Topic, CanopyRun.ExchangeShare, "1", CoefficientStatus.FromMemory, "From memory"),
        new("most_dew_of_an_hour", Topic, CanopyRun.MostDewMmPerH, "mm", CoefficientStatus.Derived, "What −60 W/m² of radiation can drive"),
        new("most_dew_of_a_night", Topic, CanopyRun.MostDewMmPerNight, "mm", CoefficientStatus.Derived, "Grassland measured at 0.14 ± 0.12 mm (Ritter et al. 2019)"),
        new("rain_part", Topic, RainPattern.PartH, "h", CoefficientStatus.Derived, "Rain in models over land is some 3 h early (Dong et al. 2023, J. Climate 36; doi 10.5194/egusphere-2026-432): a part this long holds such an error"),
        new("forecast_agrees", Topic, BiasCorrectedForecast.AgreeingK, "K", CoefficientStatus.FromMemory, "From memory"),
        new("forecast_halves", Topic, BiasCorrectedForecast.HalvesInH, "h", CoefficientStatus.FromMemory, "From memory"),
        new("plucked_leaf_area", Topic, CarriedWater.LeafAreaM2PerKg, "m²/kg fresh", CoefficientStatus.FromMemory, "From memory"),
        new("most_surface_water", Topic, SurfaceWaterAtLoading.MostKgPerKg, "kg/kg", CoefficientStatus.FromMemory, "From memory: above it water runs off"),
        new("assumed_surface_water", Topic, SurfaceWaterAtLoading.AssumedKgPerKg, "kg/kg", CoefficientStatus.FromMemory, "Between dry leaf and damp"),
        new("lowest_moisture", Topic, TissueMoistureAtLoading.LowestWetBasis, "1", CoefficientStatus.Derived, "Under the published range of fresh leaf (74 to 83 %, Tocklai)"),
        new("highest_moisture", Topic, TissueMoistureAtLoading.HighestWetBasis, "1", CoefficientStatus.Published, "74 to 83 % of fresh leaf (Tocklai)"),
        new("coarse_shift", Topic, TissueMoistureAtLoading.CoarseShift, ModelConstant.MoisturePoints, CoefficientStatus.FromMemory, "A tenth more of stalk, at 84.6 % against 76 to 77 %"),
        new("loss_on_the_way", Topic, FieldToTrough.LossPerHour, "kg/kg", CoefficientStatus.FromMemory, "1.2 W/kg of respiration heat, all spent on evaporation"),
    ];
}
