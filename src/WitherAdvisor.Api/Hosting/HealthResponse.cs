namespace WitherAdvisor.Api.Hosting;

/// <summary>How the service is.</summary>
public sealed record HealthResponse
{
    /// <summary>"ok" where the store answers.</summary>
    /// <example>ok</example>
    public required string Status { get; init; }

    /// <summary>Version of the model.</summary>
    /// <example>0.1.0</example>
    public required string ModelVersion { get; init; }
}
