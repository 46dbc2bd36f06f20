namespace WitherAdvisor.Recalibration.Report;

/// <summary>How far predictions lay from what was found. Null where nothing could be compared.</summary>
/// <param name="ReadyTimes">Ready times compared.</param>
/// <param name="MeanAbsoluteHours">Mean distance of predicted from true ready time, h.</param>
/// <param name="BiasHours">Mean of predicted less true, h.</param>
/// <param name="Moistures">Final moistures compared.</param>
/// <param name="MeanAbsoluteMoistureWetBasis">Mean distance of predicted from oven-dried final moisture, wet basis.</param>
/// <param name="BiasMoistureWetBasis">Mean of predicted less oven-dried.</param>
public sealed record SetErrors(
    int ReadyTimes,
    double? MeanAbsoluteHours,
    double? BiasHours,
    int Moistures,
    double? MeanAbsoluteMoistureWetBasis,
    double? BiasMoistureWetBasis);
