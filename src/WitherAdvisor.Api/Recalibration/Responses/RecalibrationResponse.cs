using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>State of a recalibration.</summary>
[Computed]
public record RecalibrationResponse
{
    /// <summary>Made by the service.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    public required string Id { get; init; }

    /// <summary>The site whose outcomes it learns from.</summary>
    /// <example>example-hill</example>
    public required string Site { get; init; }

    /// <summary>State; an interrupted one left nothing behind and can be run again.</summary>
    /// <example>running</example>
    public required RecalibrationStatus Status { get; init; }

    /// <summary>How far it is.</summary>
    /// <example>42.5</example>
    public required double ProgressPercent { get; init; }

    /// <summary>What was done last, in snake_case; null before it began.</summary>
    /// <example>fitting</example>
    public required string? Step { get; init; }

    /// <summary>When it was asked for.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset QueuedAt { get; init; }

    /// <summary>When it began; null while it waits.</summary>
    /// <example>2026-03-01T13:00:01+05:30</example>
    public required DateTimeOffset? StartedAt { get; init; }

    /// <summary>When it ended, however it did; null while it waits or runs.</summary>
    /// <example>2026-03-01T13:00:12+05:30</example>
    public required DateTimeOffset? EndedAt { get; init; }

    /// <summary>Why it failed; null where it did not.</summary>
    /// <example>The service failed; its log says why.</example>
    public required string? Failure { get; init; }

    /// <summary>The set that it proposes, once it is done; null before, and where it ended otherwise.</summary>
    /// <example>learned-1</example>
    public required string? Proposal { get; init; }
}
