namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>From when on a site's advice is made with a set.</summary>
public sealed record AdoptionResponse
{
    /// <summary>Name of the set.</summary>
    /// <example>learned-1</example>
    public required string Set { get; init; }

    /// <summary>From when on, until the next.</summary>
    /// <example>2026-03-01T14:00:00+05:30</example>
    public required DateTimeOffset From { get; init; }

    /// <summary>Who decided it; null where nobody said.</summary>
    /// <example>head maker</example>
    public required string? AdoptedBy { get; init; }

    /// <summary>Why; null where nobody said.</summary>
    /// <example>Half a year of weighed batches stands behind it.</example>
    public required string? Reason { get; init; }
}
