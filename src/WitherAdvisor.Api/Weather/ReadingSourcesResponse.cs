namespace WitherAdvisor.Api.Weather;

/// <summary>Where each value of a reading is from; null where the value is unknown.</summary>
public sealed record ReadingSourcesResponse
{
    /// <summary>Of the dry bulb.</summary>
    public required ValueSourceResponse? DryBulb { get; init; }

    /// <summary>Dew point, wet bulb or relative humidity: one value in three forms.</summary>
    public required ValueSourceResponse? Humidity { get; init; }

    /// <summary>Of rain.</summary>
    public required ValueSourceResponse? Rain { get; init; }

    /// <summary>Of wind.</summary>
    public required ValueSourceResponse? Wind { get; init; }

    /// <summary>Of station pressure.</summary>
    public required ValueSourceResponse? StationPressure { get; init; }

    /// <summary>Of radiation.</summary>
    public required ValueSourceResponse? Shortwave { get; init; }
}
