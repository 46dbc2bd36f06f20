namespace WitherAdvisor.Outcomes;

/// <summary>Moisture of samples from three depths of the bed at the end, wet basis. Null where nobody took one.</summary>
public sealed record LayerMoistures(double? BottomWetBasis, double? MiddleWetBasis, double? TopWetBasis);
