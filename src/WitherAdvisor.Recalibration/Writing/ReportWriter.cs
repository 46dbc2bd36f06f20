using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.NextMeasurements;
using WitherAdvisor.Recalibration.Comparison;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Writing;

/// <summary>Puts the report together.</summary>
internal static class ReportWriter
{
    /// <summary>Outcomes less likely sound than this are named.</summary>
    private const double Doubtful = 0.5;

    public static RecalibrationReport Write(
        UsableOutcomes usable,
        SiteLearned learned,
        WitherCoefficients proposed,
        WitherCoefficients current,
        RecalibrationSettings settings,
        HoldOut? holdOut,
        ValueOfInformation valueOfInformation,
        ParallelOptions parallel)
    {
        Posterior posterior = learned.Posterior;
        OutcomeResidual[] residuals = ResidualTables.Points(
            usable.Occasions, posterior.Sound, new(proposed, []), new(current, []), parallel);
        return new(
            usable.Occasions.Count,
            usable.LeftOut,
            [
                .. residuals.Where(one => one.ChanceSound < Doubtful).Select(one => new DoubtfulOutcome(one.Id, one.ChanceSound))
                    .OrderBy(one => one.ChanceSound).ThenBy(one => one.Id, StringComparer.Ordinal),
            ],
            CoefficientTables.Coefficients(learned, proposed, current, settings.Prior),
            CoefficientTables.Correlations(learned),
            CoefficientTables.Groups(learned, usable.Occasions, proposed),
            holdOut,
            Verdict.Of(usable.Occasions.Count, settings.FewestOutcomes, holdOut),
            residuals,
            ResidualTables.Summaries(residuals),
            ResidualTables.Drift(residuals),
            valueOfInformation.Sorted(),
            Math.Sqrt(posterior.Scale),
            posterior.Iterations,
            posterior.Converged);
    }
}
