using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Comparison;

/// <summary>Tries sets on the latest outcomes, fitted on the earlier ones.</summary>
internal static class HoldOutValidation
{
    /// <summary>Fewer say nothing.</summary>
    private const int FewestInHoldOut = 3;

    /// <summary>Standard deviations of the proposed set's errors past which an outcome counts as unexplained.</summary>
    private const double Unexplainable = 4;

    /// <summary>And at least this far off, as a logarithm.</summary>
    private const double LeastUnexplainable = 0.25;

    /// <summary>How many are fitted when the latest are held out; null where that leaves too few.</summary>
    public static int? Fitted(int occasions, RecalibrationSettings settings)
    {
        int heldOut = (int)Math.Round(settings.HoldOutShare * occasions);
        return heldOut >= FewestInHoldOut && occasions - heldOut >= settings.FewestOutcomes ? occasions - heldOut : null;
    }

    /// <summary>The latest outcomes by each set.</summary>
    /// <param name="occasions">All, oldest first.</param>
    /// <param name="learned">From the earlier ones.</param>
    /// <param name="fitted">How many those are.</param>
    /// <param name="prior">For what is not fitted.</param>
    /// <param name="current">The set in use.</param>
    /// <param name="parallel">Threads and cancellation.</param>
    public static HoldOut Run(
        IReadOnlyList<Occasion> occasions, SiteLearned learned, int fitted, WitherCoefficients prior, WitherCoefficients current, ParallelOptions parallel)
    {
        Occasion[] later = [.. occasions.Skip(fitted)];
        var averages = new AveragesTable([.. occasions.Take(fitted)]);
        ValidatedSet site = new(learned.Set(prior), []);
        ValidatedSet groups = LearnedSets.ByGroup(learned, prior);
        ValidatedSet used = new(current, []);
        var tried = new Tried[later.Length];
        Parallel.For(0, later.Length, parallel, i => tried[i] = new(
            later[i].Wither.HoursOnTrough,
            ValidatedSet.Found(later[i], ObservationKind.FinalMoisture),
            [Prediction.By(groups, later[i]), Prediction.By(site, later[i]), Prediction.By(used, later[i]), new(averages.Hours(later[i]), null)]));

        double bound = Bound(tried);
        Tried[] explained = [.. tried.Where(one => one.Nearest() <= bound)];
        return new(
            later[0].Wither.LoadedAt, fitted, later.Length, tried.Length - explained.Length,
            Errors(explained, 0), Errors(explained, 1), Errors(explained, 2), Errors(explained, 3));
    }

    private static double Bound(Tried[] tried)
    {
        double[] sorted = [.. tried.Select(one => one.LogError(0)).OfType<double>().Order()];
        double middle = sorted.Length == 0 ? 0 : sorted[sorted.Length / 2];
        return Math.Max(Unexplainable * RobustStatistics.DeviationPerMedian * middle, LeastUnexplainable);
    }

    private static SetErrors Errors(Tried[] tried, int set)
    {
        double[] hours = [.. tried.Where(one => one.By[0].Hours is not null).Select(one => one.By[set].Hours!.Value - one.Hours)];
        double[] moistures = [.. tried.Where(one => one.By[set].Moisture is not null).Select(one => one.By[set].Moisture!.Value - one.Moisture!.Value)];
        return new(
            hours.Length, Mean(hours, Math.Abs), Mean(hours, value => value),
            moistures.Length, Mean(moistures, Math.Abs), Mean(moistures, value => value));
    }

    private static double? Mean(double[] values, Func<double, double> of) => values.Length == 0 ? null : values.Average(of);

    private readonly record struct Tried(double Hours, double? Moisture, Prediction[] By)
    {
        public double? LogError(int set) => By[set].Hours is { } predicted ? Math.Abs(Math.Log(Math.Max(predicted, 0.1) / Hours)) : null;

        /// <summary>The least error of any; 0 where no ready time was found.</summary>
        public double Nearest()
        {
            double nearest = double.PositiveInfinity;
            for (int set = 0; set < By.Length && By[0].Hours is not null; set++)
            {
                nearest = Math.Min(nearest, LogError(set) ?? nearest);
            }

            return By[0].Hours is null ? 0 : nearest;
        }
    }
}
