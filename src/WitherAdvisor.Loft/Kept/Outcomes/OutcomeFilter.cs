using WitherAdvisor.Spells;

namespace WitherAdvisor.Loft.Kept.Outcomes;

/// <summary>Which outcomes of a site are wanted; null is all.</summary>
/// <param name="From">Loaded at or after.</param>
/// <param name="To">Loaded before.</param>
/// <param name="Spell">As the last advice judged it; batches without advice have none.</param>
/// <param name="Cultivar">As on the label.</param>
/// <param name="NewestFirst">By loading; oldest first otherwise.</param>
public sealed record OutcomeFilter(
    DateTimeOffset? From = null, DateTimeOffset? To = null, SpellKind? Spell = null, string? Cultivar = null, bool NewestFirst = false);
