using WitherAdvisor.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

public sealed class PlanCostTests
{
    [Fact]
    public void Off_target_and_over_the_spread_cost_more_together()
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Ordinary);
        double Cost(double moisture, double spread) => PlanCost.OfResult(problem, 10, moisture, spread, 0, 0);

        Assert.Equal(PlanCost.PerPointOffTarget, Cost(0.61, 0.03), 1e-9);
        Assert.Equal(PlanCost.PerPointOverTheSpread, Cost(0.60, 0.04), 1e-9);
        Assert.Equal(PlanCost.PerPointOffTarget + PlanCost.PerPointOverTheSpread, Cost(0.61, 0.04), 1e-9);
    }
}
