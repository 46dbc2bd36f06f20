using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Recalibrating.Running;

namespace WitherAdvisor.Loft.Adopting;

/// <summary>What came of adopting a set.</summary>
public abstract record AdoptionResult
{
    private AdoptionResult()
    {
    }

    public sealed record Adopted(StoredAdoption Adoption) : AdoptionResult;

    public sealed record UnknownSet : AdoptionResult;

    /// <summary>Advice is made with it already.</summary>
    public sealed record InUse : AdoptionResult;

    /// <summary>It was not shown to be better than the one in use, and nobody said why it is wanted nevertheless.</summary>
    /// <param name="Current">The set that advice is made with; null for the defaults.</param>
    public sealed record NotShownBetter(StoredCoefficientSet Set, KeptVerdict Verdict, string? Current) : AdoptionResult;
}
