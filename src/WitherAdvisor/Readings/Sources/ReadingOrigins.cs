namespace WitherAdvisor.Readings.Sources;

/// <summary>Where each value of a composed reading is from; null where the value is unknown.</summary>
/// <param name="Humidity">Of dew point, wet bulb and relative humidity: one value told in three ways.</param>
public sealed record ReadingOrigins(
    ValueOrigin? DryBulb,
    ValueOrigin? Humidity,
    ValueOrigin? Rain,
    ValueOrigin? Wind,
    ValueOrigin? StationPressure,
    ValueOrigin? Shortwave);
