using WitherAdvisor.Advice;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Plans;
using WitherAdvisor.Spells;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>
/// The three seasons of the loft. The bands are common practice, no published source: after days of rain about twelve
/// hours, harsh, turned every two hours; in a dry windy spell about six, hardly heated, turned every hour; between
/// them else. Default coefficients, short style, 28 kg/m² at 1,500 m; the leaf's state comes from the weather alone.
/// </summary>
public sealed class ContrastTests
{
    /// <summary>Showers through the weeks, then three days of rain day and night.</summary>
    private static readonly InventedWeather WetDays = new(
        17, 1, 16.2, 2, (daysBefore, hour) => daysBefore <= 3 ? hour % 2 == 0 ? 1.5 : 0 : Shower(daysBefore, hour));

    /// <summary>Not a drop for six weeks, and a dry wind.</summary>
    private static readonly InventedWeather DryWind = new(
        20, 3, 10.7, 5.5, (daysBefore, hour) => daysBefore <= 42 ? 0 : Shower(daysBefore, hour));

    /// <summary>A shower every third day, the last the day before yesterday.</summary>
    private static readonly InventedWeather Fair = new(19, 2.5, 15.9, 2, Shower);

    private static readonly string Estate = Path.Combine(AppContext.BaseDirectory, "fixtures", "invented-estate");

    [Fact]
    public void Three_wet_days_are_withered_long_and_harshly_and_turned_every_two_hours()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Under(WetDays));

        Assert.Equal(SpellKind.Wet, advice.KnownLeaf.Spell.Kind);
        AssertWet(advice);
    }

    [Fact]
    public void A_dry_windy_spell_is_withered_short_and_gently_and_turned_every_hour()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Under(DryWind));

        Assert.Equal(SpellKind.DryWindy, advice.KnownLeaf.Spell.Kind);
        AssertDryWindy(advice);
    }

    [Fact]
    public void An_ordinary_day_lies_between_the_two()
    {
        AdviceOutcome.Advised advice = InventedBatch.Advised(InventedBatch.Under(Fair));

        Assert.Equal(SpellKind.Ordinary, advice.KnownLeaf.Spell.Kind);
        Assert.InRange(
            advice.Plan.StopHour,
            InventedBatch.Advised(InventedBatch.Under(DryWind)).Plan.StopHour + 1,
            InventedBatch.Advised(InventedBatch.Under(WetDays)).Plan.StopHour - 1);
    }

    [Fact]
    public void The_invented_estate_shows_the_same_three()
    {
        AdviceOutcome.Advised wet = OfEstate("rain-wet");
        AdviceOutcome.Advised dry = OfEstate("dry-windy");
        AdviceOutcome.Advised ordinary = OfEstate("ordinary");

        Assert.Equal(
            [SpellKind.Wet, SpellKind.DryWindy, SpellKind.Ordinary],
            new[] { wet, dry, ordinary }.Select(advice => advice.KnownLeaf.Spell.Kind));
        AssertWet(wet);
        AssertDryWindy(dry);
        Assert.InRange(ordinary.Plan.StopHour, dry.Plan.StopHour + 1, wet.Plan.StopHour - 1);
    }

    private static double Shower(int daysBefore, int hour) => daysBefore % 3 == 2 && hour is 15 or 16 ? 5 : 0;

    private static AdviceOutcome.Advised OfEstate(string batch) => InventedBatch.Advised(EstateRequest.Read(Estate, batch));

    private static void AssertWet(AdviceOutcome.Advised advice)
    {
        Assert.InRange(advice.Plan.StopHour, 11, 13.5);
        Assert.InRange(MeanHoursBetweenTurns(advice), 1.6, 2.4);
        Assert.All(Heated(advice), setting => Assert.True(LiftK(setting) >= 8, $"{setting.Hour} h: {LiftK(setting)} K"));
    }

    private static void AssertDryWindy(AdviceOutcome.Advised advice)
    {
        Assert.InRange(advice.Plan.StopHour, 5, 7.3);
        Assert.InRange(MeanHoursBetweenTurns(advice), 1, 1.8);
        // On the mean: as the evening cools, the same drying takes somewhat more heat.
        Assert.InRange(Heated(advice).Average(LiftK), 0, 3);
    }

    /// <summary>From loading on.</summary>
    private static double MeanHoursBetweenTurns(AdviceOutcome.Advised advice) => advice.Plan.TurnHours[^1] / advice.Plan.TurnHours.Count;

    private static IEnumerable<AirSetting> Heated(AdviceOutcome.Advised advice) =>
        advice.Plan.Settings.Where(setting => setting.Stage != StageKind.Cooling);

    private static double LiftK(AirSetting setting) => setting.Plenum.DryBulbC - setting.Ambient.DryBulbC;
}
