using WitherAdvisor.Advice;

namespace WitherAdvisor.Store;

/// <summary>A batch as kept.</summary>
/// <param name="Id">Made by the service.</param>
/// <param name="UnloadedAt">When its leaf left the trough; null while it lies there.</param>
public sealed record StoredBatch(
    string Id, string SiteId, string TroughId, Batch Batch, DateTimeOffset CreatedAt, DateTimeOffset? UnloadedAt = null);
