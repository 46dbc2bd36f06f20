namespace WitherAdvisor.Loft.Kept.Outcomes;

/// <summary>When a batch was loaded, and the weather its leaf grew in as its last advice names it; null where there was none.</summary>
public sealed record LoadedBatch(DateTimeOffset LoadedAt, string? Spell);
