using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Loft.Recalibrating.Running;

/// <summary>What a kept report says of its proposal.</summary>
/// <param name="ComparedWith">The set that it was compared with; null for the defaults.</param>
public sealed record KeptVerdict(VerdictKind Kind, string? ComparedWith);
