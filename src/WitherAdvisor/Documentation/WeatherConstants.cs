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
        new("crop_coefficient", Topic, RootZone.Tea.CropCoefficient, "", CoefficientStatus.Published, "FAO-56, table 12"),
        new("depletion_fraction", Topic, RootZone.Tea.DepletionFraction, "1", CoefficientStatus.Published, "FAO-56, table 22"),
        new("total_available_water", Topic, RootZone.Tea.TotalAvailableMm, "mm", CoefficientStatus.FromMemory, "1.2 m of roots (FAO-56, table 22: 0.9 to 1.5 m) in a loam (table 19, from memory)"),
        new("rain_share", Topic, CanopyRun.RainShare, "1", CoefficientStatus.FromMemory, "From memory"),
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
