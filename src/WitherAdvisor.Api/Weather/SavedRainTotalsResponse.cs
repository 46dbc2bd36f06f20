namespace WitherAdvisor.Api.Weather;

/// <summary>What became of the rain totals sent.</summary>
public sealed record SavedRainTotalsResponse
{
    /// <summary>Totals in the body; all of them are kept.</summary>
    /// <example>3</example>
    public required int Received { get; init; }
}
