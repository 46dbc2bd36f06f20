namespace WitherAdvisor.Spells;

/// <summary>A day's spell and the rule that decided it.</summary>
internal readonly record struct SpellVerdict(SpellKind Kind, SpellReason Reason);
