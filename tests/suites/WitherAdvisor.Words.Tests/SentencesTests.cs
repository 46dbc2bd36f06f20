using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Spells;
using WitherAdvisor.Words.Leaf;
using WitherAdvisor.Words.Plans;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Words.Tests;

public sealed class SentencesTests
{
    private static readonly PersonUnits Imperial = new(TemperatureScale.Fahrenheit, WeightUnit.Pound);
    private static readonly DateTimeOffset LoadedAt = new(2026, 7, 14, 10, 40, 0, TimeSpan.Zero);
    private static readonly WallClock Clock = new("Asia/Colombo");

    private static readonly WitherPlan TwoTurns = new([], [], null, [2, 4], 6, 1, 7, 0, 0.02, 0.5, 0.5);

    [Fact]
    public void A_factor_can_be_read_aloud() => Assert.Equal(
        "Without the rain or dew on the leaf: 2.4 h shorter, plenum 1.2 °C cooler, 4 turns.",
        FactorWording.Sentence(Wordbook.English, new FactorEffect("without_surface_water", -2.4, -1.2, Turns: 4), TwoTurns, PersonUnits.Usual));

    [Fact]
    public void A_factor_in_fahrenheit_speaks_of_a_difference() => Assert.Equal(
        "At sea level: 0.9 h longer, plenum 1.8 °F warmer.",
        FactorWording.Sentence(Wordbook.English, new FactorEffect("at_sea_level", 0.9, 1, Turns: 2), TwoTurns, Imperial));

    [Fact]
    public void A_factor_that_changes_nothing_says_so() => Assert.Equal(
        "At sea level: just as long.",
        FactorWording.Sentence(Wordbook.English, new FactorEffect("at_sea_level", 0.01, 0.01, Turns: 2), TwoTurns, PersonUnits.Usual));

    [Fact]
    public void A_factor_without_which_leaf_is_never_ready_says_so() => Assert.Equal(
        "At sea level: the leaf would not be ready in time.",
        FactorWording.Sentence(Wordbook.English, new FactorEffect("at_sea_level", null, null), TwoTurns, PersonUnits.Usual));

    [Fact]
    public void A_turn_that_is_no_longer_needed_is_told() => Assert.EndsWith(
        "no turn needed.",
        FactorWording.Sentence(Wordbook.English, new FactorEffect("at_sea_level", -1, 0, Turns: 0), TwoTurns, PersonUnits.Usual),
        StringComparison.Ordinal);

    [Fact]
    public void A_limit_names_what_is_allowed_and_what_is_reached()
    {
        LimitNotice notice = new(LimitKind.PlenumDryBulb, 35, 36.2);

        Assert.Equal("Dry bulb under the mesh: at most 35.0 °C; the plan comes to 36.2 °C.", LimitWording.Sentence(Wordbook.English, notice, PersonUnits.Usual));
        Assert.Equal("Dry bulb under the mesh: at most 95.0 °F; the plan comes to 97.2 °F.", LimitWording.Sentence(Wordbook.English, notice, Imperial));
    }

    [Fact]
    public void A_limit_that_nothing_meets_says_so() => Assert.Equal(
        "Longest time since plucking: at most 24.0 h; no plan comes to that.",
        LimitWording.Sentence(Wordbook.English, new LimitNotice(LimitKind.LongestTimeSincePlucking, 24, null), PersonUnits.Usual));

    [Fact]
    public void A_relief_is_something_to_do() => Assert.Equal(
        ["Spread the leaf thinner: 19.0 kg/m².", "Roll later: by 1.5 h."],
        [
            ReliefWording.Sentence(Wordbook.English, new Relief(ReliefKind.SpreadThinner, 19), PersonUnits.Usual),
            ReliefWording.Sentence(Wordbook.English, new Relief(ReliefKind.RollLater, 1.5), PersonUnits.Usual),
        ]);

