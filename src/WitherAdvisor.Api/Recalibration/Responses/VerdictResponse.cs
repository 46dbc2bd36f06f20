using WitherAdvisor.Fields.Json;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>Whether the proposal is worth adopting.</summary>
[Computed]
public sealed record VerdictResponse
{
    /// <summary>What the hold-out says.</summary>
    /// <example>better_than_current</example>
    public required VerdictKind Kind { get; init; }

    /// <summary>The same for people.</summary>
    /// <example>Better than the current set on 15 outcomes it had not seen: the ready time is off by 0.62 h on average, against 1.40 h by the current set and 1.55 h by a table of averages; by the site's set for all leaf 0.70 h.</example>
    public required string Text { get; init; }

    /// <summary>Share of the current set's mean error of ready time that is gone; below 0 where it grew, null where it could not be told.</summary>
    /// <example>55.7</example>
    public required double? ErrorReductionPercent { get; init; }
}
