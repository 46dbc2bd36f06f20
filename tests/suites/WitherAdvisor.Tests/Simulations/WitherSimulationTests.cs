using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Readings;
using WitherAdvisor.Simulations;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Simulations;

public sealed class WitherSimulationTests
{
    private const double Rounding = 1e-9;

    public static TheoryData<double, double, double, double> Nights => new()
    {
        { 17, 0.95, 0.80, 0.20 },
        { 20, 0.55, 0.74, 0 },
        { 19, 0.82, 0.775, 0.05 },
    };

    [Theory]
    [MemberData(nameof(Nights))]
    public void A_plan_run_by_hand_is_what_the_advice_showed(double dryBulbC, double humidity, double moisture, double surface)
    {
        AdviceRequest request = InventedBatch.Measured(dryBulbC, humidity, moisture, surface);
        AdviceOutcome.Advised advice = InventedBatch.Advised(request);

        SimulationResult result = WitherSimulation.Run(Of(request, advice.Plan.StopHour) with
        {
            Leaf = new(advice.KnownLeaf.TissueMoistureWetBasis.Value, advice.KnownLeaf.SurfaceWaterKgPerKg.Value),
            Stages = [.. advice.Plan.Stages.Select(stage =>
                new FixedStage(stage.ToHour, HygrometricDifferenceK: stage.WantedHygrometricDifferenceK))],
            TurnHours = advice.Plan.TurnHours,
            FanShare = advice.Plan.FanShare,
        })!;

        Assert.Equal(advice.Curve.Count, result.Curve.Count);
        Assert.All(advice.Curve.Zip(result.Curve), pair =>
        {
            Assert.Equal(pair.First.Hour, pair.Second.Hour, Rounding);
            Assert.Equal(pair.First.MeanMoistureWetBasis, pair.Second.MeanMoistureWetBasis, Rounding);
            Assert.Equal(pair.First.BottomMoistureWetBasis, pair.Second.BottomMoistureWetBasis, Rounding);
            Assert.Equal(pair.First.TopMoistureWetBasis, pair.Second.TopMoistureWetBasis, Rounding);
            Assert.Equal(pair.First.LeafWeightKg, pair.Second.LeafWeightKg, 1e-6);
            Assert.Equal(pair.First.ExhaustDryBulbC, pair.Second.ExhaustDryBulbC, 1e-6);
        });
        Assert.Equal(advice.Plan.Outturn, result.Outturn, Rounding);
        Assert.Equal(advice.Plan.OutturnOfLeaf, result.OutturnOfLeaf, Rounding);
        Assert.Equal(advice.Plan.HeatKWh, result.HeatKWh, 1e-6);
        Assert.Equal(advice.Plan.LargestSpreadWetBasis, result.LargestSpreadWetBasis, Rounding);
        Assert.Equal(advice.Plan.Settings.Count, result.Settings.Count);
        Assert.Empty(result.Notices);
    }

    [Fact]
    public void One_reading_alone_is_held_all_night()
    {
        SimulationRequest once = Ordinary(12) with { Air = [Reading(0)] };
        SimulationRequest hourly = once with { Air = [.. Enumerable.Range(0, 14).Select(Reading)] };

        SimulationResult held = WitherSimulation.Run(once)!;

        Assert.Equal(WitherSimulation.Run(hourly)!.Curve, held.Curve);
        Assert.All(held.Settings, setting => Assert.Equal(19, setting.Ambient.DryBulbC, Rounding));
    }

    [Fact]
    public void Without_air_there_is_no_answer() =>
        Assert.Null(WitherSimulation.Run(Ordinary(12) with { Air = [new(InventedBatch.LoadedAt, DryBulbC: 19)] }));

    [Fact]
    public void A_plenum_over_35_degrees_is_run_and_spoken_of()
    {
        SimulationResult result = WitherSimulation.Run(Ordinary(6) with { Stages = [new(6, PlenumDryBulbC: 36)] })!;

        LimitNotice notice = result.Notices.Single(notice => notice.Limit == LimitKind.PlenumDryBulb);
        Assert.Equal(WitherStyle.HighestPlenumC, notice.Allowed);
        Assert.Equal(36, notice.Reached!.Value, Rounding);
    }

    [Fact]
    public void The_hottest_of_all_stages_is_spoken_of()
    {
        SimulationResult result = WitherSimulation.Run(Ordinary(6) with { Stages = [new(2, PlenumDryBulbC: 38), new(6, PlenumDryBulbC: 25)] })!;

        Assert.Equal(38, result.Notices.Single(notice => notice.Limit == LimitKind.PlenumDryBulb).Reached!.Value, Rounding);
    }

    [Fact]
    public void A_difference_over_the_ceiling_is_spoken_of_once_the_surface_is_dry()
    {
        SimulationRequest wet = Ordinary(12) with { Leaf = new(0.78, 0.2), Stages = [new(12, HygrometricDifferenceK: 11)] };
        double surfaceDry = WitherSimulation.Run(wet)!.HoursToSurfaceDry!.Value;

        Assert.Empty(WitherSimulation.Run(wet with { Stages = [new(Math.Floor(surfaceDry), HygrometricDifferenceK: 11)] })!.Notices);
        LimitNotice notice = Assert.Single(WitherSimulation.Run(wet)!.Notices);
        Assert.Equal(LimitKind.HygrometricDifference, notice.Limit);
        Assert.Equal(WitherStyle.Short.HygrometricDifferenceCeilingK, notice.Allowed);
        Assert.Equal(11, notice.Reached!.Value, 1e-6);
    }

    [Fact]
    public void A_plan_that_stops_short_does_not_say_when_it_would_be_ready()
    {
        SimulationResult result = WitherSimulation.Run(Ordinary(3) with { Leaf = new(0.78, 0.3) })!;

        Assert.Null(result.HoursToTarget);
        Assert.Null(result.HoursToSurfaceDry);
        Assert.True(result.FinalMoistureWetBasis > WitherStyle.Short.TargetMoistureWetBasis);
    }

    [Fact]
    public void Ambient_air_costs_no_heat_and_a_cooler_setting_does_not_cool()
    {
        SimulationResult ambient = WitherSimulation.Run(Ordinary(6) with { Stages = [new(6)] })!;
        SimulationResult cooler = WitherSimulation.Run(Ordinary(6) with { Stages = [new(6, PlenumDryBulbC: 10)] })!;

        Assert.Equal(0, ambient.HeatKWh);
        Assert.Equal(ambient.Curve, cooler.Curve);
    }

    private static SimulationRequest Ordinary(double stopHour) => Of(InventedBatch.Measured(19, 0.82, 0.775, 0.05), stopHour);

    private static SimulationRequest Of(AdviceRequest request, double stopHour) => new(
        request.Site, request.Trough, request.Batch.GreenWeightKg,
        new LeafState(request.Batch.MeasuredMoistureWetBasis!.Value, request.Batch.MeasuredSurfaceWaterKgPerKg!.Value),
        request.Batch.LoadedAt, [.. request.Readings.TakeLast(1), .. request.Forecast], [new(stopHour, HygrometricDifferenceK: 7.2)], [2, 4, 6], 1, request.Coefficients);

    private static WeatherReading Reading(int hour) =>
        new(InventedBatch.LoadedAt.AddHours(hour), DryBulbC: 19, RelativeHumidity: 0.82);
}
