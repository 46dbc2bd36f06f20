namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>Which inputs matter most for a batch, by its newest advice.</summary>
public sealed record BatchSensitivityResponse
{
    /// <summary>Id of the advice whose inputs were taken.</summary>
    /// <example>0199a1b2-7c3d-7e4f-8a5b-6c7d8e9f0a1b</example>
    public required string Advice { get; init; }

    /// <summary>What each input does; null where no plan is advised that reaches its target.</summary>
    public required SensitivityResponse? Sensitivity { get; init; }

    /// <summary>Why there is none; null where there is one.</summary>
    /// <example>There is no plan that reaches the target, so there are no hours to compare.</example>
    public required string? Reason { get; init; }
}
