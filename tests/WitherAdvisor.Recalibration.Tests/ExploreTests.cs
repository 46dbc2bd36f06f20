using System.Diagnostics;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Recalibration.Tests;

public sealed class ExploreTests(ITestOutputHelper output)
{
    [Fact]
    public void Explore()
    {
        var watch = Stopwatch.StartNew();
        var nights = Enumerable.Range(1, 4).Select(s => LoftNight.Make(80, 730, (ulong)s)).ToArray();
        output.WriteLine($"nights {watch.Elapsed.TotalSeconds:0.0}");
        int runs = int.Parse(Environment.GetEnvironmentVariable("RUNS") ?? "100");
        var zs = new double[8]; var zz = new double[8];
        var covered = new int[8];
        var removed = new double[8];
        double genS = 0, fitS = 0; int iters = 0; int conv = 0; double scale = 0; double gross = 0, grossFound = 0, falseGross = 0;
        for (int run = 0; run < runs; run++)
        {
            watch.Restart();
            var random = new SplitMix64(0xC0FFEE + (ulong)run * 104729);
            var loft = HiddenLoft.Draw(random);
            var log = OutcomeLog.Write(loft, nights[run % nights.Length], random);
            genS += watch.Elapsed.TotalSeconds;
            watch.Restart();
            var settings = new RecalibrationSettings();
            var gathered = Gathered.Of([.. log.Select(l => l.Noted)], settings.Errors);
            var model = new FitModel(settings, gathered.Groups);
            var post = new PosteriorFit(model, settings, default).Run(gathered.Occasions);
            fitS += watch.Elapsed.TotalSeconds;
            iters += post.Iterations; conv += post.Converged ? 1 : 0; scale += post.Scale;
            var wrong = log.Where(l => l.GrosslyWrong).Select(l => l.Noted.Id).ToHashSet();
            for (int i = 0; i < gathered.Occasions.Count; i++)
            {
                bool w = wrong.Contains(gathered.Occasions[i].Wither.Id);
                if (w) { gross++; if (post.Sound[i] < 0.5) grossFound++; } else if (post.Sound[i] < 0.5) falseGross++;
            }

            for (int k = 0; k < 8; k++)
            {
                var f = model.Site[k];
                double truth = f.Coordinate.Of(f.Coordinate.Inner(f.Coefficient.Of(loft.Site)));
                double sd = Math.Sqrt(post.Covariance[k, k]);
                if (Math.Abs(truth - post.Coordinates[k]) < 1.645 * sd) covered[k]++;
                double zk = (post.Coordinates[k] - truth) / sd; zs[k] += zk; zz[k] += zk * zk;
                removed[k] += 1 - sd * sd / (f.Spread * f.Spread);
            }
        }

        output.WriteLine($"gen {genS:0.0} s fit {fitS:0.0} s iterations {iters / (double)runs:0.0} converged {conv} scale {scale / runs:0.00} gross {gross} found {grossFound} false {falseGross}");
        for (int k = 0; k < 8; k++)
        {
            output.WriteLine($"{k} covered {100.0 * covered[k] / runs:0} removed {removed[k] / runs:0.00} z mean {zs[k] / runs:0.00} rms {Math.Sqrt(zz[k] / runs):0.00}");
        }
    }
}
