using FsCheck.Fluent;
using WitherAdvisor.Advice;
using WitherAdvisor.Bed;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Tests.Advice;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>A plan begins from any state of the bed.</summary>
public sealed class UnderWayTests
{
    private const double SameStopHours = 0.15;
    private const int RandomBatches = 20;

    private static readonly string Estate = Path.Combine(AppContext.BaseDirectory, "fixtures", "invented-estate");

    [Theory]
    [InlineData("rain-wet", 0.2)]
    [InlineData("rain-wet", 0.5)]
    [InlineData("rain-wet", 0.8)]
    [InlineData("rain-wet", 0.97)]
    [InlineData("dry-windy", 0.2)]
    [InlineData("dry-windy", 0.5)]
    [InlineData("dry-windy", 0.8)]
    [InlineData("dry-windy", 0.97)]
    [InlineData("ordinary", 0.2)]
    [InlineData("ordinary", 0.5)]
    [InlineData("ordinary", 0.8)]
    [InlineData("ordinary", 0.97)]
    public void A_plan_made_anew_on_the_way_stops_when_the_first_does(string batch, double share)
    {
        UnderWay first = UnderWay.By(Problem(EstateRequest.Read(Estate, batch)))!;

        first.AssertKeptAt(share * first.StopHour, SameStopHours);
    }

    [Fact]
    public void So_it_does_for_batches_of_every_kind()
    {
        int planned = 0;
        foreach (AdviceRequest request in AnyWither.Batch().Generator.Sample(3 * RandomBatches, SameEachTime(), 50))
        {
            if (planned < RandomBatches && UnderWay.By(Problem(request)) is { } first)
            {
                first.AssertKeptAt(0.4 * first.StopHour, SameStopHours);
                first.AssertKeptAt(0.75 * first.StopHour, SameStopHours);
                planned++;
            }
        }

        Assert.Equal(RandomBatches, planned);
    }

