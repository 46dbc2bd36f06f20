using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>A coefficient: what it is, where it may lie, how well it is founded.</summary>
public sealed record CoefficientResponse
{
    /// <summary>Name of the field that sets it in a request.</summary>
    /// <example>cuticular_conductance_mm_per_s</example>
    public required string Name { get; init; }

    /// <summary>As in the formulas.</summary>
    /// <example>g_0</example>
    public required string Symbol { get; init; }

    /// <summary>Unit of the three values.</summary>
    /// <example>mm/s</example>
    public required string Unit { get; init; }

    /// <summary>Its value in the set.</summary>
    /// <example>1</example>
    public required double Value { get; init; }

    /// <summary>Lowest sensible value.</summary>
    /// <example>0.2</example>
    public required double Least { get; init; }

    /// <summary>Highest sensible value.</summary>
    /// <example>2</example>
    public required double Most { get; init; }

    /// <summary>How well it is founded; fitted ones are learned per site, cultivar and standard.</summary>
    /// <example>fitted</example>
    public required CoefficientStatus Status { get; init; }

    /// <summary>Where the value is from.</summary>
    /// <example>Nothing published; half-way between none and complete.</example>
    public required string Source { get; init; }

    /// <summary>What it does.</summary>
    /// <example>How freely water passes the leaf's cuticle: the pace of the main stage.</example>
    public required string Effect { get; init; }
}
