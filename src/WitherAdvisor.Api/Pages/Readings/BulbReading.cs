namespace WitherAdvisor.Api.Pages.Readings;

/// <summary>Air as read, turned into what the model knows.</summary>
/// <param name="DryBulbC">°C.</param>
/// <param name="WetBulbC">Thermodynamic wet bulb, °C; null where it was not read.</param>
/// <param name="RelativeHumidity">Fraction; null where it was not read.</param>
public sealed record BulbReading(double DryBulbC, double? WetBulbC, double? RelativeHumidity);
