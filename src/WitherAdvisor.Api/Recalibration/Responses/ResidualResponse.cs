using WitherAdvisor.Fields.Json;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>One outcome beside what both sets make of it; null where nothing was found to compare with.</summary>
[Computed]
public sealed record ResidualResponse
{
    /// <summary>Its batch.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    public required string Batch { get; init; }

    /// <summary>When it was loaded.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset LoadedAt { get; init; }

    /// <summary>The weather its leaf grew in.</summary>
    /// <example>wet</example>
    public required SpellKind Spell { get; init; }

    /// <summary>Its cultivar; null where nobody said.</summary>
    /// <example>Clone A</example>
    public required string? Cultivar { get; init; }

    /// <summary>Hours on the trough.</summary>
    /// <example>10.5</example>
    public required double ActualHours { get; init; }

    /// <summary>When the proposed set would have had it as it was found.</summary>
    /// <example>10.2</example>
    public required double? ProposedHours { get; init; }

    /// <summary>The same by the set in use.</summary>
    /// <example>12.1</example>
    public required double? CurrentHours { get; init; }

    /// <summary>Oven-dried at the end.</summary>
    /// <example>60.4</example>
    public required double? FoundMoistureWetBasisPercent { get; init; }

    /// <summary>By the proposed set.</summary>
    /// <example>60.9</example>
    public required double? ProposedMoistureWetBasisPercent { get; init; }

    /// <summary>By the set in use.</summary>
    /// <example>63.2</example>
    public required double? CurrentMoistureWetBasisPercent { get; init; }

    /// <summary>Chance that it is as it was written down.</summary>
    /// <example>99.1</example>
    public required double ChanceSoundPercent { get; init; }
}
