using WitherAdvisor.Api.Advice.Responses;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Simulations;

/// <summary>What the bed does under a fixed plan.</summary>
[Computed]
public sealed record SimulationResponse
{
    /// <summary>Hours to the site's target moisture; null where the plan stops before it.</summary>
    /// <example>9.8</example>
    public required double? ToTargetHours { get; init; }

    /// <summary>Hours until under 1 % of the surface water is left; 0 where there was none, null where the plan stops before it.</summary>
    /// <example>3.1</example>
    public required double? ToSurfaceDryHours { get; init; }

    /// <summary>Moisture of the bed's mean at the stop, surface water counted in.</summary>
    /// <example>59.7</example>
    public required double FinalMoistureWetBasisPercent { get; init; }

    /// <summary>Largest spread of leaf moisture between layers at any time, wet basis.</summary>
    /// <example>2.7</example>
    public required double LargestSpreadPoints { get; init; }

    /// <summary>Withered weight over green weight with its surface water.</summary>
    /// <example>45.8</example>
    public required double OutturnPercent { get; init; }

    /// <summary>Withered weight over green weight without its surface water.</summary>
    /// <example>55</example>
    public required double OutturnOfLeafPercent { get; init; }

    /// <summary>Heat mixed in.</summary>
    /// <example>640</example>
    public required double HeatKwh { get; init; }

    /// <summary>Hard limits of the site that the fixed plan breaks: no advice would.</summary>
    public required IReadOnlyList<NoticeResponse> Notices { get; init; }

    /// <summary>The bed over time: bottom, middle, top.</summary>
    public required IReadOnlyList<CurvePointResponse> Curve { get; init; }

    /// <summary>Air by the hour.</summary>
    public required IReadOnlyList<SettingResponse> Settings { get; init; }

    /// <summary>What everyone at a trough must know.</summary>
    public required IReadOnlyList<CautionResponse> Cautions { get; init; }

    /// <summary>Name of the set of coefficients used.</summary>
    /// <example>defaults-1</example>
    public required string CoefficientSet { get; init; }

    /// <summary>Version of the model.</summary>
    /// <example>0.1.0</example>
    public required string ModelVersion { get; init; }
}
