using WitherAdvisor.Fields.Json;
using WitherAdvisor.Plans;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>A limit that shaped the plan, or a wish it could not meet.</summary>
[Computed]
public sealed record NoticeResponse
{
    /// <summary>Which.</summary>
    /// <example>plenum_dry_bulb</example>
    public required LimitKind Limit { get; init; }

    /// <summary>True for a limit that is never crossed, false for a wish.</summary>
    /// <example>true</example>
    public required bool Hard { get; init; }

    /// <summary>Unit of the two values; null where they have none.</summary>
    /// <example>°C</example>
    public required string? Unit { get; init; }

    /// <summary>What it allows.</summary>
    /// <example>35</example>
    public required double? Allowed { get; init; }

    /// <summary>What the plan comes to; null where none was found.</summary>
    /// <example>35</example>
    public required double? Reached { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>Dry bulb under the mesh: at most 35.0 °C; the plan comes to 35.0 °C.</example>
    public required string Text { get; init; }
}
