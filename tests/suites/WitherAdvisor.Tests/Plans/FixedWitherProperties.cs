using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using WitherAdvisor.Leaf;
using WitherAdvisor.Simulations;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Plans;

/// <summary>What must hold of any wither whose air and turns are fixed.</summary>
[Properties(Arbitrary = [typeof(AnyWither)])]
public sealed class FixedWitherProperties
{
    /// <summary>Steps in time end on turns and quarter hours; what moves between them moves the hours by less than this, relative.</summary>
    private const double StepTolerance = 0.002;

    [Property]
    public void A_thinner_spread_never_takes_longer(SimulationRequest request) =>
        AssertNoLonger(request with { GreenWeightKg = 0.8 * request.GreenWeightKg }, request);

    [Property]
    public void Hotter_air_never_takes_longer(SimulationRequest request) =>
        AssertNoLonger(
            request with { Stages = [.. request.Stages.Select(stage => stage with { PlenumDryBulbC = stage.PlenumDryBulbC + 1 })] }, request);

    [Property]
    public void More_water_on_the_same_leaf_never_makes_it_faster(SimulationRequest request)
    {
        double more = request.Leaf.SurfaceWaterKgPerKg + 0.05;
        AssertNoLonger(
            request,
            request with
            {
                Leaf = request.Leaf with { SurfaceWaterKgPerKg = more },
                GreenWeightKg = request.GreenWeightKg * (1 + more) / (1 + request.Leaf.SurfaceWaterKgPerKg),
            });
    }

    [Property]
    public void More_air_never_takes_longer(SimulationRequest request) =>
        AssertNoLonger(request, request with { FanShare = 0.8 * request.FanShare });

    [Property]
    public void The_weight_is_at_all_times_the_dry_matter_and_its_water(SimulationRequest request)
    {
        SimulationResult result = WitherSimulation.Run(request)!;
        double dryKg = request.Leaf.DryMatterKg(request.GreenWeightKg);

        Assert.Equal(request.GreenWeightKg, result.Curve[0].LeafWeightKg, 1e-6);
        Assert.All(result.Curve, point => Assert.Equal(dryKg, point.LeafWeightKg * (1 - point.MeanMoistureWetBasis), 1e-6));
        Assert.Equal(result.Curve[^1].LeafWeightKg, result.Outturn * request.GreenWeightKg, 1e-6);
        Assert.Equal(
            result.OutturnOfLeaf, Outturn.FromMoisture(request.Leaf.TissueMoistureWetBasis, result.FinalMoistureWetBasis), 1e-9);
    }

    [Property]
    public void Leaf_only_loses_weight_and_the_air_leaves_no_hotter_than_it_came(SimulationRequest request)
    {
        SimulationResult result = WitherSimulation.Run(request)!;
        double hottest = result.Settings.Max(setting => setting.Plenum.DryBulbC);

        Assert.All(result.Curve.Zip(result.Curve.Skip(1)), pair =>
            Assert.True(pair.Second.LeafWeightKg <= pair.First.LeafWeightKg + 1e-9));
        Assert.All(result.Curve, point => Assert.True(point.ExhaustDryBulbC <= hottest + 1e-9));
    }

    [Property]
    public void What_comes_out_is_a_number(SimulationRequest request) =>
        Assert.NotEmpty(JsonText.Of(WitherSimulation.Run(request)!));

    private static void AssertNoLonger(SimulationRequest quick, SimulationRequest slow)
    {
        double? hours = WitherSimulation.Run(quick)!.HoursToTarget;
        double? longer = WitherSimulation.Run(slow)!.HoursToTarget;
        Assert.True(
            longer is null || hours <= longer * (1 + StepTolerance), $"{hours} h, but {longer} h");
    }
}
