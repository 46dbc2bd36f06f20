using WitherAdvisor.Api.Weather.Review;

namespace WitherAdvisor.Api.Weather;

/// <summary>Readings and rain totals of a stretch of time, and the best that all sources know of it.</summary>
public sealed record WeatherAnswer
{
    /// <summary>What callers gave of the kind asked for, by time; null is unknown.</summary>
    public required IReadOnlyList<ReadingInput> Readings { get; init; }

    /// <summary>Totals whose stretch touches the one asked for, by start; none with forecasts.</summary>
    public required IReadOnlyList<RainTotalInput> RainTotals { get; init; }

    /// <summary>The best of each instant from all sources, by time, whatever the kind asked for.</summary>
    public required IReadOnlyList<SourcedReadingAnswer> Best { get; init; }

    /// <summary>Stretches of it that nobody read; of the hours ahead, that nobody foretold. By quantity and time.</summary>
    public required IReadOnlyList<WeatherHoleAnswer> Holes { get; init; }

    /// <summary>How old the weather of the stretch is now.</summary>
    public required WeatherAgeAnswer Age { get; init; }
}
