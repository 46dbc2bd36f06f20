namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>An invented batch and which inputs matter most for it.</summary>
public sealed record CardBatchResponse
{
    /// <summary>As the invented estate names it.</summary>
    /// <example>rain-wet</example>
    public required string Batch { get; init; }

    /// <summary>For people.</summary>
    /// <example>Leaf after days of rain</example>
    public required string Title { get; init; }

    /// <summary>What each input does.</summary>
    public required SensitivityResponse Sensitivity { get; init; }
}
