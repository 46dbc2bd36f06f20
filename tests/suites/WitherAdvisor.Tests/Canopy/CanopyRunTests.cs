using WitherAdvisor.Canopy;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Evaporation;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Canopy;

public sealed class CanopyRunTests
{
    /// <summary>Clear, calm and damp nights of a northern December: near the equator none is long enough to lay the most.</summary>
    private static readonly LeafHistory Dewy = LeafHistory.Of(
        InventedDays.Site with { LatitudeDeg = 58 },
        [.. (InventedDays.Ordinary with { SwingK = 9, DewPointC = 19, WindMPerS = 1 }).DryHours(14).Select(reading => reading with { Time = reading.Time.AddDays(-80) })],
        [],
        new(InventedDays.At(10).AddDays(-80), InventedDays.At(12).AddDays(-80), InventedDays.At(12).AddDays(-80)));

    [Fact]
    public void Each_night_lays_its_dew_and_none_more_than_the_most_of_a_night()
    {
        CanopyRun run = CanopyRun.Of(Dewy.Demand, new double[Dewy.Hours + 1], capacityMm: 50);
        List<double> nights = [0];
        for (int hour = 1; hour <= Dewy.Hours; hour++)
        {
            if (Dewy.Demand.IsDay[hour] && nights[^1] > 0)
            {
                nights.Add(0);
            }

            nights[^1] += Math.Max(run.DewMm[hour] - run.DewMm[hour - 1], 0);
        }

        Assert.True(nights.Count(dewMm => Math.Abs(dewMm - CanopyRun.MostDewMmPerNight) < 1e-9) > 5, string.Join(' ', nights));
        Assert.All(nights, dewMm => Assert.InRange(dewMm, 0, CanopyRun.MostDewMmPerNight + 1e-9));
    }

    [Fact]
    public void Rain_that_nobody_measured_leaves_leaf_wetter_than_rain_that_did_not_fall()
    {
        double Carried(Func<int, double?> rainMm)
        {
            LeafHistory history = LeafHistory.Of(InventedDays.Site, InventedDays.Wet.Hours(14, rainMm), [], InventedDays.Plucked(10, 12));
            return CarriedWater.IfPluckedAt(history, new WitherCoefficients())[history.Hours];
        }

        Assert.True(Carried(hour => hour > 6 ? null : 0) > Carried(_ => 0) + 0.01);
    }
}
