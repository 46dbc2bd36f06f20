using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Adopting;

namespace WitherAdvisor.Api.Recalibration.Adopting;

/// <summary>Adopts a coefficient set: advice for the site is made with it from now on.</summary>
public sealed record AdoptionRequest
{
    internal const int LongestName = 80;
    internal const int LongestReason = 400;

    /// <summary>Who decides it.</summary>
    /// <example>head maker</example>
    [Text(LongestName)]
    public string? AdoptedBy { get; init; }

    /// <summary>Why.</summary>
    /// <example>Half a year of weighed batches stands behind it.</example>
    [Text(LongestReason)]
    public string? Reason { get; init; }

    /// <summary>Why it is adopted although it was not shown to be better than the set in use; without it that is refused.</summary>
    /// <example>The fans were renewed, so outcomes of last year no longer count.</example>
    [Text(LongestReason)]
    public string? OverrideReason { get; init; }

    internal AdoptionDecision ToDecision() => new(AdoptedBy, Reason, OverrideReason);
}
