using WitherAdvisor.Advice;
using WitherAdvisor.Air;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Readings;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Explaining;

/// <summary>What an advice says a factor is worth is what really asking without it gives.</summary>
public sealed class FactorEffectTests
{
    /// <summary>Plans are written to five minutes, from beds cut more finely than those the effects are told by.</summary>
    private const double WrittenHours = 0.2;

    private const double SurfaceKgPerKg = 0.2;

    private static readonly AdviceRequest RainWet = InventedBatch.Measured(17, 0.95, 0.80, SurfaceKgPerKg);

    private static readonly AdviceRequest Blotted =
        InventedBatch.Measured(17, 0.95, 0.80, 0, InventedBatch.UsualLoadKgPerM2 / (1 + SurfaceKgPerKg));

    [Fact]
    public void Water_weighed_on_the_leaf_lengthens_the_wither_by_hours()
    {
        double wet = InventedBatch.Advised(RainWet).Plan.StopHour;
        double sameLeaf = InventedBatch.Advised(Blotted).Plan.StopHour;
        double sameGreenWeight = InventedBatch.Advised(InventedBatch.Measured(17, 0.95, 0.80, 0)).Plan.StopHour;

        Assert.True(wet - sameLeaf > 1.5, $"{wet} against {sameLeaf} h");
        // A sixth of what came in as green weight is rain: as much dry leaf lies thicker.
        Assert.InRange(sameGreenWeight, sameLeaf + 0.5, wet - 1);
    }

    [Fact]
    public void The_effect_of_surface_water_is_the_wither_of_the_same_leaf_without_it()
    {
        AdviceOutcome.Advised wet = InventedBatch.Advised(RainWet);
        AdviceOutcome.Advised blotted = InventedBatch.Advised(Blotted);

        AssertIsDifference(Effect(wet, "without_surface_water"), wet, blotted);
    }

    [Fact]
    public void The_effect_of_elevation_is_the_wither_of_the_same_leaf_in_the_same_weather_at_sea_level()
    {
        AdviceOutcome.Advised high = InventedBatch.Advised(RainWet);
        AdviceOutcome.Advised low = InventedBatch.Advised(AtElevation(0));

        Assert.Equal(high.Plan.MeanHygrometricDifferenceK, low.Plan.MeanHygrometricDifferenceK, 0.01);
        AssertIsDifference(Effect(high, "at_sea_level"), high, low);
    }

    [Fact]
    public void Leaf_withers_faster_low_down_and_each_advice_says_by_how_much()
    {
        AdviceOutcome.Advised low = InventedBatch.Advised(AtElevation(600));
        AdviceOutcome.Advised high = InventedBatch.Advised(AtElevation(2_000));

        double apart = high.Plan.StopHour - low.Plan.StopHour;
        Assert.True(apart > 0.5, $"{apart} h");
        double said = Effect(low, "at_sea_level").HoursChange!.Value - Effect(high, "at_sea_level").HoursChange!.Value;
        Assert.Equal(apart, said, WrittenHours);
    }

    [Fact]
    public void Station_pressure_wins_over_elevation()
    {
        AdviceRequest low = AtElevation(0);
        double pressurePa = StandardAtmosphere.PressurePa(1_500);
        AdviceOutcome.Advised measured = InventedBatch.Advised(low with { Site = low.Site with { StationPressurePa = pressurePa } });

        Assert.Equal(InventedBatch.Advised(RainWet).Plan.StopHour, measured.Plan.StopHour, 1e-9);
    }

    [Fact]
    public void The_effect_of_a_thinner_spread_is_the_wither_of_it()
    {
        AdviceOutcome.Advised thick = InventedBatch.Advised(RainWet);
        AdviceOutcome.Advised thin = InventedBatch.Advised(
            InventedBatch.Measured(17, 0.95, 0.80, SurfaceKgPerKg, 0.8 * InventedBatch.UsualLoadKgPerM2));

        AssertIsDifference(Effect(thick, "spread_a_fifth_thinner"), thick, thin);
    }

    [Fact]
    public void The_effect_of_the_changing_night_is_the_wither_in_the_air_of_loading()
    {
        // Air that grows more humid through the night, as it does after a fine day.
        List<WeatherReading> night =
        [.. Enumerable.Range(1, 36).Select(hour => new WeatherReading(
            InventedBatch.LoadedAt.AddHours(hour), DryBulbC: 20 - Math.Min(hour, 8) * 0.5, RelativeHumidity: 0.7 + Math.Min(hour, 8) * 0.03))];
        AdviceRequest steady = InventedBatch.Measured(20, 0.7, 0.78, 0.05);
        AdviceOutcome.Advised changing = InventedBatch.Advised(steady with { Forecast = night });

        AssertIsDifference(Effect(changing, "if_air_stayed_as_at_loading"), changing, InventedBatch.Advised(steady));
    }

    [Fact]
    public void The_effect_of_the_wanted_time_is_the_plan_without_it()
    {
        AdviceOutcome.Advised free = InventedBatch.Advised(RainWet);
        double earlier = free.Plan.StopHour - 2;
        AdviceOutcome.Advised pressed = InventedBatch.Advised(RainWet with
        {
            Batch = RainWet.Batch with { ReadyBy = InventedBatch.LoadedAt.AddHours(earlier) },
        });

        Assert.True(pressed.Plan.StopHour < free.Plan.StopHour - 1);
        AssertIsDifference(Effect(pressed, "without_ready_by"), pressed, free);
    }

    private static AdviceRequest AtElevation(double elevationM) =>
        InventedBatch.Measured(17, 0.95, 0.80, SurfaceKgPerKg, elevationM: elevationM);

    private static FactorEffect Effect(AdviceOutcome.Advised advice, string code) =>
        advice.Effects.Single(effect => effect.Code == code);

    private static void AssertIsDifference(FactorEffect said, AdviceOutcome.Advised with, AdviceOutcome.Advised without)
    {
        Assert.Equal(without.Plan.StopHour - with.Plan.StopHour, said.HoursChange!.Value, WrittenHours);
        Assert.InRange(said.Turns!.Value - without.Plan.TurnHours.Count, -1, 1);
    }
}
