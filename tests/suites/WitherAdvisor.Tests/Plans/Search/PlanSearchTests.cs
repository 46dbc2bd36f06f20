using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

public sealed class PlanSearchTests
{
    [Fact]
    public void Where_no_plan_fits_the_nearest_is_the_cheapest_of_those_that_break_a_limit()
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Ordinary) with { LongestHours = 3 };
        PlanSearch search = PlanSearch.Run(problem);

        Assert.Null(search.Best);
        Assert.All(new double[] { 0, 2, 4.4, 6, 7.2, 8.4, 9.6, 10 }, differenceK =>
            Assert.True(search.Nearest!.Cost <= search.Trial.Try(differenceK, differenceK, 1).Cost));
        Assert.True(search.Nearest!.Cost < search.Trial.Try(0, 0, 1).Cost);
    }

    [Fact]
    public void A_plan_that_fits_leaves_no_nearest()
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Ordinary, WitherStyle.Short with { WantedHygrometricDifferenceK = 3 }) with { LongestHours = 9 };
        PlanSearch search = PlanSearch.Run(problem);

        Assert.NotNull(search.Trial.Try(3, 3, 1).Broken);
        Assert.NotNull(search.Best);
        Assert.Null(search.Nearest);
    }
}
