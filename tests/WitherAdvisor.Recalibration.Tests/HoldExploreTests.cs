using System.Diagnostics;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

public sealed class HoldExploreTests(ITestOutputHelper output)
{
    [Fact]
    public void Hold()
    {
        double wider = double.Parse(Environment.GetEnvironmentVariable("WIDER") ?? "1");
        for (int seed = 1; seed <= 12; seed++)
        {
            var nights = LoftNight.Make(80, 730, (ulong)seed);
            var random = new SplitMix64(0xBEEF + (ulong)seed * 104729);
            var loft = HiddenLoft.Draw(random, wider);
            var log = OutcomeLog.Write(loft, nights, random);
            var result = SiteRecalibration.Run([.. log.Select(l => l.Noted)], new());
            var h = result.Report.HoldOut!;
            output.WriteLine($"{seed}: reduction {result.Report.Verdict.ErrorReduction:0%} proposed {h.Proposed.MeanAbsoluteHours:0.00} group {h.ProposedByGroup.MeanAbsoluteHours:0.00} current {h.Current.MeanAbsoluteHours:0.00} avg {h.Averages.MeanAbsoluteHours:0.00} bias {h.Current.BiasHours:0.00}->{h.Proposed.BiasHours:0.00} n {h.Proposed.ReadyTimes} unexplained {h.Unexplained} points {h.Current.MeanAbsoluteMoistureWetBasis * 100:0.0}->{h.Proposed.MeanAbsoluteMoistureWetBasis * 100:0.0} g0 {loft.Site.SkinConductanceMPerS * 1e3:0.00} air {loft.Site.AirflowFactor:0.00} m {loft.Site.DroughtMoistureWetBasis:0.000}");
            if (seed == 1)
            {
                foreach (var c in result.Report.Coefficients) output.WriteLine($"   {c}");
                foreach (var c in result.Report.Correlations) output.WriteLine($"   {c}");
                foreach (var c in result.Report.Groups) output.WriteLine($"   {c.Cultivar} {c.Standard} n {c.Outcomes} ratio {c.SkinConductanceRatio:0.00} {c.SkinRatioLow90:0.00}-{c.SkinRatioHigh90:0.00} moisture {c.MoistureShiftWetBasis:0.0000}");
                foreach (var c in result.Report.NextMeasurements) output.WriteLine($"   {c.VarianceDrop:0.000} {c.Code} {c.Spell} {c.Text}");
                output.WriteLine($"{result.Report.Verdict} {result.Report.Drift} {result.Proposed.Spreads}");
            }
        }
    }
}
