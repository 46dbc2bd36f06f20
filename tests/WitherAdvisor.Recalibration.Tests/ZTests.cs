using WitherAdvisor.SyntheticSeasons;
using WitherAdvisor.Leaf;
namespace WitherAdvisor.Recalibration.Tests;
public sealed class ZTests(ITestOutputHelper output)
{
    [Fact]
    public void Z()
    {
        var nights = Enumerable.Range(1, 4).SelectMany(s => LoftNight.Make(200, 730, (ulong)s)).ToArray();
        var c = new WitherCoefficients();
        c = c with { Spreads = c.Spreads with { SurfaceRetention = 0, DroughtMoistureWetBasis = 0 } };
        foreach (var g in nights.GroupBy(n => Bin(n.AsRead.SurfaceWaterKgPerKg(c).Value)).OrderBy(g => g.Key))
        {
            var z = g.Select(n => (n.Truly.SurfaceWaterKgPerKg(c).Value - n.AsRead.SurfaceWaterKgPerKg(c).Value)).ToArray();
            var sd = g.Select(n => n.AsRead.SurfaceWaterKgPerKg(c).StandardDeviation).ToArray();
            output.WriteLine($"surf>{g.Key:0.00} n {z.Length} bias {z.Average():0.0000} rms {Math.Sqrt(z.Average(x => x * x)):0.0000} (+0.012 gives {Math.Sqrt(z.Average(x => x * x) + 0.012 * 0.012):0.0000}) declared {Math.Sqrt(sd.Average(x => x * x)):0.0000}  zrms {Math.Sqrt(z.Zip(sd, (a, s) => (a * a + .000144) / s / s).Average()):0.00} maxz {z.Zip(sd, (a, s) => Math.Abs(a) / s).Max():0.0} unknown {g.Average(n => n.AsRead.UnknownRainMm):0.000}");
        }
        foreach (var g in nights.GroupBy(n => n.Spell))
        {
            var z = g.Select(n => (n.Truly.TissueMoistureWetBasis(c).Value - n.AsRead.TissueMoistureWetBasis(c).Value)).ToArray();
            var sd = g.Select(n => n.AsRead.TissueMoistureWetBasis(c).StandardDeviation).ToArray();
            output.WriteLine($"{g.Key} n {z.Length} bias {z.Average():0.0000} rms+field {Math.Sqrt(z.Average(x => x * x) + .0001):0.0000} declared {sd.Average():0.0000} Ks {g.Average(n => n.AsRead.WaterStress):0.00} ks sd {g.Average(n => n.AsRead.WaterStressStandardDeviation):0.00}");
        }
    }
    private static double Bin(double s) => s < 0.005 ? 0 : s < 0.02 ? 0.005 : s < 0.05 ? 0.02 : s < 0.1 ? 0.05 : 0.1;
}
