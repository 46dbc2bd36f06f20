using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>A coefficient set of a site; it never changes.</summary>
public sealed record CoefficientSetResponse
{
    /// <summary>Its name, which advice for the site repeats.</summary>
    /// <example>learned-1</example>
    public required string Name { get; init; }

    /// <summary>Where it is from.</summary>
    /// <example>recalibration</example>
    public required CoefficientOrigin Origin { get; init; }

    /// <summary>When it was made; null for the defaults, which came with the service.</summary>
    /// <example>2026-03-01T13:00:12+05:30</example>
    public required DateTimeOffset? MadeAt { get; init; }

    /// <summary>For leaf of which nobody says more, as a request would state them.</summary>
    public required CoefficientsRequest Coefficients { get; init; }

    /// <summary>For leaf of one cultivar and standard; empty where there is one set for all leaf.</summary>
    public required IReadOnlyList<GroupCoefficients> Groups { get; init; }
}
