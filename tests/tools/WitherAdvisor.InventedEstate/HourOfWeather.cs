namespace WitherAdvisor.InventedEstate;

/// <summary>One reading: temperatures, wind and pressure at its time; rain and radiation of the hour before it.</summary>
public sealed record HourOfWeather(
    DateTimeOffset Time,
    double DryBulbC,
    double DewPointC,
    double RainMm,
    double WindMPerS,
    double StationPressureHpa,
    double ShortwaveWPerM2);
