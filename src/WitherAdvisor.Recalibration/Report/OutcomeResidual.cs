using WitherAdvisor.Spells;

namespace WitherAdvisor.Recalibration.Report;

/// <summary>One outcome beside what both sets make of it, for pictures. Null where nothing was found to compare with.</summary>
/// <param name="Id">Of the outcome.</param>
/// <param name="LoadedAt">Hour 0.</param>
/// <param name="Spell">Its spell.</param>
/// <param name="Cultivar">Its cultivar.</param>
/// <param name="ActualHours">Hours on the trough.</param>
/// <param name="ProposedHours">Ready time by the proposed set.</param>
/// <param name="CurrentHours">Ready time by the current set.</param>
/// <param name="FoundMoistureWetBasis">Oven-dried at unloading.</param>
/// <param name="ProposedMoistureWetBasis">By the proposed set.</param>
/// <param name="CurrentMoistureWetBasis">By the current set.</param>
/// <param name="ChanceSound">Chance that it is as it was written down.</param>
public sealed record OutcomeResidual(
    string Id,
    DateTimeOffset LoadedAt,
    SpellKind Spell,
    string? Cultivar,
    double ActualHours,
    double? ProposedHours,
    double? CurrentHours,
    double? FoundMoistureWetBasis,
    double? ProposedMoistureWetBasis,
    double? CurrentMoistureWetBasis,
    double ChanceSound);
