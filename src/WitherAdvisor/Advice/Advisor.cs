using WitherAdvisor.Ambient;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Plans.Writing;

namespace WitherAdvisor.Advice;

/// <summary>The decision: from a batch and its weather to a plan.</summary>
public static class Advisor
{
    private const double OnTimeHours = 0.25;

    /// <summary>Advice for a batch. Pure: the same request always gives the same answer.</summary>
    public static AdviceOutcome Advise(AdviceRequest request)
    {
        Batch batch = request.Batch;
        PlanBasis basis = PlanBasis.Of(request);
        if (basis.Ahead.Ambient is not { } night)
        {
            return Refuse(request, basis, 0, new(LimitKind.AmbientAir, null, null), [new(ReliefKind.ReadAmbientAir, null)]);
        }

        if (basis.LongestHours <= 0)
        {
            return Refuse(
                request, basis, 0,
                new(LimitKind.LongestTimeSincePlucking, request.Site.Style.LongestHoursSincePlucking, (batch.LoadedAt - batch.PluckedFrom).TotalHours), []);
        }

        PlanProblem problem = basis.Problem(request, night);
        PlanSearch search = PlanSearch.Run(problem);
        if (search.Best is not { } chosen)
        {
            LimitNotice binding = SincePlucking(search.Nearest!.Broken!, batch);
            return Refuse(request, basis, search.Trial.Simulated, binding, Reliefs.ForNoPlan(problem, binding.Limit));
        }

        WrittenPlan plan = PlanWriter.Write(search.Trial, chosen);
        return HardLimits.BrokenByWritten(problem, plan) is { } missed
            ? Refuse(request, basis, search.Trial.Simulated, missed, Reliefs.ForNoPlan(problem, missed.Limit))
            : Advised(request, basis, search.Trial, chosen, plan);
    }

    private static AdviceOutcome.Advised Advised(
        AdviceRequest request, PlanBasis basis, CandidateTrial trial, Candidate chosen, WrittenPlan plan)
    {
        PlanProblem problem = trial.Problem;
        UncertainSpreads spreads = UncertainSpreads.Of(basis.Leaf, problem.Coefficients.Spreads, basis.Ahead.IsComplete);
        Ensemble ensemble = Ensemble.Run(new(trial, chosen, spreads), plan.Plan.StopHour);
        (IReadOnlyList<FactorEffect> effects, int simulatedForEffects) = Effects.Of(problem, chosen, DroughtChange(basis.Leaf));
        double stop = plan.Plan.StopHour;
        IReadOnlyList<Relief> reliefs = problem.ReadyByHour is { } readyBy && stop > readyBy + OnTimeHours
            ? Reliefs.ForLate(problem, readyBy, stop)
            : [];
        IReadOnlyList<LimitNotice> notices = [.. Notices.Of(problem, chosen, plan).Select(notice => SincePlucking(notice, request.Batch))];
        return new(
            plan.Plan, plan.Curve, ensemble.ReadyHours(), ensemble.FinalMoistureWetBasis(), effects,
            Checks.For(problem, chosen, plan, ensemble), notices, reliefs, basis.Leaf, basis.Assumptions,
            request.Coefficients.SetName, trial.Simulated + simulatedForEffects + Ensemble.Members);
    }

    /// <summary>The search counts hours from loading; the limits of the chemical wither count from plucking.</summary>
    private static LimitNotice SincePlucking(LimitNotice notice, Batch batch)
    {
        double before = notice.Limit switch
        {
            LimitKind.ShortestTimeSincePlucking => (batch.LoadedAt - batch.PluckedTo).TotalHours,
            LimitKind.LongestTimeSincePlucking => (batch.LoadedAt - batch.PluckedFrom).TotalHours,
            _ => 0,
        };
        return notice with { Allowed = notice.Allowed + before, Reached = notice.Reached + before };
    }

    private static double DroughtChange(LeafEstimate leaf) =>
        leaf.TissueMoistureWetBasis.Contributions.Where(piece => piece.Code == "drought").Sum(piece => piece.Amount);

    private static AdviceOutcome.CannotAdvise Refuse(
        AdviceRequest request, PlanBasis basis, int simulated, LimitNotice binding, IReadOnlyList<Relief> reliefs) =>
        new([binding], reliefs, basis.Leaf, basis.Assumptions, request.Coefficients.SetName, simulated);
}
