using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>What a maker would sign: the wanted air where it will do, and no more than the hour asks for where it will not.</summary>
public sealed class PlanSearchTests
{
    private static readonly PlanProblem Ordinary = MadeProblem.In(MadeProblem.Ordinary) with { LongestHours = 24 };

    [Fact]
    public void Where_nothing_else_is_wanted_the_sites_air_is_held()
    {
        Assert.Equal(new HeldAir(7.2, 7.2), PlanSearch.Run(Ordinary).Best.Air);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0.5)]
    public void A_later_wish_takes_less_heat_and_leaf_is_ready_then(double slowestFan)
    {
        double before = double.PositiveInfinity;
        for (double wish = 10; wish <= 22; wish++)
        {
            WitherPlan plan = Written(Ordinary with { ReadyByHour = wish, Trough = new Trough(41, 0.25, slowestFan) });

            Assert.InRange(plan.StopHour, wish - 0.25, wish + 0.25);
            Assert.InRange(plan.ReadyHour, wish - 0.5, wish + 0.25);
            Assert.True(plan.HeatKWh <= before * 1.005, $"{plan.HeatKWh} kWh for {wish} h, {before} an hour before");
            before = plan.HeatKWh;
        }
    }

    [Fact]
    public void Leaf_in_dry_air_is_slowed_by_its_fan_and_then_by_standing_it()
    {
        PlanProblem dry = Ordinary with { Ambient = MadeProblem.Of(40, _ => MadeProblem.Differing(4)), Trough = new Trough(41, 0.25, 0.6) };

        HeldAir slowed = PlanSearch.Run(dry with { ReadyByHour = 16 }).Best.Air;
        HeldAir standing = PlanSearch.Run(dry with { ReadyByHour = 22 }).Best.Air;

        Assert.Equal((0, 1), (slowed.DifferenceK, slowed.RunShare));
        Assert.InRange(slowed.FanShare, 0.6, 0.99);
        Assert.Equal(0.6, standing.FanShare, 1e-9);
        Assert.InRange(standing.RunShare, AirScale.LeastRunShare, 0.99);
    }

    [Fact]
    public void Ready_leaf_that_is_wanted_later_than_any_air_can_do_is_held()
    {
        PlanProblem driest = Ordinary with { Ambient = MadeProblem.Of(60, _ => MadeProblem.Differing(12)), ReadyByHour = 23, LoadKgPerM2 = 14 };

        WitherPlan plan = Written(driest);

        Assert.Equal(StageKind.Holding, plan.Stages[^1].Kind);
        Assert.Equal(23, plan.StopHour);
        Assert.InRange(plan.HeldWellToHour!.Value, plan.ReadyHour + 0.5, 60);
    }

    [Fact]
    public void A_heater_that_is_short_is_never_asked_for_more_than_it_gives()
    {
        const double mostKW = 25;
        PlanProblem little = Ordinary with { Heat = new HeatSupply(Site.UsualHotAirC, mostKW / 41) };

        WitherPlan plan = Written(little);

        Assert.All(plan.Settings, setting => Assert.InRange(setting.HeatKW, 0, mostKW * 1.001));
        Assert.True(plan.StopHour > Written(Ordinary).StopHour + 1);
        Assert.InRange(HeatShort.MostKW(little, plan), mostKW, 150);
    }

    [Fact]
    public void Heat_is_asked_for_only_while_it_is_there()
    {
        PlanProblem tillMidnight = Ordinary with { Heat = new HeatSupply(Site.UsualHotAirC, null, [(0, 4)]) };

        WitherPlan plan = Written(tillMidnight);

        Assert.All(plan.Settings.Where(setting => setting.Hour is >= 1 and <= 3), setting => Assert.True(setting.HeatKW > 10));
        Assert.All(plan.Settings.Where(setting => setting.Hour >= 4), setting => Assert.Equal(0, setting.HeatKW, 1e-9));
    }

    [Fact]
    public void Where_fuel_is_spared_there_is_less_heat_and_where_hours_are_there_are_fewer()
    {
        WitherPlan Paced(WitherPace pace) => Written(Ordinary with { Style = Ordinary.Style with { Pace = pace } });
        WitherPlan balanced = Paced(WitherPace.Balanced);

        Assert.True(Paced(WitherPace.Sparing).HeatKWh < balanced.HeatKWh * 0.97);
        Assert.True(Paced(WitherPace.Fast).StopHour < balanced.StopHour - 0.5);
    }

    [Fact]
    public void Air_for_wet_leaf_ends_before_any_leaf_is_dry()
    {
        PlanProblem pressed = Ordinary with
        {
            Start = WitherState.AtLoading(new(0.80, 0.20)),
            ReadyByHour = 6,
            Style = Ordinary.Style with { Pace = WitherPace.Fast },
        };

        Candidate chosen = PlanSearch.Run(pressed).Best;

        Assert.True(chosen.Air.SurfaceDifferenceK > chosen.Air.DifferenceK + 0.3, $"{chosen}");
        DryingTrace trace = new CandidateTrial(pressed).Trace(chosen.Air);
        Assert.InRange(chosen.SurfaceEndHour, 0.25, trace.FirstLayerDryHour!.Value);
        Assert.True(trace.FirstLayerDryHour < trace.SurfaceDryHour - 0.5);
    }

    private static WitherPlan Written(PlanProblem problem)
    {
        PlanSearch search = PlanSearch.Run(problem);
        return PlanWriter.Write(search.Trial, search.Best).Plan;
    }
}
