using WitherAdvisor.Api.Weather.Review;

namespace WitherAdvisor.Api.Weather;

/// <summary>Readings and rain totals of a stretch of time, and the best that all sources know of it.</summary>
public sealed record WeatherResponse
{
    /// <summary>What callers gave of the kind asked for, by time; null is unknown.</summary>
    public required IReadOnlyList<ReadingRequest> Readings { get; init; }

    /// <summary>Totals whose stretch touches the one asked for, by start; none with forecasts.</summary>
    public required IReadOnlyList<RainTotalRequest> RainTotals { get; init; }

    /// <summary>The best of each instant from all sources, by time, whatever the kind asked for.</summary>
    public required IReadOnlyList<SourcedReadingResponse> Best { get; init; }

    /// <summary>Gaps: hours gone by without a reading, hours ahead without a forecast. By quantity and time.</summary>
    public required IReadOnlyList<WeatherHoleResponse> Holes { get; init; }

    /// <summary>How old the weather of the stretch is now.</summary>
    public required WeatherAgeResponse Age { get; init; }
}
