using FsCheck.Xunit;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Simulations;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>From rain in the field to hours on the trough. One case costs milliseconds, hence few.</summary>
public sealed class RainToHoursProperties
{
    private const double AreaM2 = 40;
    private const double DryKg = 246;
    private const double CutTolerance = 0.0005;

    [Property(Arbitrary = [typeof(AnyHistory)], MaxTest = 200)]
    public void More_rain_never_shortens_a_fixed_wither_of_the_same_shoots(History history)
    {
        // Totals by hand would give the rest of their hours what a reading takes: without them more rain is more rain.
        History dry = history with { Totals = [] };
        var random = new Random(history.Seed);
        History wet = dry with
        {
            Readings = [.. dry.Readings.Select(reading => reading with { RainMm = reading.RainMm + (random.Next(6) == 0 ? 3 * random.NextDouble() : 0) })],
        };

        Assert.True(Hours(wet) >= Hours(dry) * (1 - CutTolerance), $"{Hours(dry)} h, with more rain {Hours(wet)} h");
    }

    private static double Hours(History history)
    {
        LeafEstimate estimate = history.Estimate();
        var leaf = new LeafState(estimate.TissueMoistureWetBasis.Value, estimate.SurfaceWaterKgPerKg.Value);
        return WitherSimulation.Run(new(
            InventedDays.Site, new Trough(AreaM2), DryKg / leaf.DryMatterKg(1), leaf, history.Leaf.LoadedAt,
            [new WeatherReading(history.Leaf.LoadedAt, DryBulbC: 20, RelativeHumidity: 0.8)],
            [new(40, PlenumDryBulbC: 25)], [], 1, new WitherCoefficients()))!.HoursToTarget!.Value;
    }
}
