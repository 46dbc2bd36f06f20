using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>What came of ending a batch: the batch as it is now, or why it was not ended.</summary>
internal sealed record Closing(StoredBatch? Batch, ProblemResult? Refusal);
