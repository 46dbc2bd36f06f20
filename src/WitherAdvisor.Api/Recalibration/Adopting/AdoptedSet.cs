using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Api.Recalibration.Adopting;

/// <summary>What came of adopting a set: the adoption, or why it was refused.</summary>
internal sealed record AdoptedSet(StoredAdoption? Adoption, ProblemResult? Refusal);
