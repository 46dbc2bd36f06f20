using WitherAdvisor.Fields.Json;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>A measurement that would teach, and how much.</summary>
[Computed]
public sealed record NextMeasurementResponse
{
    /// <summary>What to measure, in snake_case.</summary>
    /// <example>surface_water_at_loading</example>
    public required string Code { get; init; }

    /// <summary>On leaf of which spell.</summary>
    /// <example>wet</example>
    public required SpellKind Spell { get; init; }

    /// <summary>Share of what the coefficients leave open of the ready time (its variance) that one such measurement removes.</summary>
    /// <example>12.5</example>
    public required double VarianceDropPercent { get; init; }

    /// <summary>Standard deviation of the ready time by the coefficients, of the hours.</summary>
    /// <example>14.2</example>
    public required double ReadySpreadBeforePercent { get; init; }

    /// <summary>The same after it.</summary>
    /// <example>13.3</example>
    public required double ReadySpreadAfterPercent { get; init; }

    /// <summary>The same for people.</summary>
    /// <example>On wet leaf: weigh a sample at loading before and after spinning or blotting it. The coefficients leave the ready time uncertain by ±14.2 %; one such measurement removes 12.5 % of that variance.</example>
    public required string Text { get; init; }
}
