namespace WitherAdvisor.Api.Recalibration.Answers;

/// <summary>The coefficient sets of a site and which of them was adopted when: the whole history.</summary>
public sealed record CoefficientSetsAnswer
{
    /// <summary>Name of the set that advice is made with now.</summary>
    /// <example>learned-1</example>
    public required string Adopted { get; init; }

    /// <summary>Every set, newest first; the defaults last.</summary>
    public required IReadOnlyList<CoefficientSetAnswer> Sets { get; init; }

    /// <summary>Every adoption, newest first; before the first of them the defaults held.</summary>
    public required IReadOnlyList<AdoptionAnswer> Adoptions { get; init; }
}
