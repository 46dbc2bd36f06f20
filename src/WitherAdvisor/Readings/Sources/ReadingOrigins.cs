namespace WitherAdvisor.Readings.Sources;

/// <summary>Where each value of a composed reading is from; null where the value is unknown.</summary>
/// <param name="Humidity">Dew point, wet bulb or relative humidity: one value in three forms.</param>
public sealed record ReadingOrigins(
    ValueOrigin? DryBulb,
    ValueOrigin? Humidity,
    ValueOrigin? Rain,
    ValueOrigin? Wind,
    ValueOrigin? StationPressure,
    ValueOrigin? Shortwave);
