using WitherAdvisor.Documentation;

namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>An equation of the model.</summary>
public sealed record EquationResponse
{
    /// <summary>Its name.</summary>
    /// <example>humidity_ratio</example>
    public required string Code { get; init; }

    /// <summary>What part of the model it belongs to.</summary>
    /// <example>air</example>
    public required ModelTopic Topic { get; init; }

    /// <summary>What it gives, in words.</summary>
    /// <example>Humidity ratio</example>
    public required string Title { get; init; }

    /// <summary>As text.</summary>
    /// <example>h = 1.006 t + W (2501 + 1.86 t)</example>
    public required string Formula { get; init; }

    /// <summary>Author, year, equation.</summary>
    /// <example>ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 30</example>
    public required string Source { get; init; }
}
