namespace WitherAdvisor.Outcomes;

/// <summary>A marked sample of the bed, weighed on the way.</summary>
/// <param name="Hour">Hours from loading.</param>
/// <param name="WeightShare">Its weight over its weight at loading, 0 to 1.</param>
public sealed record SampleWeighing(double Hour, double WeightShare);
