using WitherAdvisor.Sites;

namespace WitherAdvisor.Loft.Kept.Sites;

/// <summary>A trough as kept; its id is unique within its site.</summary>
public sealed record StoredTrough(string SiteId, string Id, string Name, Trough Trough);
