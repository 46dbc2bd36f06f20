using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>Coefficients for leaf of one cultivar and standard.</summary>
public sealed record GroupCoefficients
{
    /// <summary>Cultivar; null for leaf of which nobody said.</summary>
    /// <example>Clone A</example>
    public string? Cultivar { get; init; }

    /// <summary>Standard of plucking; null for leaf of which nobody said.</summary>
    /// <example>fine</example>
    public LeafStandard? LeafStandard { get; init; }

    /// <summary>As a request would state them, with the name that advice for such leaf bears.</summary>
    public required CoefficientsRequest Coefficients { get; init; }
}
