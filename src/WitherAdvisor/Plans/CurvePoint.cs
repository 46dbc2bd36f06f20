namespace WitherAdvisor.Plans;

/// <summary>The bed at one time. Moistures are wet basis.</summary>
/// <param name="Hour">Hours from loading.</param>
/// <param name="BottomMoistureWetBasis">Tissue moisture of the leaf then at the mesh.</param>
/// <param name="MiddleMoistureWetBasis">Tissue moisture in the middle.</param>
/// <param name="TopMoistureWetBasis">Tissue moisture of the leaf then on top.</param>
/// <param name="MeanMoistureWetBasis">Moisture of the whole bed, surface water counted in.</param>
/// <param name="SurfaceWaterKgPerKg">Mean water on the leaf, kg per kg of the leaf as it was loaded without it.</param>
/// <param name="LeafWeightKg">Weight of all leaf on the trough, kg.</param>
/// <param name="ExhaustDryBulbC">Air leaving the top of the bed, °C.</param>
/// <param name="BottomLeafC">Temperature of the leaf then at the mesh, °C: between the wet bulb of its air, while it gives freely, and the dry bulb; null in advice kept from before it was reckoned.</param>
/// <param name="TopLeafC">The same of the leaf then on top, °C.</param>
public sealed record CurvePoint(
    double Hour,
    double BottomMoistureWetBasis,
    double MiddleMoistureWetBasis,
    double TopMoistureWetBasis,
    double MeanMoistureWetBasis,
    double SurfaceWaterKgPerKg,
    double LeafWeightKg,
    double ExhaustDryBulbC,
    double? BottomLeafC = null,
    double? TopLeafC = null);
