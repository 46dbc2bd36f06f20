using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

/// <summary>
/// Two hundred lofts with coefficients drawn by the defaults' spreads, each with a two-year log of eighty outcomes that has
/// noise, gaps and 5 % gross errors: the stated intervals must hold what was hidden.
/// </summary>
public sealed class CoverageTests(ITestOutputHelper output)
{
    private const int Runs = 200;
    private const int Outcomes = 80;
    private const double LeastHeld = 0.85;

    [Fact]
    public void Fitted_coefficients_lie_within_their_stated_90_percent_intervals()
    {
        IReadOnlyList<LoftNight>[] seasons = InventedLog.Seasons(8, Outcomes);
        var learned = new (WitherCoefficients Truth, IReadOnlyList<CoefficientLearning> Coefficients)[Runs];
        Parallel.For(0, Runs, run =>
        {
            (HiddenLoft loft, IReadOnlyList<LoggedWither> log) = InventedLog.Draw(run, seasons[run % seasons.Length]);
            RecalibrationResult result = SiteRecalibration.Run(
                InventedLog.Noted(log), new(), new() { Workers = 1, HoldOutShare = 0 }, cancellation: TestContext.Current.CancellationToken);
            learned[run] = (MixOf(loft, log), result.Report.Coefficients);
        });

        output.WriteLine("| coefficient | held, % of 200 | variance removed, mean | mean miss, of the half interval |");
        output.WriteLine("|---|---|---|---|");
        var held = new double[learned[0].Coefficients.Count];
        for (int at = 0; at < held.Length; at++)
        {
            held[at] = learned.Count(one => Holds(one.Coefficients[at], Truth(one.Truth, one.Coefficients[at]))) / (double)Runs;
            output.WriteLine(
                $"| {learned[0].Coefficients[at].Symbol} | {100 * held[at]:0.0} | {learned.Average(one => one.Coefficients[at].VarianceRemoved):0.00} | {learned.Average(one => Miss(one.Coefficients[at], Truth(one.Truth, one.Coefficients[at]))):0.00} |");
        }

        Assert.All(held, share => Assert.InRange(share, LeastHeld, 1));
    }

    /// <summary>The site's coefficients with its groups' offsets as the log mixes them: what a site's set is said to be.</summary>
    private static WitherCoefficients MixOf(HiddenLoft loft, IReadOnlyList<LoggedWither> log)
    {
        (double Cuticle, double Moisture)[] offsets = [.. log.Select(one => loft.Groups[(one.Noted.Cultivar!, one.Noted.Standard!.Value)])];
        return loft.Site with
        {
            CuticularConductanceMPerS = loft.Site.CuticularConductanceMPerS * Math.Exp(offsets.Average(one => one.Cuticle)),
            DroughtMoistureWetBasis = loft.Site.DroughtMoistureWetBasis + offsets.Average(one => one.Moisture),
        };
    }

    private static double Truth(WitherCoefficients truth, CoefficientLearning learned) =>
        CoefficientCatalogue.All.Single(one => one.Name == learned.Name).Of(truth);

    private static bool Holds(CoefficientLearning learned, double truth) => truth >= learned.Low90 && truth <= learned.High90;

    private static double Miss(CoefficientLearning learned, double truth) =>
        (learned.After - truth) / ((learned.High90 - learned.Low90) / 2);
}
