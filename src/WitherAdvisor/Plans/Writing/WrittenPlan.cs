using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Plans.Writing;

/// <summary>A plan with its curve, the moisture (wet basis) at its stop and the temperature of its warmest leaf (°C).</summary>
/// <param name="AsWritten">The candidate with the hours and turns that were written.</param>
internal sealed record WrittenPlan(
    WitherPlan Plan, IReadOnlyList<CurvePoint> Curve, double FinalMoistureWetBasis, double WarmestLeafC, Candidate AsWritten);
