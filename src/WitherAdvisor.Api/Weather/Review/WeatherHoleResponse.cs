using WitherAdvisor.Fields.Json;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>A stretch that nobody read, longer than is drawn across.</summary>
[Computed]
public sealed record WeatherHoleResponse
{
    /// <summary>What is missing.</summary>
    /// <example>rain</example>
    public required WeatherQuantity Quantity { get; init; }

    /// <summary>Start, exclusive.</summary>
    /// <example>2026-03-01T10:00:00+05:30</example>
    public required DateTimeOffset From { get; init; }

    /// <summary>End, inclusive.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset To { get; init; }

    /// <summary>Its length.</summary>
    /// <example>3</example>
    public required double LengthHours { get; init; }

    /// <summary>What stands in: forecast, or unknown.</summary>
    /// <example>forecast</example>
    public required ValueStanding Instead { get; init; }
}
