using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Pages.Home;

/// <summary>A batch on a trough.</summary>
/// <param name="Batch">Which.</param>
/// <param name="ReadyAt">When its newest advice expects it ready; null where that advised no plan.</param>
public sealed record BatchOnHand(StoredBatch Batch, DateTimeOffset? ReadyAt);
