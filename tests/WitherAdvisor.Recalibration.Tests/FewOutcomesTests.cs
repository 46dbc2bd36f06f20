using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

public sealed class FewOutcomesTests
{
    private static readonly WitherCoefficients Defaults = new();

    private static readonly IReadOnlyList<LoftNight> Nights = LoftNight.Make(40, 730, 1);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Up_to_three_outcomes_leave_every_coefficient_at_its_prior_and_the_verdict_says_so(int outcomes)
    {
        RecalibrationResult result = Run(outcomes);

        Assert.Equal(Defaults with { SetName = result.Proposed.SetName }, result.Proposed);
        Assert.Equal(VerdictKind.TooFewOutcomes, result.Report.Verdict.Kind);
        Assert.Equal(4, result.Report.Verdict.FewestOutcomes);
        Assert.Equal(outcomes, result.Report.Used);
        Assert.All(result.Report.Coefficients, one => Assert.Equal(Identifiability.NotIdentified, one.Identifiability));
        Assert.All(result.Report.Coefficients, one => Assert.InRange(one.VarianceRemoved, 0, 1e-9));
    }

    [Fact]
    public void Nothing_known_still_names_what_to_measure()
    {
        RecalibrationResult result = Run(0);

        Assert.NotEmpty(result.Report.NextMeasurements);
        Assert.True(result.Report.NextMeasurements[0].VarianceDrop > 0.1);
    }

    [Fact]
    public void Four_outcomes_move_no_coefficient_by_more_than_its_prior_allows_for()
    {
        RecalibrationResult result = Run(4);

        Assert.All(result.Report.Coefficients, one => Assert.InRange(one.Prior, one.Low90 - 2 * (one.High90 - one.Low90), one.High90 + 2 * (one.High90 - one.Low90)));
        Assert.Equal(VerdictKind.TooFewOutcomes, result.Report.Verdict.Kind);
        Assert.Null(result.Report.HoldOut);
    }

    [Fact]
    public void Outcomes_that_cannot_be_are_left_out_with_a_reason()
    {
        ObservedWither whole = InventedLog.Noted(InventedLog.Draw(1, Nights).Log)[0];
        ObservedWither[] odd =
        [
            whole with { Id = "nothing", Found = new(), AtLoading = LoadingReadings.None },
            whole with { Id = "airless", AirByHour = [] },
            whole with { Id = "endless", HoursOnTrough = double.NaN },
            whole with { Id = "heavier", Found = new(WitheredWeightKg: whole.GreenWeightKg * 1.1) },
            whole with { Id = "dust", Found = new(MoistureWetBasis: 1.4) },
            whole with { Id = "empty", GreenWeightKg = 0 },
        ];

        RecalibrationReport report = SiteRecalibration.Run(odd, Defaults, cancellation: TestContext.Current.CancellationToken).Report;

        Assert.Equal(0, report.Used);
        Assert.Equal(
            [
                ("airless", LeftOutReason.NoAir), ("dust", LeftOutReason.FindingOutOfRange), ("empty", LeftOutReason.LoadOutOfRange),
                ("endless", LeftOutReason.HoursOutOfRange), ("heavier", LeftOutReason.HeavierThanGreen), ("nothing", LeftOutReason.NothingFound),
            ],
            report.LeftOut.Select(one => (one.Id, one.Reason)));
    }

    private static RecalibrationResult Run(int outcomes) => SiteRecalibration.Run(
        InventedLog.Noted(InventedLog.Draw(1, Nights).Log)[..outcomes], Defaults, cancellation: TestContext.Current.CancellationToken);
}
