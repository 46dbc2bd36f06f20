namespace WitherAdvisor.Plans;

/// <summary>A plan with its curve and the moisture (wet basis) at its stop.</summary>
internal sealed record WrittenPlan(WitherPlan Plan, IReadOnlyList<CurvePoint> Curve, double FinalMoistureWetBasis);
