using WitherAdvisor.Air;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Tests.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Writing;

public sealed class PlanWriterTests
{
    private static readonly PlanProblem Problem = MadeProblem.In(MadeProblem.Ordinary);

    [Fact]
    public void A_slower_fan_asks_for_less_heat()
    {
        CandidateTrial trial = new(Problem);

        AirSetting first = PlanWriter.Write(trial, trial.Try(new(7.2, 7.2, 0.7))).Plan.Settings[0];

        Assert.Equal(HotAirMix.HeatKW(first.Ambient, first.Plenum, 0.7 * 0.25 * 41), first.HeatKW, 1e-9);
    }

    [Fact]
    public void Leaf_that_is_never_turned_has_no_interval()
    {
        CandidateTrial trial = new(Problem with { Style = Problem.Style with { MostTurns = 0 } });

        WitherPlan plan = PlanWriter.Write(trial, trial.Try(new(7.2, 7.2))).Plan;

        Assert.Empty(plan.TurnHours);
        Assert.Null(plan.TurnIntervalHours);
    }

    [Fact]
    public void Where_the_limits_leave_no_five_minutes_the_stop_is_between_them_all_the_same()
    {
        PlanProblem narrow = Problem with { ShortestHours = 8.35, LongestHours = 8.40 };
        PlanSearch search = PlanSearch.Run(narrow);

        WitherPlan plan = PlanWriter.Write(search.Trial, search.Best).Plan;

        Assert.InRange(plan.StopHour, 8.35, 8.40);
    }
}
