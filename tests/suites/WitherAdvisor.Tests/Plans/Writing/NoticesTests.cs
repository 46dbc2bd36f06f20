using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Writing;

public sealed class NoticesTests
{
    [Theory]
    [InlineData(-3, 1, true)] // ready two hours before
    [InlineData(-1, 1, false)] // ready just then, by an hour on cooling air
    [InlineData(0, 0, false)]
    [InlineData(-0.05, 0, false)]
    public void The_shortest_time_is_told_where_leaf_waits_for_it(double readyBeforeStop, double coolingDelay, bool told)
    {
        (PlanProblem problem, Candidate chosen, WrittenPlan plan) = Written(WitherStyle.Short);

        IReadOnlyList<LimitNotice> notices = Notices.Of(
            problem with { ShortestHours = plan.Plan.StopHour },
            chosen with { HeatedHoursToTarget = plan.Plan.StopHour + readyBeforeStop, CoolingDelayHours = coolingDelay },
            plan);

        Assert.Equal(told, Has(notices, LimitKind.ShortestTimeSincePlucking));
    }

    [Fact]
    public void Leaf_that_waits_for_something_else_is_not_said_to_wait_for_the_shortest_time()
    {
        (PlanProblem problem, Candidate chosen, WrittenPlan plan) = Written(WitherStyle.Short);

        IReadOnlyList<LimitNotice> notices = Notices.Of(problem with { ShortestHours = plan.Plan.StopHour - 2 }, chosen with { HeatedHoursToTarget = 1 }, plan);

        Assert.False(Has(notices, LimitKind.ShortestTimeSincePlucking));
    }

    [Fact]
    public void A_ceiling_that_is_the_wanted_difference_binds_nothing()
    {
        WitherStyle style = WitherStyle.Short with { HygrometricDifferenceCeilingK = WitherStyle.Short.WantedHygrometricDifferenceK };
        (PlanProblem problem, Candidate chosen, WrittenPlan plan) = Written(style);

        IReadOnlyList<LimitNotice> notices = Notices.Of(problem, chosen with { DifferenceK = style.WantedHygrometricDifferenceK }, plan);

        Assert.False(Has(notices, LimitKind.HygrometricDifference));
    }

    [Theory]
    [InlineData(0.0316, true)] // a twentieth over the 3 points that are tolerated
    [InlineData(0.0314, false)]
    public void Layers_that_part_by_more_than_is_tolerated_are_told(double spreadWetBasis, bool told)
    {
        (PlanProblem problem, Candidate chosen, WrittenPlan plan) = Written(WitherStyle.Short);

        IReadOnlyList<LimitNotice> notices = Notices.Of(problem, chosen, plan with { Plan = plan.Plan with { LargestSpreadWetBasis = spreadWetBasis } });

        Assert.Equal(told, Has(notices, LimitKind.Spread));
    }

    private static bool Has(IReadOnlyList<LimitNotice> notices, LimitKind limit) => notices.Any(notice => notice.Limit == limit);

    private static (PlanProblem Problem, Candidate Chosen, WrittenPlan Plan) Written(WitherStyle style)
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Ordinary, style);
        PlanSearch search = PlanSearch.Run(problem);
        return (problem, search.Best!, PlanWriter.Write(search.Trial, search.Best!));
    }
}
