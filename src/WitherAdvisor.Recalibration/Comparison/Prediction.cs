using WitherAdvisor.Recalibration.Fitting;

namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>What a set makes of an outcome. Null where nothing was found to compare with.</summary>
/// <param name="Hours">Ready time.</param>
/// <param name="Moisture">At unloading, wet basis.</param>
internal readonly record struct Prediction(double? Hours, double? Moisture)
{
    public static Prediction By(ValidatedSet set, Occasion occasion) => new(set.ReadyHour(occasion), set.FinalMoisture(occasion));
}
