namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>
/// How well the stated band held on invented batches. It tests whether the stated errors add up to the stated band, not
/// whether they are those of a real loft.
/// </summary>
public sealed record ReliabilityResponse
{
    /// <summary>How many batches were invented and had a plan.</summary>
    /// <example>2386</example>
    public required int Batches { get; init; }

    /// <summary>How many of them were ready between P10 and P90; 80 are meant to be.</summary>
    /// <example>81.9</example>
    public required double HeldPercent { get; init; }

    /// <summary>The same where the truth lay half as far again from the defaults as the spreads say.</summary>
    /// <example>64.4</example>
    public required double HeldIfFurtherPercent { get; init; }

    /// <summary>Where the whole table stands in the service's repository.</summary>
    /// <example>tests/WitherAdvisor.SyntheticSeasons/RELIABILITY.md</example>
    public required string Where { get; init; }
}
