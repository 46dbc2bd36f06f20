using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Pages.Season;

/// <summary>A day on which leaf was loaded.</summary>
/// <param name="Spell">What most of its batches grew in; null where no advice says.</param>
/// <param name="Batches">How many were loaded.</param>
public sealed record SeasonDay(DateOnly Date, SpellKind? Spell, int Batches);