    [Fact]
    public void A_check_says_when_it_would_be_ready_and_what_to_set() => Assert.Equal(
        "ready about Wed 02:35 if the air stays as set; to be back on time set the plenum 1.5 °C cooler.",
        CheckWording.Sentence(Wordbook.English, new CheckResponse(10.4, -1.5), LoadedAt, Clock, PersonUnits.Usual));

    [Fact]
    public void A_check_that_nothing_helps_says_so() => Assert.Equal(
        "it won’t be ready with the air as set; ask for new advice with the weight you read.",
        CheckWording.Sentence(Wordbook.English, new CheckResponse(null, null), LoadedAt, Clock, PersonUnits.Usual));

    [Fact]
    public void An_estimate_tells_its_error_its_origin_and_its_pieces() => Assert.Equal(
        "Water on the leaf: 20.0 % ± 6.0 of the leaf’s own weight, worked out from the weather: rain 17.0 %, dew 3.0 %.",
        EstimateWording.SurfaceWater(Wordbook.English, new Estimate(0.20, 0.06, EstimateOrigin.FromWeather, [new("rain", 0.17), new("dew", 0.03)])));

    [Fact]
    public void What_was_felt_is_told_once() => Assert.Equal(
        "Water on the leaf: 15.0 % ± 5.0 of the leaf’s own weight, judged by hand.",
        EstimateWording.SurfaceWater(Wordbook.English, new Estimate(0.15, 0.05, EstimateOrigin.ByFeel, [new("felt", 0.15)])));

    [Fact]
    public void Moisture_is_never_told_without_its_basis() => Assert.Equal(
        "Water in the leaf: 77.5 % ± 1.0 moisture (wet basis), measured.",
        EstimateWording.TissueMoisture(Wordbook.English, new Estimate(0.775, 0.01, EstimateOrigin.Measured, [])));

    [Fact]
    public void A_spell_tells_the_numbers_that_led_to_it_and_what_is_not_known()
    {
        string sentence = SpellWording.Sentence(Wordbook.English, new Spell(SpellKind.DryWindy, 0, null, 0.62, 0.08, null, 2.1));

        Assert.StartsWith("Dry windy spell.", sentence, StringComparison.Ordinal);
        Assert.Contains("last 72 hours: 0.0 mm; in the last 10 days: not known.", sentence, StringComparison.Ordinal);
        Assert.Contains("62 % ± 8 of the bushes’ need for water", sentence, StringComparison.Ordinal);
        Assert.EndsWith("not known.", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_input_does_is_told_at_both_its_ends()
    {
        InputSensitivity bar = new("tissue_moisture", SensitivityReach.P10ToP90, "1", 0.782, 0.8, 0.818, 10, 8.8, 11.3, null);

        Assert.Equal("Water in the leaf: at 78.2 % ready 1.2 h sooner, at 81.8 % 1.3 h later.", SensitivityWording.Sentence(Wordbook.English, bar, PersonUnits.Usual));
        Assert.EndsWith("at 81.8 % not in time.", SensitivityWording.Sentence(Wordbook.English, bar with { HoursAtHigh = null }, PersonUnits.Usual), StringComparison.Ordinal);
        InputSensitivity held = new("held_difference", SensitivityReach.P10ToP90, "K", 6.7, 7.2, 7.7, 10, 11, 9.02, null);
        Assert.Equal("Hygrometric difference actually held: at 12.1 °F ready 1.0 h later, at 13.9 °F 1.0 h sooner.", SensitivityWording.Sentence(Wordbook.English, held, Imperial));
    }

    [Fact]
    public void The_cautions_cover_what_the_trade_must_mind()
    {
        string all = string.Join(' ', Cautions.All(Wordbook.English).Select(caution => caution.Full)) + Cautions.Standing(Wordbook.English);

        Assert.All(
            ["lock", "Guards", "hot air", "flue gas", "carbon-monoxide", "non-slip", "bare feet", "Keep air moving", "pre-harvest interval", "never advises on dosing", "Local codes", "a person sets the plant"],
            words => Assert.Contains(words, all, StringComparison.Ordinal));
    }
}
