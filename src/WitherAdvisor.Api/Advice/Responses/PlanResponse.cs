using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>A wither plan. Hours count from loading; times carry the site's offset and are rounded to the minute.</summary>
[Computed]
public sealed record PlanResponse
{
    /// <summary>What to set when the air goes on.</summary>
    public required SettingResponse SetNow { get; init; }

    /// <summary>How long, and when it is ready.</summary>
    public required ReadyResponse Ready { get; init; }

    /// <summary>When to turn the leaf.</summary>
    public required TurningResponse Turning { get; init; }

    /// <summary>Share of the trough's full airflow to run the fan at before cooling.</summary>
    /// <example>100</example>
    public required double FanSharePercent { get; init; }

    /// <summary>Share of the time to run the fan before cooling.</summary>
    /// <example>100</example>
    public required double RunSharePercent { get; init; }

    /// <summary>Stages in order, without gaps, from loading to the stop.</summary>
    public required IReadOnlyList<StageResponse> Stages { get; init; }

    /// <summary>What to set as the ambient air changes: at the start of each stage and at each whole hour. If the night is not as forecast, hold the hygrometric difference, not the dry bulb alone.</summary>
    public required IReadOnlyList<SettingResponse> Settings { get; init; }

    /// <summary>What the plan is expected to come to.</summary>
    public required ExpectedResponse Expected { get; init; }
}
