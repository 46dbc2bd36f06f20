using FsCheck.Xunit;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Spells;
using Xunit;

namespace WitherAdvisor.Tests.LeafAtLoading;

[Properties(Arbitrary = [typeof(AnyHistory)], MaxTest = 200)]
public sealed class LeafFromWeatherPropertyTests
{
    /// <summary>Of sums whose order changes with what fell.</summary>
    private const double Rounding = 1e-12;

    /// <summary>An hour with rain lays no fog: a trace of rain may leave this much less on the leaf, kg/kg.</summary>
    private const double FogOfAnHour = 1e-3;

    [Property]
    public bool Values_lie_within_what_leaf_can_be_and_errors_are_above_0(History history) => IsSound(history.Estimate());

    [Property]
    public bool No_number_whatever_makes_an_answer_that_is_not_sound(History history) =>
        IsSound(AnyHistory.Wild(history.Seed).Estimate());

    [Property]
    public bool Pieces_add_up_to_the_value(History history)
    {
        LeafEstimate leaf = history.Estimate();
        return AddUp(leaf.SurfaceWaterKgPerKg) && AddUp(leaf.TissueMoistureWetBasis);
    }

    [Property]
    public void Order_of_readings_and_totals_does_not_matter(History history)
    {
        var random = new Random(history.Seed);
        WeatherReading[] readings = [.. history.Readings];
        RainTotal[] totals = [.. history.Totals];
        random.Shuffle(readings);
        random.Shuffle(totals);

        AssertSame(history.Estimate(), (history with { Readings = readings, Totals = totals }).Estimate());
    }

    [Property]
    public void The_same_weather_gives_the_same_leaf(History history) => AssertSame(history.Estimate(), history.Estimate());

    [Property]
    public bool More_rain_in_readings_never_leaves_less_water_on_the_leaf_or_in_the_soil(History history)
    {
        // Totals would hand the rest of their hours what a reading takes: without them more rain is more rain.
        History plain = history with { Totals = [] };
        var random = new Random(history.Seed);
        WeatherReading[] wetter = [.. plain.Readings.Select(reading => reading with { RainMm = reading.RainMm + Extra(random) })];

        return NoDrier(plain.Estimate(), (plain with { Readings = wetter }).Estimate());
    }

    [Property]
    public bool More_rain_in_totals_never_leaves_less_water_on_the_leaf_or_in_the_soil(History history)
    {
        var random = new Random(history.Seed);
        IEnumerable<RainTotal> apart = history.Totals.Take(1);
        RainTotal[] totals = [.. apart];
        RainTotal[] wetter = [.. apart.Select(total => total with { RainMm = total.RainMm + 10 * Extra(random) })];

        return NoDrier((history with { Totals = totals }).Estimate(), (history with { Totals = wetter }).Estimate());
    }

    private static double Extra(Random random) => random.Next(6) == 0 ? 3 * random.NextDouble() : 0;

    private static bool NoDrier(LeafEstimate before, LeafEstimate after) =>
        after.SurfaceWaterKgPerKg.Value >= before.SurfaceWaterKgPerKg.Value - FogOfAnHour
        && after.Spell.WaterStress >= before.Spell.WaterStress - Rounding
        && after.TissueMoistureWetBasis.Value >= before.TissueMoistureWetBasis.Value - Rounding;

    private static bool IsSound(LeafEstimate leaf) =>
        leaf.SurfaceWaterKgPerKg.Value is >= 0 and <= 0.35
        && leaf.TissueMoistureWetBasis.Value is > 0 and < 1
        && IsSpread(leaf.SurfaceWaterKgPerKg.StandardDeviation)
        && IsSpread(leaf.TissueMoistureWetBasis.StandardDeviation)
        && leaf.Spell.WaterStress is >= 0 and <= 1
        && IsSpread(leaf.Spell.WaterStressStandardDeviation ?? 0)
        && leaf.Spell.RainLast72HoursMm is null or >= 0
        && double.IsFinite(leaf.Spell.DryingPowerKPaMPerS ?? 0)
        && leaf.Spell.DryingPowerThresholdKPaMPerS > 0;

    private static bool IsSpread(double standardDeviation) => standardDeviation is > 0 and < 1;

    private static bool AddUp(Estimate estimate) => estimate.Origin == EstimateOrigin.Measured
        || Math.Abs(estimate.Contributions.Sum(piece => piece.Amount) - estimate.Value) < Rounding;

    private static void AssertSame(LeafEstimate one, LeafEstimate other)
    {
        Assert.Equal(one.SurfaceWaterKgPerKg.Value, other.SurfaceWaterKgPerKg.Value);
        Assert.Equal(one.SurfaceWaterKgPerKg.StandardDeviation, other.SurfaceWaterKgPerKg.StandardDeviation);
        Assert.Equal(one.TissueMoistureWetBasis.Value, other.TissueMoistureWetBasis.Value);
        Assert.Equal(one.TissueMoistureWetBasis.StandardDeviation, other.TissueMoistureWetBasis.StandardDeviation);
        Assert.Equal(one.Spell, other.Spell);
        Assert.Equal(one.Missing, other.Missing);
    }
}
