namespace WitherAdvisor.Api.Coefficients;

/// <summary>The coefficients of the model in its default set.</summary>
public sealed record CoefficientsResponse
{
    /// <summary>Name of the set.</summary>
    /// <example>defaults-1</example>
    public required string SetName { get; init; }

    /// <summary>Each with its value, range, status and source.</summary>
    public required IReadOnlyList<CoefficientResponse> Coefficients { get; init; }
}
