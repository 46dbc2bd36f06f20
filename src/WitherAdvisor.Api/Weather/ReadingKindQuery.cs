using WitherAdvisor.Store;

namespace WitherAdvisor.Api.Weather;

/// <summary>Says what kind of readings the body holds.</summary>
public sealed record ReadingKindQuery
{
    /// <summary>Whether the readings were taken or foretold.</summary>
    /// <example>observed</example>
    public required WeatherKind Kind { get; init; }
}
