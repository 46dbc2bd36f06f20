using WitherAdvisor.Api.Http;
using WitherAdvisor.Store;

namespace WitherAdvisor.Api.Recalibration.Adopting;

/// <summary>What came of adopting a set: the adoption, or why it was refused.</summary>
internal sealed record AdoptedSet(StoredAdoption? Adoption, ProblemResult? Refusal);
