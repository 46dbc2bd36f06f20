namespace WitherAdvisor.Recalibration;

/// <summary>A sample weighed on the way.</summary>
/// <param name="Hour">From loading.</param>
/// <param name="ShareOfStart">Its weight over its weight at loading.</param>
public sealed record SampleWeighing(double Hour, double ShareOfStart);
