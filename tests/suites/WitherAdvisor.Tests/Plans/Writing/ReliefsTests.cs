using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Writing;

public sealed class ReliefsTests
{
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
