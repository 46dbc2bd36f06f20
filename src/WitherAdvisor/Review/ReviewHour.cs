namespace WitherAdvisor.Review;

/// <summary>The weather at one whole hour, and what leaf would carry.</summary>
/// <param name="Time">Rain is of the hour before it, all else of this instant.</param>
/// <param name="IsAhead">It had not come when the weather was reviewed.</param>
/// <param name="DryBulbC">°C.</param>
/// <param name="DewPointC">°C.</param>
/// <param name="WetBulbC">Thermodynamic wet bulb at the site's pressure, °C.</param>
/// <param name="HygrometricDifferenceK">Dry bulb minus wet bulb, K.</param>
/// <param name="RainMm">mm.</param>
/// <param name="WindMPerS">At 10 m, m/s.</param>
/// <param name="SurfaceWaterKgPerKg">Water on the leaf had it been plucked then, kg per kg of leaf without it.</param>
public sealed record ReviewHour(
    DateTimeOffset Time,
    bool IsAhead,
    ReviewValue DryBulbC,
    ReviewValue DewPointC,
    ReviewValue WetBulbC,
    ReviewValue HygrometricDifferenceK,
    ReviewValue RainMm,
    ReviewValue WindMPerS,
    ReviewValue SurfaceWaterKgPerKg);
