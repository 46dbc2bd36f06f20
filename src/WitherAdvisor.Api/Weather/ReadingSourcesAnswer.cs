namespace WitherAdvisor.Api.Weather;

/// <summary>Where each value of a reading is from; null where the value is unknown.</summary>
public sealed record ReadingSourcesAnswer
{
    /// <summary>Of the dry bulb.</summary>
    public required ValueSourceAnswer? DryBulb { get; init; }

    /// <summary>Of dew point, wet bulb and relative humidity: one value told in three ways.</summary>
    public required ValueSourceAnswer? Humidity { get; init; }

    /// <summary>Of rain.</summary>
    public required ValueSourceAnswer? Rain { get; init; }

    /// <summary>Of wind.</summary>
    public required ValueSourceAnswer? Wind { get; init; }

    /// <summary>Of station pressure.</summary>
    public required ValueSourceAnswer? StationPressure { get; init; }

    /// <summary>Of radiation.</summary>
    public required ValueSourceAnswer? Shortwave { get; init; }
}
