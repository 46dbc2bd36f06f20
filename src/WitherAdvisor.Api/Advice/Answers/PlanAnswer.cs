using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Answers;

/// <summary>A wither plan. Hours count from loading; times carry the site's offset and are rounded to the minute.</summary>
[Computed]
public sealed record PlanAnswer
{
    /// <summary>What to set when the air goes on.</summary>
    public required SettingAnswer SetNow { get; init; }

    /// <summary>How long, and when it is ready.</summary>
    public required ReadyAnswer Ready { get; init; }

    /// <summary>When to turn the leaf.</summary>
    public required TurningAnswer Turning { get; init; }

    /// <summary>Share of the trough's full airflow to run the fan at.</summary>
    /// <example>100</example>
    public required double FanSharePercent { get; init; }

    /// <summary>Stages in order, without gaps, from loading to the stop.</summary>
    public required IReadOnlyList<StageAnswer> Stages { get; init; }

    /// <summary>What to set as the ambient air changes: at the start of each stage and at each whole hour. If the night differs from the one foretold, hold the hygrometric difference, not the dry bulb alone.</summary>
    public required IReadOnlyList<SettingAnswer> Settings { get; init; }

    /// <summary>What the plan is expected to come to.</summary>
    public required ExpectedAnswer Expected { get; init; }
}
