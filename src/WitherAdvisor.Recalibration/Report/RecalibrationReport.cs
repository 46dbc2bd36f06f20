namespace WitherAdvisor.Recalibration.Report;

/// <summary>What a recalibration did and how well.</summary>
/// <param name="Used">Outcomes fitted.</param>
/// <param name="LeftOut">Outcomes that could not be.</param>
/// <param name="Doubtful">Outcomes that hardly counted, least sound first.</param>
/// <param name="Coefficients">Before and after.</param>
/// <param name="Correlations">Pairs that the outcomes cannot separate.</param>
/// <param name="Groups">By cultivar and standard.</param>
/// <param name="HoldOut">Null where there were too few to hold any out.</param>
/// <param name="Verdict">Whether to adopt it.</param>
/// <param name="Residuals">Each outcome used, oldest first.</param>
/// <param name="ResidualSummaries">By spell, hour of loading and cultivar.</param>
/// <param name="Drift">Null where too few months had outcomes.</param>
/// <param name="NextMeasurements">What would teach most, best first.</param>
/// <param name="ResidualScale">Standard deviation of residuals over the stated errors; 1 at least.</param>
/// <param name="Iterations">Steps of the fit.</param>
/// <param name="Converged">Whether the last step was small.</param>
public sealed record RecalibrationReport(
    int Used,
    IReadOnlyList<LeftOut> LeftOut,
    IReadOnlyList<DoubtfulOutcome> Doubtful,
    IReadOnlyList<CoefficientLearning> Coefficients,
    IReadOnlyList<CorrelationWarning> Correlations,
    IReadOnlyList<GroupCalibration> Groups,
    HoldOut? HoldOut,
    Verdict Verdict,
    IReadOnlyList<OutcomeResidual> Residuals,
    IReadOnlyList<ResidualSummary> ResidualSummaries,
    Drift? Drift,
    IReadOnlyList<NextMeasurement> NextMeasurements,
    double ResidualScale,
    int Iterations,
    bool Converged);
