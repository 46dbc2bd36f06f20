namespace WitherAdvisor.Api.Weather;

/// <summary>Readings and rain totals of a stretch of time.</summary>
public sealed record WeatherAnswer
{
    /// <summary>By time; null is unknown.</summary>
    public required IReadOnlyList<ReadingInput> Readings { get; init; }

    /// <summary>Totals whose stretch touches the one asked for, by start; none with forecasts.</summary>
    public required IReadOnlyList<RainTotalInput> RainTotals { get; init; }
}
