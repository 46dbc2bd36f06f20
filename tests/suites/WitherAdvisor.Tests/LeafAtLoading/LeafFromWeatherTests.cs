using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Spells;
using Xunit;

namespace WitherAdvisor.Tests.LeafAtLoading;

public sealed class LeafFromWeatherTests
{
    [Fact]
    public void Features_and_spell_in_one_are_those_of_the_estimate()
    {
        IReadOnlyList<WeatherReading> weather = InventedDays.Wet.Hours(40, hour => hour % 5 == 0 ? 3 : 0);
        PluckedLeaf leaf = InventedDays.Plucked(8, 12);
        WitherCoefficients coefficients = new();

        (LeafFeatures features, Spell spell) = LeafFromWeather.FeaturesAndSpell(InventedDays.Site, weather, [], leaf, coefficients);

        Assert.Equal(LeafFromWeather.Features(InventedDays.Site, weather, [], leaf, coefficients.CanopyCapacityMm), features);
        Assert.Equal(LeafFromWeather.Estimate(InventedDays.Site, weather, [], leaf, coefficients).Spell, spell);
    }

    [Fact]
    public void A_site_may_hold_its_spells_by_thresholds_of_its_own()
    {
        Spell Under(SpellThresholds? thresholds) => LeafFromWeather.Estimate(
            InventedDays.Site, InventedDays.Ordinary.Hours(40, hour => hour == -20 ? 3 : 0), [], InventedDays.Plucked(12, 14), new(), thresholds).Spell;

        Assert.Equal(SpellKind.Ordinary, Under(null).Kind);
        Assert.Equal(SpellKind.Wet, Under(new SpellThresholds { WetRainIn72HoursMm = 2, WetEndsBelowRainIn72HoursMm = 1 }).Kind);
    }

    [Fact]
    public void Values_that_no_weather_can_have_are_told_though_nothing_else_is_known() => Assert.Equal(
        ["no_history", "impossible_values"],
        LeafFromWeather.Estimate(InventedDays.Site, [], [new(InventedDays.At(0), InventedDays.At(8), -3)], InventedDays.Plucked(12, 14), new())
            .Missing.Select(assumption => assumption.Code));

    private static readonly PluckedLeaf Morning = InventedDays.Plucked(8, 12);

    private static readonly IReadOnlyList<WeatherReading> Showery =
        InventedDays.Ordinary.Hours(70, hour => (hour + 24_000) % 48 == 18 ? 9 : 0);

    private static readonly IReadOnlyList<WeatherReading> Wet = InventedDays.Wet.Hours(70, hour => hour > -72 ? 1 : 0);

    private static readonly IReadOnlyList<WeatherReading> Drought = InventedDays.DryWindy.DryHours(70);

    [Fact]
    public void Without_any_reading_it_still_answers_widely_and_says_so()
    {
        LeafEstimate leaf = Estimate([], Morning);

        Assert.Equal(EstimateOrigin.Assumed, leaf.SurfaceWaterKgPerKg.Origin);
        Assert.Equal(EstimateOrigin.Assumed, leaf.TissueMoistureWetBasis.Origin);
        Assert.InRange(leaf.TissueMoistureWetBasis.Value, 0.76, 0.80);
        Assert.True(leaf.SurfaceWaterKgPerKg.StandardDeviation >= 0.05);
        Assert.True(leaf.TissueMoistureWetBasis.StandardDeviation >= 0.02);
        Assert.Equal("no_history", Assert.Single(leaf.Missing).Code);
    }

    [Fact]
    public void A_weighed_sample_and_an_oven_win_over_any_weather()
    {
        LeafEstimate leaf = Estimate(
            Drought, Morning with { MeasuredSurfaceWaterKgPerKg = 0.2, SurfaceFeel = SurfaceFeel.Dry, MeasuredMoistureWetBasis = 0.81 });

        Assert.Equal((0.2, EstimateOrigin.Measured), (leaf.SurfaceWaterKgPerKg.Value, leaf.SurfaceWaterKgPerKg.Origin));
        Assert.Equal((0.81, EstimateOrigin.Measured), (leaf.TissueMoistureWetBasis.Value, leaf.TissueMoistureWetBasis.Origin));
        Assert.Equal(0.02, leaf.SurfaceWaterKgPerKg.StandardDeviation);
        Assert.Equal(0.01, leaf.TissueMoistureWetBasis.StandardDeviation);
        Assert.Empty(leaf.SurfaceWaterKgPerKg.Contributions);
    }

    [Theory]
    [InlineData(SurfaceFeel.Dry, 0, 0.02)]
    [InlineData(SurfaceFeel.Damp, 0.03, 0.11)]
    [InlineData(SurfaceFeel.Wet, 0.10, 0.20)]
    [InlineData(SurfaceFeel.Dripping, 0.18, 0.35)]
    public void A_hand_in_the_leaf_wins_over_weather_that_says_otherwise(SurfaceFeel feel, double low, double high)
    {
        foreach (IReadOnlyList<WeatherReading> weather in new[] { Wet, Drought, [] })
        {
            Estimate surface = Estimate(weather, Morning with { SurfaceFeel = feel }).SurfaceWaterKgPerKg;

            Assert.InRange(surface.Value, low, high);
            Assert.Equal(EstimateOrigin.ByFeel, surface.Origin);
        }
    }

