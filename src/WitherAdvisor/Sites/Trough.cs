namespace WitherAdvisor.Sites;

/// <summary>A withering trough and its fan.</summary>
/// <param name="AreaM2">Area of the mesh, m².</param>
/// <param name="AirflowM3PerSM2">Volume of plenum air per area of mesh at full fan, m³/s·m².</param>
/// <param name="SlowestFanShare">The least share of that flow the fan can be set to; 1 for a fan of one speed.</param>
/// <param name="MostLoadKgPerM2">Most leaf per area, kg/m².</param>
/// <param name="HeaterKW">Most heat that reaches this trough, kW; null where it is not known to be short, 0 where there is none.</param>
/// <param name="FanKW">What the fan draws at full speed, kW; null where nobody said.</param>
public sealed record Trough(
    double AreaM2,
    double AirflowM3PerSM2 = Trough.UsualAirflowM3PerSM2,
    double SlowestFanShare = 1,
    double MostLoadKgPerM2 = Trough.UsualMostLoadKgPerM2,
    double? HeaterKW = null,
    double? FanKW = null)
{
    /// <summary>45 cfm/ft² (published: UPASI Tea Research Foundation).</summary>
    public const double UsualAirflowM3PerSM2 = 0.2286;

    public const double UsualMostLoadKgPerM2 = 35;
}
