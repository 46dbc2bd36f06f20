using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>What leaf outside the expected band is expected to do, and what would bring it back.</summary>
[Computed]
public sealed record CheckActionResponse
{
    /// <summary>Ready by then with the plan's air kept on, from loading; null where it would not be.</summary>
    /// <example>12.6</example>
    public required double? ReadyHour { get; init; }

    /// <summary>The same as a time.</summary>
    /// <example>2026-03-02T01:36:00+05:30</example>
    public required DateTimeOffset? ReadyAt { get; init; }

    /// <summary>Change of plenum dry bulb that would bring it back to the planned stop; null where no change within the limits would.</summary>
    /// <example>1.5</example>
    public required double? PlenumDryBulbChangeK { get; init; }
}
