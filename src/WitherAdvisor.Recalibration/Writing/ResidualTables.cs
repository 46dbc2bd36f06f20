using WitherAdvisor.Recalibration.Comparison;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Writing;

/// <summary>What the proposed set leaves over, outcome by outcome, in groups, and over time.</summary>
internal static class ResidualTables
{
    private const double DaysInStretch = 30;
    private const double DaysInYear = 365.25;

    /// <summary>Fewer stretches show no trend.</summary>
    private const int FewestStretches = 6;

    public static OutcomeResidual[] Points(
        IReadOnlyList<Occasion> occasions, double[] sound, ValidatedSet proposed, ValidatedSet current, ParallelOptions parallel)
    {
        var points = new OutcomeResidual[occasions.Count];
        Parallel.For(0, points.Length, parallel, i =>
        {
            ObservedWither wither = occasions[i].Wither;
            Prediction after = Prediction.By(proposed, occasions[i]);
            Prediction before = Prediction.By(current, occasions[i]);
            points[i] = new(
                wither.Id, wither.LoadedAt, wither.Spell, wither.Cultivar, wither.HoursOnTrough, after.Hours, before.Hours,
                ValidatedSet.Found(occasions[i], ObservationKind.FinalMoisture), after.Moisture, before.Moisture, sound[i]);
        });
        return points;
    }

    public static IReadOnlyList<ResidualSummary> Summaries(IReadOnlyList<OutcomeResidual> points) =>
    [
        .. By("spell", points, one => one.Spell.ToString()),
        .. By("loading_hour", points, one => one.LoadedAt.Hour.ToString("00")),
        .. By("cultivar", points.Where(one => one.Cultivar is not null), one => one.Cultivar!),
    ];

    public static Drift? Drift(IReadOnlyList<OutcomeResidual> points)
    {
        OutcomeResidual[] timed = [.. points.Where(one => one.ProposedHours is > 0)];
        if (timed.Length == 0)
        {
            return null;
        }

        DateTimeOffset first = timed[0].LoadedAt;
        (double Year, double Value)[] stretches =
        [
            .. timed.GroupBy(one => Math.Floor((one.LoadedAt - first).TotalDays / DaysInStretch))
                .OrderBy(stretch => stretch.Key)
                .Select(stretch => (
                    (stretch.Key + 0.5) * DaysInStretch / DaysInYear,
                    RobustStatistics.Median(stretch.Select(one => Math.Log(one.ProposedHours!.Value / one.ActualHours))))),
        ];
        if (stretches.Length < FewestStretches)
        {
            return null;
        }

        (double slope, double low, double high) = RobustStatistics.Trend(
            [.. stretches.Select(one => one.Year)], [.. stretches.Select(one => one.Value)]);
        return new(slope, low, high, stretches.Length);
    }

    private static IEnumerable<ResidualSummary> By(
        string name, IEnumerable<OutcomeResidual> points, Func<OutcomeResidual, string> key) =>
        points.Where(one => one.ProposedHours is not null)
            .GroupBy(key)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group =>
            {
                double[] hours = [.. group.Select(one => one.ProposedHours!.Value - one.ActualHours).Order()];
                return new ResidualSummary(
                    name, group.Key, hours.Length, RobustStatistics.Quantile(hours, 0.25), RobustStatistics.Quantile(hours, 0.5),
                    RobustStatistics.Quantile(hours, 0.75), RobustStatistics.Median(group.Select(one => one.CurrentHours!.Value - one.ActualHours)));
            });
}
