namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>Something that the model knows nothing of.</summary>
public sealed record NotKnownResponse
{
    /// <summary>Its name.</summary>
    /// <example>mixed_lots</example>
    public required string Code { get; init; }

    /// <summary>For people.</summary>
    /// <example>Mixed lots: a trough is reckoned as one leaf. Two fields or two pluckings on it wither to two moistures.</example>
    public required string Text { get; init; }
}
