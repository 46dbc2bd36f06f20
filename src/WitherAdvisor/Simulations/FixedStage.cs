namespace WitherAdvisor.Simulations;

/// <summary>A stage whose air the caller fixes. With neither value the ambient air is blown as it is.</summary>
/// <param name="ToHour">End of the stage, hours from loading; it starts where the one before ends.</param>
/// <param name="PlenumDryBulbC">Plenum dry bulb to hold, °C.</param>
/// <param name="HygrometricDifferenceK">Hygrometric difference to hold under the mesh, K.</param>
public sealed record FixedStage(double ToHour, double? PlenumDryBulbC = null, double? HygrometricDifferenceK = null);