    [Fact]
    public void A_bed_stated_by_layers_at_loading_is_the_leaf_as_loaded()
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Ordinary);
        BedState whole = problem.Start.Bed;
        PlanProblem byLayers = problem with
        {
            Start = problem.Start with
            {
                Bed = new(whole.Loaded, 0, [.. Enumerable.Repeat(whole.TissueDryBasis[0], 5)], [.. Enumerable.Repeat(whole.SurfaceDryBasis[0], 5)]),
            },
        };

        WrittenPlan one = UnderWay.By(problem)!.Written;
        WrittenPlan other = UnderWay.By(byLayers)!.Written;

        Assert.Equal(one.Plan.StopHour, other.Plan.StopHour);
        Assert.Equal(one.FinalMoistureWetBasis, other.FinalMoistureWetBasis, 1e-9);
    }

    [Theory]
    [InlineData(StageKind.SurfaceDrying)]
    [InlineData(StageKind.Main)]
    [InlineData(StageKind.Cooling)]
    public void A_bed_that_is_wholly_dried_is_ready_now(StageKind stage)
    {
        PlanProblem problem = Dried(hour: 9, stage);
        UnderWay dried = UnderWay.By(problem)!;
        WitherPlan plan = dried.Written.Plan;

        Assert.Equal(9, plan.StopHour);
        Assert.Empty(plan.Stages);
        Assert.Empty(plan.Settings);
        Assert.Empty(plan.TurnHours);
        Assert.Equal(0, plan.HeatKWh);
        Assert.Equal(9, Assert.Single(dried.Written.Curve).Hour);

        Ensemble cases = Ensemble.Run(new(dried.Trial, dried.Chosen, Spreads), 9);
        Assert.Equal(9, cases.ReadyHours().P50);
        Assert.Empty(Checks.For(problem, dried.Chosen, dried.Written, cases));
        Assert.NotNull(Effects.Of(problem, dried.Chosen, 0.01).Effects);
        Assert.Contains(Notices.Of(problem, dried.Chosen, dried.Written), notice => notice.Limit == LimitKind.TargetMoisture);
    }

    [Fact]
    public void A_dried_bed_still_waits_for_the_chemical_wither()
    {
        PlanProblem problem = Dried(hour: 9, StageKind.Main) with { ShortestHours = 11 };
        PlanSearch search = PlanSearch.Run(problem);

        WrittenPlan written = PlanWriter.Write(search.Trial, search.Best);

        Assert.Equal(11, written.Plan.StopHour);
        Assert.Equal(StageKind.Holding, written.Plan.Stages[^1].Kind);
        Assert.Contains(BrokenLimits.Of(problem, written), limit => limit.Limit == LimitKind.TargetMoisture);
    }

    [Fact]
    public void A_wet_bed_past_its_longest_time_has_the_least_bad_plan_and_it_says_so()
    {
        UnderWay first = UnderWay.By(MadeProblem.In(MadeProblem.Ordinary))!;
        PlanProblem late = first.At(0.5 * first.StopHour) with { LongestHours = 0.4 * first.StopHour };

        PlanSearch search = PlanSearch.Run(late);
        WrittenPlan written = PlanWriter.Write(search.Trial, search.Best);

        Assert.Contains(BrokenLimits.Of(late, written), limit => limit.Limit == LimitKind.LongestTimeSincePlucking);
        Assert.InRange(written.Plan.StopHour, late.Start.Hour, first.StopHour);
    }

    [Fact]
    public void The_next_turn_keeps_its_distance_from_the_last()
    {
        UnderWay first = UnderWay.By(MadeProblem.In(MadeProblem.Ordinary))!;
        PlanProblem now = first.At(0.5 * first.StopHour);
        double hour = now.Start.Hour;

        WitherPlan justTurned = UnderWay.By(now with { Start = now.Start with { TurnedHours = [hour - 0.1] } })!.Written.Plan;

        Assert.True(justTurned.TurnHours[0] >= hour - 0.1 + now.Style.LeastHoursBetweenTurns - 1e-9);
    }

    [Fact]
    public void What_may_be_true_and_what_is_to_be_weighed_begin_where_the_wither_stands()
    {
        UnderWay first = UnderWay.By(MadeProblem.In(MadeProblem.Ordinary))!;
        UnderWay rest = UnderWay.By(first.At(0.5 * first.StopHour))!;
        double hour = rest.Problem.Start.Hour;

        Ensemble cases = Ensemble.Run(new(rest.Trial, rest.Chosen, Spreads), rest.StopHour);

        Assert.All(cases.All, member => Assert.True(member.ReadyHour is null || member.ReadyHour >= hour));
        Assert.InRange(cases.ReadyHours().P50!.Value, rest.StopHour - 0.5, rest.StopHour + 0.5);
        Assert.All(Checks.For(rest.Problem, rest.Chosen, rest.Written, cases), check => Assert.InRange(check.Hour, hour + 1, rest.StopHour));
        Assert.Contains(Effects.Of(rest.Problem, rest.Chosen, 0.01).Effects, effect => effect.Code == "without_drought" && effect.HoursChange < 0);
    }

    private static UncertainSpreads Spreads => new(0.01, 0.02, MadeProblem.In(MadeProblem.Ordinary).Coefficients.Spreads, UncertainSpreads.ForecastAirK);

    private static PlanProblem Dried(double hour, StageKind stage)
    {
        PlanProblem problem = MadeProblem.In(MadeProblem.Ordinary);
        LeafState leaf = problem.Leaf;
        double[] dry = [.. Enumerable.Repeat(0.3, 8)];
        return problem with { Start = new(new(leaf, hour, dry, new double[8]), [2, 4, 6, 8], stage, hour - 1) };
    }

    private static PlanProblem Problem(AdviceRequest request)
    {
        PlanBasis basis = PlanBasis.Of(request);
        return basis.Problem(request, basis.Ahead.Ambient!);
    }

    private static FsCheck.Rnd SameEachTime() => new(20_261_127UL, 7UL);
}
