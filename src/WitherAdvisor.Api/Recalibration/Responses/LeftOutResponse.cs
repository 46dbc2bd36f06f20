namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>An outcome that was not used.</summary>
public sealed record LeftOutResponse
{
    /// <summary>Its batch.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    public required string Batch { get; init; }

    /// <summary>Why, in snake_case.</summary>
    /// <example>weather_unknown</example>
    public required string Code { get; init; }

    /// <summary>The same for people.</summary>
    /// <example>Too little is known of the weather before plucking, and nobody measured or felt the water on the leaf.</example>
    public required string Text { get; init; }
}
