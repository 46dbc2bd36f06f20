using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>Which inputs matter most for a batch: each changed alone, with the plan's air, turns and fan share kept.</summary>
[Computed]
public sealed record SensitivityResponse
{
    /// <summary>From loading to target moisture, with every input as the plan takes it.</summary>
    /// <example>12.6</example>
    public required double PlannedHours { get; init; }

    /// <summary>All uncertain inputs together: one case in ten is ready before then; null where too few ever are.</summary>
    /// <example>10.9</example>
    public required double? P10Hours { get; init; }

    /// <summary>One case in ten is ready after; null where too few ever are.</summary>
    /// <example>14.8</example>
    public required double? P90Hours { get; init; }

    /// <summary>Each input, the widest first.</summary>
    public required IReadOnlyList<InputSensitivityResponse> Inputs { get; init; }
}
