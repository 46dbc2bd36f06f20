namespace WitherAdvisor.Plans.Explaining;

/// <summary>When to weigh, what to expect, and what to do if it is not so.</summary>
/// <param name="Hour">Hours from loading.</param>
/// <param name="ExpectedWeightKg">All leaf on the trough, kg.</param>
/// <param name="LowWeightKg">At or below this the leaf runs ahead (one case in ten), kg.</param>
/// <param name="HighWeightKg">At or above this it lags (one case in ten), kg.</param>
/// <param name="ExpectedWeightOfSampleKg">The same for a marked sample that weighed 10 kg when loaded, kg.</param>
/// <param name="IfLow">What such leaf is expected to do.</param>
/// <param name="IfHigh">What such leaf is expected to do.</param>
public sealed record WeighingCheck(
    double Hour,
    double ExpectedWeightKg,
    double LowWeightKg,
    double HighWeightKg,
    double ExpectedWeightOfSampleKg,
    CheckResponse IfLow,
    CheckResponse IfHigh);