    [Fact]
    public void Weather_that_agrees_with_the_hand_narrows_it_and_places_it()
    {
        PluckedLeaf wetByHand = Morning with { SurfaceFeel = SurfaceFeel.Wet };
        Estimate hand = Estimate([], wetByHand).SurfaceWaterKgPerKg;
        Estimate both = Estimate(Wet, wetByHand).SurfaceWaterKgPerKg;

        Assert.True(both.StandardDeviation < hand.StandardDeviation);
        Assert.InRange(both.Value, hand.Value, Estimate(Wet, Morning).SurfaceWaterKgPerKg.Value);
    }

    [Fact]
    public void Drought_dries_the_tissue_and_showers_keep_it_wet()
    {
        // Published: 74 % in dry weather, 78 to 82 % in rains (trade dryer table; Tocklai withering notes).
        Estimate dry = Estimate(Drought, Morning).TissueMoistureWetBasis;
        Estimate moist = Estimate(Showery, Morning).TissueMoistureWetBasis;

        Assert.InRange(dry.Value, 0.715, 0.75);
        Assert.InRange(moist.Value, 0.78, 0.82);
        Assert.True(Piece(dry, "drought") < -0.04);
        Assert.Equal(EstimateOrigin.FromWeather, dry.Origin);
    }

    [Fact]
    public void Coarse_leaf_is_wetter_and_an_unknown_standard_less_sure()
    {
        Estimate fine = Estimate(Showery, Morning with { Standard = LeafStandard.Fine }).TissueMoistureWetBasis;
        Estimate coarse = Estimate(Showery, Morning with { Standard = LeafStandard.Coarse }).TissueMoistureWetBasis;
        Estimate unknown = Estimate(Showery, Morning).TissueMoistureWetBasis;

        Assert.Equal(0.01, coarse.Value - fine.Value, 1e-12);
        Assert.Equal(0.01, Piece(coarse, "standard"), 1e-12);
        Assert.True(unknown.StandardDeviation > fine.StandardDeviation);
    }

    [Fact]
    public void Dry_leaf_loses_of_its_own_water_on_the_way_to_the_trough()
    {
        Estimate fresh = Estimate(Drought, Morning).TissueMoistureWetBasis;
        Estimate carried = Estimate(Drought, Morning with { LoadedAt = InventedDays.At(17) }).TissueMoistureWetBasis;

        // 0.18 % of leaf weight an hour: 5 h take 0.9 % of it, of which 26 to 28 % shows as moisture.
        Assert.InRange(fresh.Value - carried.Value, 0.001, 0.004);
        Assert.True(Piece(carried, "field_to_trough") < Piece(fresh, "field_to_trough"));
    }

    [Fact]
    public void A_longer_history_knows_the_soil_better()
    {
        double week = StressError(7);
        double month = StressError(30);
        double season = StressError(90);

        Assert.True(week > month && month > season, $"{week:F3} {month:F3} {season:F3}");

        static double StressError(int days) =>
            Estimate(InventedDays.DryWindy.DryHours(days), Morning).Spell.WaterStressStandardDeviation!.Value;
    }

    [Fact]
    public void Hours_of_unknown_rain_are_not_dry_hours()
    {
        Estimate dry = Estimate(Drought, Morning).SurfaceWaterKgPerKg;
        Estimate unknown = Estimate(WithoutRainAfter(Drought, 2), Morning).SurfaceWaterKgPerKg;

        Assert.Equal(0, dry.Value);
        Assert.True(unknown.Value > 0);
        Assert.True(unknown.StandardDeviation > 2 * dry.StandardDeviation);
        Assert.True(Piece(unknown, "unknown_rain") > 0);
    }

    [Fact]
    public void Rain_stated_by_hand_wets_the_leaf_less_surely_than_rain_read_by_the_hour()
    {
        IReadOnlyList<WeatherReading> noRain = WithoutRainAfter(Wet, -72);
        RainTotal[] stated = [new(InventedDays.At(-60), InventedDays.At(12), 72)];

        Estimate byHand = LeafFromWeather.Estimate(InventedDays.Site, noRain, stated, Morning, new()).SurfaceWaterKgPerKg;
        Estimate byHour = Estimate(Wet, Morning).SurfaceWaterKgPerKg;

        Assert.InRange(byHand.Value, 0.05, byHour.Value + 0.01);
        Assert.True(byHand.StandardDeviation > byHour.StandardDeviation);
    }

    [Fact]
    public void A_single_day_of_reports_with_rain_stated_by_hand_is_enough_to_answer()
    {
        IReadOnlyList<WeatherReading> reports =
            [.. InventedDays.Wet.Hours(1, _ => null).Select(reading => reading with { Time = reading.Time.AddMinutes(-7) })];
        RainTotal[] stated = [new(InventedDays.At(-60), InventedDays.At(12), 40)];

        LeafEstimate leaf = LeafFromWeather.Estimate(InventedDays.Site, reports, stated, Morning, new());

        Assert.Equal(EstimateOrigin.FromWeather, leaf.SurfaceWaterKgPerKg.Origin);
        Assert.Equal(SpellKind.Wet, leaf.Spell.Kind);
        Assert.Contains(leaf.Missing, missing => missing.Code == "rain_hours_unknown");
    }

    private static IReadOnlyList<WeatherReading> WithoutRainAfter(IReadOnlyList<WeatherReading> readings, double hour) =>
        [.. readings.Select(reading => reading.Time > InventedDays.At(hour) ? reading with { RainMm = null } : reading)];

    private static LeafEstimate Estimate(IReadOnlyList<WeatherReading> readings, PluckedLeaf leaf) =>
        LeafFromWeather.Estimate(InventedDays.Site, readings, [], leaf, new());

    private static double Piece(Estimate estimate, string code) =>
        estimate.Contributions.Where(piece => piece.Code == code).Sum(piece => piece.Amount);
}
