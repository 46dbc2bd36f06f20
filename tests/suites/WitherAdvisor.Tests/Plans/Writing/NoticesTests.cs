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
    [InlineData(0, true)]
    [InlineData(-2, false)] // leaf that waits for something else
    public void The_shortest_time_is_told_where_leaf_is_rolled_as_soon_as_it_allows(double shortestFromStop, bool told)
    {
        (PlanProblem problem, Candidate chosen, WrittenPlan plan) = Written(WitherStyle.Short);

        IReadOnlyList<LimitNotice> notices = Notices.Of(problem with { ShortestHours = plan.Plan.StopHour + shortestFromStop }, chosen, plan);

        Assert.Equal(told, Has(notices, LimitKind.ShortestTimeSincePlucking));
    }

    [Fact]
    public void A_ceiling_that_is_the_wanted_difference_binds_nothing()
    {
        WitherStyle style = WitherStyle.Short with { HygrometricDifferenceCeilingK = WitherStyle.Short.WantedHygrometricDifferenceK };
        (PlanProblem problem, Candidate chosen, WrittenPlan plan) = Written(style);

        IReadOnlyList<LimitNotice> notices = Notices.Of(problem, chosen with { Air = chosen.Air with { DifferenceK = style.WantedHygrometricDifferenceK } }, plan);

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
        return (problem, search.Best, PlanWriter.Write(search.Trial, search.Best));
    }
}
