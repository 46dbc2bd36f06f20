using WitherAdvisor.Canopy;
using WitherAdvisor.Coefficients;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Soil;

namespace WitherAdvisor.Documentation;

/// <summary>Constants of what the weather does to the leaf.</summary>
internal static class WeatherConstants
{
    private const ModelTopic Topic = ModelTopic.Weather;

    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        new("crop_coefficient", Topic, "K_c of tea without shade", RootZone.Tea.CropCoefficient, "", CoefficientStatus.Published, "FAO-56, table 12"),
        new("depletion_fraction", Topic, "p: share of the soil water taken without stress", RootZone.Tea.DepletionFraction, "1", CoefficientStatus.Published, "FAO-56, table 22"),
        new("total_available_water", Topic, "TAW: water of the root zone", RootZone.Tea.TotalAvailableMm, "mm", CoefficientStatus.FromMemory, "1.2 m of roots (FAO-56, table 22: 0.9 to 1.5 m) in a loam (table 19, from memory)"),
        new("rain_share", Topic, "Share of rain that strikes the top leaf", CanopyRun.RainShare, "1", CoefficientStatus.FromMemory, "From memory"),
        new("exchange_share", Topic, "Share of the canopy's evaporation and dew that the top leaf has", CanopyRun.ExchangeShare, "1", CoefficientStatus.FromMemory, "From memory"),
        new("most_dew_of_an_hour", Topic, "Most dew of an hour", CanopyRun.MostDewMmPerH, "mm", CoefficientStatus.Derived, "What −60 W/m² of radiation can drive"),
        new("most_dew_of_a_night", Topic, "Most dew of a night", CanopyRun.MostDewMmPerNight, "mm", CoefficientStatus.Derived, "Grassland measured at 0.14 ± 0.12 mm (Ritter et al. 2019)"),
        new("rain_part", Topic, "Longest part of a gauge's stretch that a feed's rain is believed in", RainPattern.PartH, "h", CoefficientStatus.Derived, "Rain in models over land is some 3 h early (Dong et al. 2023, J. Climate 36; doi 10.5194/egusphere-2026-432): a part this long holds such an error"),
        new("forecast_agrees", Topic, "What a forecast may miss the air read last by and be let stand", MovedForecast.AgreeingK, "K", CoefficientStatus.FromMemory, "From memory"),
        new("forecast_halves", Topic, "Time in which half of what a forecast is moved by wears off", MovedForecast.HalvesInH, "h", CoefficientStatus.FromMemory, "From memory"),
        new("plucked_leaf_area", Topic, "One-sided area of plucked shoots", CarriedWater.LeafAreaM2PerKg, "m²/kg fresh", CoefficientStatus.FromMemory, "From memory"),
        new("most_surface_water", Topic, "Most water that plucked leaf holds", SurfaceWaterAtLoading.MostKgPerKg, "kg/kg", CoefficientStatus.FromMemory, "From memory: above it water runs off"),
        new("assumed_surface_water", Topic, "Water on the leaf where nothing tells of it", SurfaceWaterAtLoading.AssumedKgPerKg, "kg/kg", CoefficientStatus.FromMemory, "Between dry leaf and damp"),
        new("lowest_moisture", Topic, "Lowest moisture in fresh leaf, wet basis", TissueMoistureAtLoading.LowestWetBasis, "1", CoefficientStatus.Derived, "Under the published range of fresh leaf (74 to 83 %, Tocklai)"),
        new("highest_moisture", Topic, "Highest moisture in fresh leaf, wet basis", TissueMoistureAtLoading.HighestWetBasis, "1", CoefficientStatus.Published, "74 to 83 % of fresh leaf (Tocklai)"),
        new("coarse_shift", Topic, "What coarse leaf has more than fine, wet basis", TissueMoistureAtLoading.CoarseShift, ModelConstant.MoisturePoints, CoefficientStatus.FromMemory, "A tenth more of stalk, at 84.6 % against 76 to 77 %"),
        new("loss_on_the_way", Topic, "Water that leaf loses between plucking and trough, per hour", FieldToTrough.LossPerHour, "kg/kg", CoefficientStatus.FromMemory, "1.2 W/kg of respiration heat, all spent on evaporation"),
    ];
}
