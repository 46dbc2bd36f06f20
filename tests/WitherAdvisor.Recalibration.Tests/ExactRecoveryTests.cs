using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

/// <summary>Outcomes made by the fit's own bed without noise, declared nearly exact: the fit must come back to what made them.</summary>
public sealed class ExactRecoveryTests(ITestOutputHelper output)
{
    /// <summary>Relative.</summary>
    private const double Tolerance = 1e-4;

    private const double NearlyNothing = 1e-6;

    private static readonly MeasurementErrors Exact = new()
    {
        OutturnRelative = NearlyNothing,
        OvenMoistureWetBasis = NearlyNothing,
        HeightMoistureWetBasis = NearlyNothing,
        SampleShare = NearlyNothing,
        SurfaceWaterKgPerKg = NearlyNothing,
        LoadingMoistureWetBasis = NearlyNothing,
        MeasuredAirK = 0,
        SetAirK = 0,
        LeafShare = 0,
    };

    private static readonly IReadOnlyList<LoftNight> Nights = LoftNight.Make(40, 730, 5);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Without_noise_every_coefficient_is_recovered(int number)
    {
        (HiddenLoft loft, IReadOnlyList<LoggedWither> log) = InventedLog.Draw(number, Nights);
        ObservedWither[] exact = [.. log.Where(one => !one.GrosslyWrong).Select(one => Made(one.Noted, loft.Site))];

        RecalibrationReportRow[] rows = [.. SiteRecalibration.Run(
            exact, new(), new() { Errors = Exact, HoldOutShare = 0 }, cancellation: TestContext.Current.CancellationToken)
            .Report.Coefficients.Select(one => new RecalibrationReportRow(one.Name, one.After, Of(loft.Site, one.Name)))];

        foreach (RecalibrationReportRow row in rows)
        {
            output.WriteLine($"{row.Name}: {row.Found:R} for {row.Truth:R}");
        }

        Assert.All(rows, row => Assert.InRange(row.Found / row.Truth, 1 - Tolerance, 1 + Tolerance));
    }

    /// <summary>What the bed says that would have been found, all of it.</summary>
    private static ObservedWither Made(ObservedWither noted, WitherCoefficients truth)
    {
        LeafFeatures features = noted.Features;
        double surface = features.SurfaceWaterKgPerKg(truth).Value;
        double tissue = features.TissueMoistureWetBasis(truth).Value;
        ObservedWither asked = noted with
        {
            Cultivar = null,
            Standard = null,
            AtLoading = new(surface, tissue),
            Found = new(noted.GreenWeightKg * 0.6, 0.6, new(0.6, null, 0.6), [new(2, 0.9)]),
        };
        var inputs = new double[BedInput.Count];
        BedInput.Fill(inputs, new(tissue, surface), truth, 0);
        var occasion = new Occasion(asked, -1, Exact, []);
        var answers = new double[occasion.Observations.Length];
        BedAnswer.Predict(occasion, inputs, truth, BedAnswer.Fine, answers);
        double Answer(ObservationKind kind) => answers[Array.FindIndex(occasion.Observations, one => one.Kind == kind)];
        return asked with
        {
            Found = new(
                noted.GreenWeightKg * Math.Exp(Answer(ObservationKind.Outturn)), Answer(ObservationKind.FinalMoisture),
                new(0.6, null, 0.6 + Answer(ObservationKind.TopOverBottom)), [new(2, Answer(ObservationKind.SampleShare))]),
        };
    }

    private static double Of(WitherCoefficients set, string name) => CoefficientCatalogue.All.Single(one => one.Name == name).Of(set);

    private sealed record RecalibrationReportRow(string Name, double Found, double Truth);
}
