using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

public sealed class TurnPlannerTests
{
    private static readonly PlanProblem RainWet = MadeProblem.In(MadeProblem.Of(40, _ => MadeProblem.Air(17, 0.95)))
        with
    { Start = WitherState.AtLoading(new(0.80, 0.20)), LongestHours = 22 };

    [Fact]
    public void More_turns_hold_the_layers_nearer_and_what_one_more_brings_is_said()
    {
        double before = double.PositiveInfinity;
        for (int most = 0; most <= 5; most++)
        {
            TurnPlan plan = Planned(RainWet with { Style = RainWet.Style with { MostTurns = most } });

            Assert.Equal(most, plan.Hours.Count);
            Assert.True(plan.LargestSpreadWetBasis < before + 0.001, $"{most} turns: {plan.LargestSpreadWetBasis}");
            Assert.True(plan.WithOneMoreWetBasis <= plan.LargestSpreadWetBasis);
            before = plan.LargestSpreadWetBasis;
        }
    }

    [Fact]
    public void Placed_turns_hold_the_layers_nearer_than_even_ones_of_the_same_number()
    {
        PlanProblem three = RainWet with { Style = RainWet.Style with { MostTurns = 3 } };
        TurnPlan plan = Planned(three);
        PlanSearch search = PlanSearch.Run(three);
        double ready = search.Best.ReadyHour;

        double[] even = [ready / 4, ready / 2, ready * 3 / 4];
        DryingTrace evenly = search.Trial.Run(search.Best.Air, new TurnRule.AtHours(even), ready, ready, search.Best.SurfaceEndHour);

        Assert.True(plan.LargestSpreadWetBasis < evenly.LargestSpreadWetBasis - 0.002, $"{plan.LargestSpreadWetBasis}, {evenly.LargestSpreadWetBasis}");
    }

    [Fact]
    public void As_many_even_whole_hours_are_kept_where_they_hold_the_layers_as_well()
    {
        TurnPlan[] plans =
        [
            .. from most in Enumerable.Range(2, 5)
               from load in Enumerable.Range(10, 20)
               select Planned(RainWet with { LoadKgPerM2 = load, Style = RainWet.Style with { MostTurns = most } }),
        ];

        Assert.Contains(plans, plan => plan.Hours.Count > 1 && plan.Hours.Select((hour, i) => hour / (i + 1)).Distinct().Count() == 1);
        Assert.Contains(plans, plan => plan.Hours.Any(hour => hour != Math.Round(hour)));
    }

    [Fact]
    public void Leaf_that_hardly_parts_is_not_turned()
    {
        TurnPlan plan = Planned(RainWet with { LoadKgPerM2 = 2 });

        Assert.Empty(plan.Hours);
    }

    private static TurnPlan Planned(PlanProblem problem)
    {
        PlanSearch search = PlanSearch.Run(problem);
        return new TurnPlanner(search.Trial, search.Best).Plan();
    }
}
