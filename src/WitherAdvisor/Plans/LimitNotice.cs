namespace WitherAdvisor.Plans;

/// <summary>A limit that shaped the plan, or a wish it could not meet.</summary>
/// <param name="Limit">Which.</param>
/// <param name="Allowed">What it allows, in the unit of the limit: °C, K, h or wet basis; null for ambient air.</param>
/// <param name="Reached">What the plan comes to, in the same unit; null where none was found.</param>
public sealed record LimitNotice(LimitKind Limit, double? Allowed, double? Reached);
