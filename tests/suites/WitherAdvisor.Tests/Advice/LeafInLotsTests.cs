using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>A trough of 42 m² that gets 400 kg at noon, 400 at half past two and 376 at five.</summary>
public sealed class LeafInLotsTests
{
    private const double LastLotHour = 5;
    private const double AllKg = 1_176;

    private static readonly InventedWeather Fair = new(
        19, 2.5, 15.9, 2, (daysBefore, hour) => daysBefore % 3 == 1 && hour is 15 or 16 ? 4 : 0);

    private static readonly DateTimeOffset Noon = new(2026, 6, 1, 12, 0, 0, TimeSpan.FromHours(5.5));
    private static readonly LeafLabel Label = new("Invented division", "Field 1", null, null, LeafStandard.Fine);

    private static readonly LeafLot[] Afternoon = [LotAt(0, 400), LotAt(2.5, 400), LotAt(LastLotHour, 376)];

    [Fact]
    public void One_plan_is_made_for_the_whole_without_heat_or_turn_until_the_last_lot_is_on()
    {
        AdviceOutcome.Advised advice = Of(Afternoon);
        WitherPlan plan = advice.Plan;

        PlanStage loading = plan.Stages[0];
        Assert.Equal((StageKind.Loading, 0, LastLotHour), (loading.Kind, loading.FromHour, loading.ToHour));
        Assert.Null(loading.WantedHygrometricDifferenceK);
        Assert.All(
            plan.Settings.Where(setting => setting.Hour < LastLotHour),
            setting => Assert.Equal((0, 1, 1), (setting.HeatKW, setting.FanShare, setting.RunShare)));
        Assert.NotEmpty(plan.TurnHours);
        Assert.All(plan.TurnHours, turn => Assert.True(turn > LastLotHour));
        Assert.Empty(advice.Broken);
    }

    [Fact]
    public void The_curve_grows_by_each_lot()
    {
        AdviceOutcome.Advised advice = Of(Afternoon);

        Assert.Equal(400, advice.Curve[0].LeafWeightKg, 1e-9);
        AssertLaid(advice.Curve, 2.5, 400);
        AssertLaid(advice.Curve, LastLotHour, 376);
        CurvePoint stop = advice.Curve[^1];
        Assert.Equal(advice.Plan.Outturn, stop.LeafWeightKg / AllKg, 1e-9);
        Assert.Equal(0.6, stop.MeanMoistureWetBasis, 0.005);
    }

    [Fact]
    public void It_takes_longer_than_a_lot_alone_and_is_ready_sooner_after_the_last_than_leaf_loaded_then()
    {
        double whole = Of(Afternoon).Plan.StopHour;

        Assert.True(whole > Of([Afternoon[0]]).Plan.StopHour);
        Assert.True(whole - LastLotHour < Of([LotAt(LastLotHour, AllKg)]).Plan.StopHour);
    }

    [Fact]
    public void One_lot_is_the_same_as_the_leaf_without_lots()
    {
        var plain = new Batch(Label, Noon.AddHours(-4), Noon.AddHours(-0.5), Noon, AllKg);

        Assert.Equal(Json(Advisor.Advise(Request(plain))), Json(Of([LotAt(0, AllKg)])));
    }

    [Fact]
    public void Lots_in_any_order_make_the_same_plan()
    {
        LeafLot[] others = [Afternoon[2], Afternoon[0], Afternoon[1]];

        Assert.Equal(Batch.OfLots(Afternoon), Batch.OfLots(others));
        Assert.Equal(Json(Of(Afternoon)), Json(Of(others)));
    }

    [Fact]
    public void Of_an_expected_lot_hour_and_weight_are_enough()
    {
        AdviceOutcome.Advised expected = Of([Afternoon[0], Afternoon[1], new(Noon.AddHours(LastLotHour), 376, IsExpected: true)]);

        Assert.Equal(JsonSerializer.Serialize(Of(Afternoon).Plan), JsonSerializer.Serialize(expected.Plan));
        Assert.Contains(new Assumption.LotsExpected(1, 376), expected.Assumptions);
        Assert.Contains(new Assumption.PluckingOfLotsUnknown(1), expected.Assumptions);
    }

    [Fact]
    public void The_limits_of_the_chemical_wither_count_from_the_youngest_and_the_oldest_leaf()
    {
        WitherStyle style = WitherStyle.Short;
        AdviceOutcome.Advised advice = Of(Afternoon);
        Batch batch = Batch.OfLots(Afternoon);

        Assert.Equal(Noon.AddHours(-4), batch.PluckedFrom);
        Assert.Equal(Noon.AddHours(LastLotHour - 0.5), batch.PluckedTo);
        Assert.True(advice.Plan.StopHour >= style.ShortestHoursSincePlucking + LastLotHour - 0.5 - 1e-9 || advice.KnownLeaf.Spell.Kind == SpellKind.DryWindy);
        Assert.True(advice.Plan.StopHour <= style.LongestHoursSincePlucking - 4);
    }

    [Fact]
    public void Wet_leaf_on_dry_is_not_given_air_meant_for_wet_leaf()
    {
        AdviceOutcome.Advised advice = Of([Afternoon[0] with { MeasuredSurfaceWaterKgPerKg = 0 }, LotAt(2, 400) with { MeasuredSurfaceWaterKgPerKg = 0.2 }]);

        Assert.DoesNotContain(advice.Plan.Stages, stage => stage.Kind == StageKind.SurfaceDrying);
    }

    [Fact]
    public void Its_checks_come_when_all_leaf_is_on_and_weigh_all_of_it()
    {
        AdviceOutcome.Advised advice = Of(Afternoon);

        Assert.NotEmpty(advice.Checks);
        Assert.All(advice.Checks, check =>
        {
            Assert.True(check.Hour > LastLotHour);
            Assert.True(check.LowWeightKg <= check.ExpectedWeightKg && check.ExpectedWeightKg <= check.HighWeightKg);
            Assert.InRange(check.ExpectedWeightKg, advice.Plan.Outturn * AllKg, AllKg);
        });
    }

    [Fact]
    public void The_middle_of_what_may_come_lies_on_the_plan()
    {
        AdviceOutcome.Advised advice = Of(Afternoon);

        Assert.Equal(advice.Plan.ReadyHour, advice.ReadyHours.P50!.Value, 0.5);
        Assert.Equal(0.6, advice.FinalMoistureWetBasis.P50!.Value, 0.01);
    }

    private static void AssertLaid(IReadOnlyList<CurvePoint> curve, double hour, double kg)
    {
        CurvePoint[] there = [.. curve.Where(point => Math.Abs(point.Hour - hour) < 1e-9)];

        Assert.Equal(kg, there[^1].LeafWeightKg - there[0].LeafWeightKg, 1e-6);
    }

    private static LeafLot LotAt(double hour, double kg) =>
        new(Noon.AddHours(hour), kg, Label, Noon.AddHours(hour - 4), Noon.AddHours(hour - 0.5));

    private static AdviceOutcome.Advised Of(IReadOnlyList<LeafLot> lots) => InventedBatch.Advised(Request(Batch.OfLots(lots)));

    private static AdviceRequest Request(Batch batch) => InventedBatch.Under(Fair) with
    {
        Trough = new(42),
        Batch = batch,
        Readings = Fair.Before(batch.LoadedAt, 70),
        Forecast = Fair.After(batch.LoadedAt, 36),
    };

    private static string Json(AdviceOutcome outcome) => JsonSerializer.Serialize<object>(outcome);
}
