using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Spells;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

public sealed class ReportTests
{
    private static readonly IReadOnlyList<LoggedWither> Log = InventedLog.Draw(11, LoftNight.Make(200, 730, 4)).Log;

    private static readonly List<RecalibrationProgress> Steps = [];

    private static readonly RecalibrationResult Result = SiteRecalibration.Run(
        InventedLog.Noted(Log), new(), new() { ProposedName = "invented-2" }, new Noting());

    private static RecalibrationReport Report => Result.Report;

    [Fact]
    public void Most_gross_mistakes_are_named_and_hardly_any_sound_outcome()
    {
        HashSet<string> doubtful = [.. Report.Doubtful.Select(one => one.Id)];
        HashSet<string> leftOut = [.. Report.LeftOut.Select(one => one.Id)];
        string[] wrong = [.. Log.Where(one => one.GrosslyWrong && !leftOut.Contains(one.Noted.Id)).Select(one => one.Noted.Id)];

        Assert.NotEmpty(wrong);
        Assert.True(wrong.Count(doubtful.Contains) >= 0.7 * wrong.Length);
        Assert.True(doubtful.Except(wrong).Count() <= 0.03 * Log.Count);
    }

    [Fact]
    public void Every_outcome_is_used_or_left_out_with_a_reason() => Assert.Equal(Log.Count, Report.Used + Report.LeftOut.Count);

    [Fact]
    public void The_proposal_bears_the_name_it_was_given_and_lies_within_the_ranges()
    {
        Assert.Equal("invented-2", Result.Proposed.SetName);
        Assert.All(
            CoefficientCatalogue.All.Where(one => one.Status == CoefficientStatus.Fitted),
            one => Assert.InRange(one.Of(Result.Proposed), one.Low, one.High));
    }

    [Fact]
    public void What_the_outcomes_told_narrows_the_spreads_of_the_proposal()
    {
        CoefficientSpreads before = new();
        CoefficientSpreads after = Result.Proposed.Spreads;

        Assert.InRange(after.SurfaceRetention, 0.001, before.SurfaceRetention / 2);
        Assert.InRange(after.Airflow, 0.001, before.Airflow);
        Assert.InRange(after.DroughtMoistureWetBasis, 0.001, before.DroughtMoistureWetBasis);
    }

    [Fact]
    public void A_group_has_its_own_set_and_hangs_about_the_sites()
    {
        Assert.Equal(6, Report.Groups.Count);
        Assert.All(Report.Groups, one => Assert.InRange(1, one.CuticularRatioLow90 * 0.6, one.CuticularRatioHigh90 * 1.6));
        Assert.All(Report.Groups, one => Assert.Equal(
            one.CuticularConductanceRatio, one.Set.CuticularConductanceMPerS / Result.Proposed.CuticularConductanceMPerS, 1e-9));
    }

    [Fact]
    public void Residuals_are_summed_up_by_spell_hour_and_cultivar()
    {
        foreach (string by in new[] { "spell", "loading_hour", "cultivar" })
        {
            ResidualSummary[] rows = [.. Report.ResidualSummaries.Where(one => one.By == by)];
            Assert.Equal(Report.Residuals.Count(one => one.ProposedHours is not null), rows.Sum(one => one.Outcomes));
            Assert.All(rows, one => Assert.True(one.LowerQuartileHours <= one.MedianHours && one.MedianHours <= one.UpperQuartileHours));
        }
    }

    [Fact]
    public void A_log_that_does_not_drift_is_not_said_to() => Assert.InRange(0, Report.Drift!.Low90, Report.Drift.High90);

    [Fact]
    public void Clocks_that_run_ever_faster_are_seen_as_drift()
    {
        DateTimeOffset first = Log[0].Noted.LoadedAt;
        ObservedWither[] drifting =
        [
            .. Log.Select(one => one.Noted with
            {
                AirflowM3PerSM2 = one.Noted.AirflowM3PerSM2 * (1 + 0.5 * (one.Noted.LoadedAt - first).TotalDays / 365),
            }),
        ];

        Drift drift = SiteRecalibration.Run(drifting, new(), cancellation: TestContext.Current.CancellationToken).Report.Drift!;

        Assert.True(drift.High90 < 0);
    }

    [Fact]
    public void What_to_measure_next_stands_in_order_and_removes_a_share_of_what_is_open()
    {
        Assert.Equal(Report.NextMeasurements.OrderByDescending(one => one.VarianceDrop), Report.NextMeasurements);
        Assert.All(Report.NextMeasurements, one => Assert.InRange(one.VarianceDrop, 0, 1));
        Assert.Contains(Report.NextMeasurements, one => one is { Code: "surface_water_at_loading", Spell: SpellKind.Wet });
    }

    [Fact]
    public void Progress_rises_to_one()
    {
        Assert.Equal(Steps.Select(one => one.Share).Order(), Steps.Select(one => one.Share));
        Assert.Equal(1, Steps[^1].Share);
    }

    private sealed class Noting : IProgress<RecalibrationProgress>
    {
        public void Report(RecalibrationProgress value) => Steps.Add(value);
    }
}
