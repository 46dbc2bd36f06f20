namespace WitherAdvisor.Recalibration;

/// <summary>Moisture of leaf (wet basis) by height in the bed. Null where no sample was taken.</summary>
/// <param name="BottomWetBasis">At the mesh.</param>
/// <param name="MiddleWetBasis">In the middle.</param>
/// <param name="TopWetBasis">On top.</param>
public sealed record MoistureByHeight(double? BottomWetBasis, double? MiddleWetBasis, double? TopWetBasis);
