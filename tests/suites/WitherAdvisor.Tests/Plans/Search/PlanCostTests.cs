using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

public sealed class PlanCostTests
{
    private static readonly PlanProblem Problem = MadeProblem.In(MadeProblem.Ordinary);
    private static readonly HeldAir Wanted = new(7.2, 7.2);

    [Fact]
    public void The_wanted_air_costs_nothing_and_leaving_it_costs_by_the_square()
    {
        Assert.Equal(0, PlanCost.Of(Problem, Wanted, 10));
        Assert.Equal(4 * PlanCost.PerSquaredKelvinFromWanted, PlanCost.Of(Problem, new(9.2, 9.2), 10), 1e-9);
        Assert.Equal(PlanCost.PerShareOfFanSlowed * 0.7, PlanCost.Of(Problem, new(7.2, 7.2, 0.5, 0.6), 10), 1e-9);
    }

    [Theory]
    [InlineData(8, 1.75 * PlanCost.PerHourLate)]
    [InlineData(9.8, 0)]
    [InlineData(12, 1.75 * PlanCost.PerHourEarly)]
    public void A_quarter_of_an_hour_either_way_is_on_time(double wish, double cost)
    {
        Assert.Equal(cost, PlanCost.Of(Problem with { ReadyByHour = wish }, Wanted, 10), 1e-9);
    }
}
