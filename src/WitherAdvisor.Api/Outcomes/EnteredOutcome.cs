using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>What came of entering an outcome: as it is kept, or why it is not.</summary>
internal sealed record EnteredOutcome(StoredOutcome? Kept, bool IsFirst, ProblemResult? Refusal)
{
    public static EnteredOutcome Refuse(ProblemResult refusal) => new(null, false, refusal);
}
