using WitherAdvisor.Sites;

namespace WitherAdvisor.Store;

/// <summary>A trough as kept; its id is unique within its site.</summary>
public sealed record StoredTrough(string SiteId, string Id, string Name, Trough Trough);
