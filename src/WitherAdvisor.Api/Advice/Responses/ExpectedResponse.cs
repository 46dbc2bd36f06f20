using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>What a plan is expected to come to.</summary>
[Computed]
public sealed record ExpectedResponse
{
    /// <summary>Moisture at the stop, one case in ten at or below.</summary>
    /// <example>57.8</example>
    public required double? FinalMoistureP10WetBasisPercent { get; init; }

    /// <summary>The same, five cases in ten.</summary>
    /// <example>60</example>
    public required double? FinalMoistureP50WetBasisPercent { get; init; }

    /// <summary>The same, nine cases in ten.</summary>
    /// <example>62.4</example>
    public required double? FinalMoistureP90WetBasisPercent { get; init; }

    /// <summary>Withered weight over green weight as weighed with its surface water.</summary>
    /// <example>46.5</example>
    public required double OutturnPercent { get; init; }

    /// <summary>Withered weight over the weight of green leaf without its surface water.</summary>
    /// <example>55</example>
    public required double OutturnOfLeafPercent { get; init; }

    /// <summary>Largest spread of leaf moisture between layers at any time, wet basis.</summary>
    /// <example>2.7</example>
    public required double LargestSpreadPoints { get; init; }

    /// <summary>Mean under the mesh before cooling.</summary>
    /// <example>7.1</example>
    public required double MeanHygrometricDifferenceK { get; init; }

    /// <summary>Heat mixed in over the whole wither.</summary>
    /// <example>640</example>
    public required double HeatKwh { get; init; }

    /// <summary>Heat for each kg of made tea.</summary>
    /// <example>2.1</example>
    public required double? HeatKwhPerKgMadeTea { get; init; }

    /// <summary>What the fan draws over the whole wither; null where the trough does not say what it draws.</summary>
    /// <example>27.5</example>
    public required double? FanKwh { get; init; }
}
