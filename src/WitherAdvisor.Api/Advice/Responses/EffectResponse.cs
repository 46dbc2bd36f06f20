using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>How the plan would differ without one factor: that plan minus this one. Null where no plan would be possible.</summary>
[Computed]
public sealed record EffectResponse
{
    /// <summary>The factor.</summary>
    /// <example>without_surface_water</example>
    public required string Code { get; init; }

    /// <summary>Change of the hours to the stop.</summary>
    /// <example>-2.4</example>
    public required double? StopChangeHours { get; init; }

    /// <summary>Change of plenum dry bulb at the start of the main stage.</summary>
    /// <example>0</example>
    public required double? PlenumDryBulbChangeK { get; init; }

    /// <summary>The turns it would take.</summary>
    /// <example>4</example>
    public required int? Turns { get; init; }
}
