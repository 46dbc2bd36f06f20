using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Writing;

public sealed class ReliefsTests
{
    private static readonly PlanProblem DryAir = MadeProblem.In(MadeProblem.Of(48, _ => MadeProblem.Differing(9)), WitherStyle.Short with { MostTurns = 4 })
        with
    { LoadKgPerM2 = 16, Trough = new Trough(41), LongestHours = 40 };

    [Fact]
    public void Leaf_that_would_have_to_wait_is_spread_as_thick_as_spares_it_and_the_trough_bears()
    {
        double slowest = PlanSearch.Run(DryAir with { ReadyByHour = 39 }).Best.ReadyHour;
        PlanProblem tooSoon = DryAir with { ReadyByHour = slowest + 2 };
        PlanSearch search = PlanSearch.Run(tooSoon);
        WitherPlan plan = PlanWriter.Write(search.Trial, search.Best).Plan;

        Assert.True(plan.StopHour - plan.ReadyHour > 0.5, $"{plan.ReadyHour} h, {plan.StopHour} h");
        Relief relief = Assert.Single(Reliefs.ForWish(tooSoon, plan));
        Assert.Equal(ReliefKind.SpreadThicker, relief.Kind);
        Candidate thicker = PlanSearch.Run(tooSoon with { LoadKgPerM2 = relief.Amount!.Value }).Best;
        Assert.InRange(thicker.StopHour - thicker.ReadyHour, 0, 0.25);
        Assert.Empty(Reliefs.ForWish(tooSoon with { Trough = new Trough(41, MostLoadKgPerM2: 16.5) }, plan));
    }
}
