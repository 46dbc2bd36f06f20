namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>The coefficient sets of a site and which of them was adopted when: the whole history.</summary>
public sealed record CoefficientSetsResponse
{
    /// <summary>Name of the set that advice is made with now.</summary>
    /// <example>learned-1</example>
    public required string Adopted { get; init; }

    /// <summary>Every set, newest first; the defaults last.</summary>
    public required IReadOnlyList<CoefficientSetResponse> Sets { get; init; }

    /// <summary>Every adoption, newest first; before the first of them the defaults held.</summary>
    public required IReadOnlyList<AdoptionResponse> Adoptions { get; init; }
}
