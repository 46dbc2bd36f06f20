using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;

namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>A constant, a threshold or a limit.</summary>
public sealed record ConstantResponse
{
    /// <summary>Its name.</summary>
    /// <example>highest_plenum</example>
    public required string Code { get; init; }

    /// <summary>What part of the model it belongs to.</summary>
    /// <example>plan</example>
    public required ModelTopic Topic { get; init; }

    /// <summary>What it is.</summary>
    /// <example>Plenum dry bulb, never above: no site may set more</example>
    public required string Meaning { get; init; }

    /// <summary>Its value.</summary>
    /// <example>35</example>
    public required double Value { get; init; }

    /// <summary>Unit of the value; empty for a bare number.</summary>
    /// <example>°C</example>
    public required string Unit { get; init; }

    /// <summary>How well it is founded.</summary>
    /// <example>published</example>
    public required CoefficientStatus Status { get; init; }

    /// <summary>Where it is from.</summary>
    /// <example>UPASI Tea Research Foundation: leaf reddens above</example>
    public required string Source { get; init; }
}
