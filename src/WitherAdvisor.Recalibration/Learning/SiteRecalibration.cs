using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.NextMeasurements;
using WitherAdvisor.Recalibration.Comparison;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Recalibration.Writing;

namespace WitherAdvisor.Recalibration.Learning;

/// <summary>Learns a site's coefficients from its outcomes.</summary>
/// <remarks>
/// The most likely coefficients given outcomes and priors, by iteratively reweighted nonlinear least squares. Outcomes are
/// put in one order first and sums taken in it: neither the order they come in nor the number of threads changes a bit.
/// </remarks>
public static class SiteRecalibration
{
    private const double FittedAt = 0.5;
    private const double HeldOutFittedAt = 0.9;

    /// <summary>Proposes a set; nothing is adopted by it.</summary>
    /// <param name="outcomes">In any order, each with an id of its own.</param>
    /// <param name="current">The set in use, to compare with.</param>
    /// <param name="settings">How; the defaults where null.</param>
    /// <param name="progress">Told of each step.</param>
    /// <param name="cancellation">Ends it with <see cref="OperationCanceledException"/>.</param>
    public static RecalibrationResult Run(
        IReadOnlyList<ObservedWither> outcomes,
        WitherCoefficients current,
        RecalibrationSettings? settings = null,
        IProgress<RecalibrationProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        settings ??= new();
        cancellation.ThrowIfCancellationRequested();
        UsableOutcomes usable = UsableOutcomes.Of(outcomes, settings.Errors);
        var model = new FitModel(settings, usable.Groups);
        var fit = new PosteriorFit(model, settings, cancellation);
        IReadOnlyList<Occasion> occasions = usable.Occasions;
        bool enough = occasions.Count >= settings.FewestOutcomes;
        Posterior posterior = enough
            ? fit.Run(occasions, step => Tell(progress, FittedAt * step / (step + 3.0), "fitting"))
            : Posterior.OfPrior(model, occasions.Count);
        var learned = new SiteLearned(posterior, occasions);

        var parallel = new ParallelOptions { MaxDegreeOfParallelism = Math.Max(settings.Workers, 1), CancellationToken = cancellation };
        HoldOut? holdOut = null;
        if (HoldOutValidation.Fitted(occasions.Count, settings) is { } fitted)
        {
            Occasion[] earlier = [.. occasions.Take(fitted)];
            Posterior ofEarlier = fit.Run(
                earlier, step => Tell(progress, FittedAt + (HeldOutFittedAt - FittedAt) * step / (step + 3.0), "fitting_the_earlier"));
            holdOut = HoldOutValidation.Run(occasions, new(ofEarlier, earlier), fitted, settings.Prior, current, parallel);
        }

        Tell(progress, HeldOutFittedAt, "reporting");
        var valueOfInformation = new ValueOfInformation(learned, occasions, settings);
        WitherCoefficients proposed = enough
            ? learned.Set(settings.Prior) with
            {
                SetName = settings.ProposedName,
                Spreads = LearnedSpreads.Of(learned, occasions, valueOfInformation.ReadyGradients, settings.Prior),
            }
            : settings.Prior with { SetName = settings.ProposedName };
        RecalibrationReport report = ReportWriter.Write(usable, learned, proposed, current, settings, holdOut, valueOfInformation, parallel);
        Tell(progress, 1, "done");
        return new(proposed, report);
    }

    private static void Tell(IProgress<RecalibrationProgress>? progress, double share, string step) =>
        progress?.Report(new(share, step));
}
