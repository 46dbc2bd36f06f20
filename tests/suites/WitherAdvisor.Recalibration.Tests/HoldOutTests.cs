using WitherAdvisor.InventedEstate;
using WitherAdvisor.Recalibration.Learning;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

/// <summary>Sixty outcomes fitted, the next twenty predicted: what is gained over the defaults.</summary>
public sealed class HoldOutTests(ITestOutputHelper output)
{
    private const int Outcomes = 80;
    private const int Lofts = 12;
    private const double LeastReduction = 0.40;

    private static readonly IReadOnlyList<LoftNight>[] Seasons = InventedLog.Seasons(Lofts, Outcomes);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_loft_that_differs_by_one_and_a_half_spreads_halves_its_error_of_ready_time_or_nearly(bool faster)
    {
        double[] reductions = Reductions(random => HiddenLoft.Apart(random, 1.5, faster));

        Assert.True(reductions[Lofts / 2] >= LeastReduction, $"median {reductions[Lofts / 2]:0.00}");
    }

    [Fact]
    public void A_loft_drawn_half_as_far_again_as_the_defaults_say_gains_too()
    {
        double[] reductions = Reductions(random => HiddenLoft.Draw(random, 1.5));

        Assert.True(reductions[Lofts / 2] >= LeastReduction, $"median {reductions[Lofts / 2]:0.00}");
    }

    [Fact]
    public void A_loft_as_the_defaults_say_gains_less_and_is_told_so()
    {
        double[] reductions = Reductions(random => HiddenLoft.Draw(random));

        Assert.True(reductions[Lofts / 2] > 0, $"median {reductions[Lofts / 2]:0.00}");
    }

    /// <summary>Share of the current set's mean error that is gone, by loft, least first.</summary>
    private double[] Reductions(Func<SplitMix64, HiddenLoft> draw)
    {
        output.WriteLine("| loft | defaults, h | averages, h | learned, h | one set for all leaf, h | gone, % | moisture by defaults, points | learned |");
        output.WriteLine("|---|---|---|---|---|---|---|---|");
        var reductions = new double[Lofts];
        for (int number = 0; number < Lofts; number++)
        {
            SplitMix64 random = InventedLog.Random(1000 + number);
            HiddenLoft loft = draw(random);
            RecalibrationReport report = SiteRecalibration.Run(
                InventedLog.Noted(OutcomeLog.Write(loft, Seasons[number], random)), new(), cancellation: TestContext.Current.CancellationToken).Report;
            HoldOut held = report.HoldOut!;
            reductions[number] = report.Verdict.ErrorReduction!.Value;
            Assert.InRange(held.Fitted, Outcomes * 3 / 4 - 3, Outcomes * 3 / 4);
            Assert.Equal(reductions[number] > 0, report.Verdict.Kind == VerdictKind.BetterThanCurrent);
            output.WriteLine(
                $"| {number} | {held.Current.MeanAbsoluteHours:0.00} | {held.Averages.MeanAbsoluteHours:0.00} | {held.Proposed.MeanAbsoluteHours:0.00} | {held.ProposedSiteAlone.MeanAbsoluteHours:0.00} | {100 * reductions[number]:0} | {100 * held.Current.MeanAbsoluteMoistureWetBasis:0.0} | {100 * held.Proposed.MeanAbsoluteMoistureWetBasis:0.0} |");
        }

        Array.Sort(reductions);
        output.WriteLine($"median {100 * reductions[Lofts / 2]:0} %");
        return reductions;
    }
}
