namespace WitherAdvisor.Api.Weather;

/// <summary>Says what kind of readings the body holds, and what to keep of a CSV body with faults.</summary>
public sealed record NewReadingsQuery
{
    /// <summary>Whether the readings were observed or are a forecast.</summary>
    /// <example>observed</example>
    public required WeatherKind Kind { get; init; }

    /// <summary>
    /// Of a CSV body with rows that do not fit: all_or_none keeps nothing (so it is when left out), good_rows keeps the
    /// others and lists those refused. A JSON body is always taken whole or not at all.
    /// </summary>
    /// <example>all_or_none</example>
    public KeptRows? Keep { get; init; }
}
