using WitherAdvisor.Fields.Json;
using WitherAdvisor.Plans;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Air to set at one time.</summary>
[Computed]
public sealed record SettingResponse
{
    /// <summary>From loading.</summary>
    /// <example>0</example>
    public required double Hour { get; init; }

    /// <summary>When.</summary>
    /// <example>2026-03-01T13:00:00+05:30</example>
    public required DateTimeOffset At { get; init; }

    /// <summary>Stage that it belongs to.</summary>
    /// <example>surface_drying</example>
    public required StageKind Stage { get; init; }

    /// <summary>Ambient air expected: dry bulb.</summary>
    /// <example>17.2</example>
    public required double AmbientDryBulbC { get; init; }

    /// <summary>Ambient air expected: relative humidity.</summary>
    /// <example>95</example>
    public required double AmbientRelativeHumidityPercent { get; init; }

    /// <summary>Air to have under the mesh: dry bulb.</summary>
    /// <example>26.5</example>
    public required double PlenumDryBulbC { get; init; }

    /// <summary>The same: wet bulb.</summary>
    /// <example>19.3</example>
    public required double PlenumWetBulbC { get; init; }

    /// <summary>The same: relative humidity.</summary>
    /// <example>53.4</example>
    public required double PlenumRelativeHumidityPercent { get; init; }

    /// <summary>The same: dry bulb minus wet bulb, which the trade steers by.</summary>
    /// <example>7.2</example>
    public required double HygrometricDifferenceK { get; init; }

    /// <summary>Share of hot air in the mix, by mass of dry air.</summary>
    /// <example>26.1</example>
    public required double HotAirSharePercent { get; init; }

    /// <summary>Heat demand of the whole trough.</summary>
    /// <example>75.4</example>
    public required double HeatKw { get; init; }

    /// <summary>Share of full airflow while the fan runs.</summary>
    /// <example>100</example>
    public required double FanSharePercent { get; init; }

    /// <summary>Share of the time that the fan runs.</summary>
    /// <example>100</example>
    public required double RunSharePercent { get; init; }
}
