using WitherAdvisor.Spells;

namespace WitherAdvisor.Recalibration.Report;

/// <summary>A measurement that would teach, and how much.</summary>
/// <param name="Code">snake_case name of what to measure.</param>
/// <param name="Spell">On leaf of which spell.</param>
/// <param name="VarianceDrop">Share of what the coefficients leave open of the ready time that one such measurement removes, 0 to 1.</param>
/// <param name="ReadySpreadBefore">Standard deviation of ready time by the coefficients, as a share of the hours.</param>
/// <param name="ReadySpreadAfter">The same after.</param>
public sealed record NextMeasurement(
    string Code, SpellKind Spell, double VarianceDrop, double ReadySpreadBefore, double ReadySpreadAfter);
