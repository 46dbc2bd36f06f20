using WitherAdvisor.Fields.Json;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>One input changed alone, down and up.</summary>
[Computed]
public sealed record InputSensitivityResponse
{
    /// <summary>Its name.</summary>
    /// <example>surface_water</example>
    public required string Code { get; init; }

    /// <summary>How far it was changed: to P10 and P90, or by an input error that a person may make, which the ready-time band does not include.</summary>
    /// <example>p10_to_p90</example>
    public required SensitivityReach Reach { get; init; }

    /// <summary>Unit of the three values.</summary>
    /// <example>kg/kg</example>
    public required string Unit { get; init; }

    /// <summary>Its low value.</summary>
    /// <example>0.12</example>
    public required double LowValue { get; init; }

    /// <summary>As the plan takes it.</summary>
    /// <example>0.18</example>
    public required double PlannedValue { get; init; }

    /// <summary>Its high value.</summary>
    /// <example>0.24</example>
    public required double HighValue { get; init; }

    /// <summary>From loading to target moisture at the low value; null where it is not reached.</summary>
    /// <example>12.1</example>
    public required double? AtLowHours { get; init; }

    /// <summary>The same at the high value; null where it is not reached.</summary>
    /// <example>13.2</example>
    public required double? AtHighHours { get; init; }

    /// <summary>At the low value, less those of the plan.</summary>
    /// <example>-0.5</example>
    public required double? ChangeAtLowHours { get; init; }

    /// <summary>At the high value, less those of the plan.</summary>
    /// <example>0.6</example>
    public required double? ChangeAtHighHours { get; init; }

    /// <summary>Why an end has no hours; null where both have.</summary>
    /// <example>The target is not reached within the 23 h looked at.</example>
    public required string? NotReached { get; init; }
}
