namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>A check that the model is held to.</summary>
public sealed record ModelCheckResponse
{
    /// <summary>Its name.</summary>
    /// <example>fao56</example>
    public required string Code { get; init; }

    /// <summary>What is held against what.</summary>
    /// <example>Water that soil gives against the worked examples of FAO-56.</example>
    public required string Text { get; init; }

    /// <summary>Path in the service's repository.</summary>
    /// <example>fixtures/fao56</example>
    public required string Where { get; init; }
}
