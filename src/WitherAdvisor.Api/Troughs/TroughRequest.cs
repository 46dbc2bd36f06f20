using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Troughs;

/// <summary>A withering trough and its fan.</summary>
public record TroughRequest
{
    /// <summary>For people.</summary>
    /// <example>Trough 1</example>
    [Text(80)]
    public required string Name { get; init; }

    /// <summary>Area of the mesh.</summary>
    /// <example>42</example>
    [Measured(0.5, 500)]
    public required double AreaM2 { get; init; }

    /// <summary>Plenum air per area of mesh at full fan; 0.2286 (45 cfm/ft², published: UPASI) when left out.</summary>
    /// <example>0.2286</example>
    [Measured(0.02, 0.6)]
    public double? AirflowM3PerSPerM2 { get; init; }

    /// <summary>The least share of full flow that the fan can be set to; 100, a fan of one speed, when left out.</summary>
    /// <example>60</example>
    [Measured(10, 100)]
    public double? SlowestFanSharePercent { get; init; }

    /// <summary>Most leaf per area of mesh; 35 when left out.</summary>
    /// <example>35</example>
    [Measured(5, 60)]
    public double? MostLoadKgPerM2 { get; init; }

    /// <summary>Most heat that reaches the trough, 0 where there is none. Left out, the plan takes it for enough.</summary>
    /// <example>90</example>
    [Measured(0, 5000)]
    public double? HeaterKw { get; init; }

    /// <summary>What the fan draws at full speed; left out, its power is not told.</summary>
    /// <example>3</example>
    [Measured(0.1, 200)]
    public double? FanKw { get; init; }
}
