using WitherAdvisor.Advice;
using WitherAdvisor.Advice.Planning;
using WitherAdvisor.Sites;
using WitherAdvisor.Troughs;
using Xunit;

namespace WitherAdvisor.Tests.Advice.Planning;

public sealed class PlanSearchTests
{
    private static readonly Night Ordinary = MadeProblem.Of(26, _ => MadeProblem.Air(18, 0.85));

    [Fact]
    public void Where_no_plan_fits_the_nearest_is_the_cheapest_of_those_that_break_a_limit()
    {
        PlanProblem problem = MadeProblem.In(Ordinary) with { LongestHours = 3 };
        PlanSearch search = PlanSearch.Run(problem);

        Assert.Null(search.Best);
        Assert.All(new double[] { 0, 2, 4.4, 6, 7.2, 8.4, 9.6, 10 }, differenceK =>
            Assert.True(search.Nearest!.Cost <= search.Trial.Try(differenceK, differenceK, 1).Cost));
        Assert.True(search.Nearest!.Cost < search.Trial.Try(0, 0, 1).Cost);
    }

    [Fact]
    public void A_plan_that_fits_leaves_no_nearest()
    {
        PlanProblem problem = MadeProblem.In(Ordinary, WitherStyle.Short with { WantedHygrometricDifferenceK = 3 }) with { LongestHours = 9 };
        PlanSearch search = PlanSearch.Run(problem);

        Assert.NotNull(search.Trial.Try(3, 3, 1).Broken);
        Assert.NotNull(search.Best);
        Assert.Null(search.Nearest);
    }

    [Fact]
    public void Off_target_and_over_the_spread_cost_more_together()
    {
        PlanProblem problem = MadeProblem.In(Ordinary);
        double Cost(double moisture, double spread) => PlanCost.OfResult(problem, 10, moisture, spread, 0, 0);

        Assert.Equal(PlanCost.PerPointOffTarget, Cost(0.61, 0.03), 1e-9);
        Assert.Equal(PlanCost.PerPointOverTheSpread, Cost(0.60, 0.04), 1e-9);
        Assert.Equal(PlanCost.PerPointOffTarget + PlanCost.PerPointOverTheSpread, Cost(0.61, 0.04), 1e-9);
    }

    [Fact]
    public void Leaf_that_would_be_ready_too_soon_is_spread_as_thick_as_makes_a_plan_and_the_trough_bears()
    {
        PlanProblem dry = MadeProblem.In(MadeProblem.Of(26, _ => MadeProblem.Differing(8))) with { LoadKgPerM2 = 16, Trough = new Trough(41) };
        PlanProblem tooSoon = dry with { ShortestHours = PlanSearch.Run(dry).Best!.StopHour * 1.12 };

        Assert.Null(PlanSearch.Run(tooSoon).Best);
        Relief relief = Reliefs.ForNoPlan(tooSoon, LimitKind.ShortestTimeSincePlucking)[0];
        Assert.Equal(ReliefKind.SpreadThicker, relief.Kind);
        Assert.InRange(relief.Amount!.Value, 16 * 1.15, 16 * 1.5);
        Assert.NotNull(PlanSearch.Run(tooSoon with { LoadKgPerM2 = relief.Amount.Value }).Best);
        Assert.DoesNotContain(
            Reliefs.ForNoPlan(tooSoon with { Trough = new Trough(41, MostLoadKgPerM2: 18) }, LimitKind.ShortestTimeSincePlucking),
            other => other.Kind == ReliefKind.SpreadThicker);
    }
}
