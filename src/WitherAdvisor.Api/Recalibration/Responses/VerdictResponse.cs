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
    /// <example>Better than the set in use on 15 outcomes held out: its ready times are off by 0.62 h on average, those of the set in use by 1.40 h, those of a table of averages by 1.55 h; one set for all leaf is off by 0.70 h.</example>
    public required string Text { get; init; }

    /// <summary>Share of the current set's mean error of ready time that is gone; below 0 where it grew, null where it is not known.</summary>
    /// <example>55.7</example>
    public required double? ErrorReductionPercent { get; init; }
}
