namespace WitherAdvisor.Outcomes;

/// <summary>Air under the mesh from an hour on, as set or as measured. Null is unknown.</summary>
/// <param name="FromHour">Hours from loading.</param>
/// <param name="DryBulbC">Dry bulb.</param>
/// <param name="WetBulbC">Wet bulb.</param>
/// <param name="HygrometricDifferenceK">Dry bulb minus wet bulb, where the difference is what was read.</param>
/// <param name="FanShare">Share of the trough's full airflow, 0 to 1.</param>
public sealed record AirHeld(double FromHour, double? DryBulbC, double? WetBulbC, double? HygrometricDifferenceK, double? FanShare)
{
    /// <summary>Dry bulb minus wet bulb, as read or from the two bulbs; null where neither is known.</summary>
    public double? DifferenceK => HygrometricDifferenceK ?? (DryBulbC - WetBulbC);
}
