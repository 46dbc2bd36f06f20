using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>An outcome that no coefficients explain, so it hardly counted. Check it in the paper log.</summary>
[Computed]
public sealed record DoubtfulResponse
{
    /// <summary>Its batch.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    public required string Batch { get; init; }

    /// <summary>Chance that it is as it was written down.</summary>
    /// <example>4.5</example>
    public required double ChanceSoundPercent { get; init; }
}
