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
    /// <summary>Advice for a batch. Pure: the same request always gives the same answer.</summary>
    public static AdviceOutcome Advise(AdviceRequest request)
    {
        PlanBasis basis = PlanBasis.Of(request);
        if (basis.Ahead.Ambient is not { } ambient)
        {
            return new AdviceOutcome.CannotAdvise(
                [new(LimitKind.AmbientAir, null, null)], [new(ReliefKind.ReadAmbientAir, null)], basis.Leaf, basis.Assumptions,
                request.Coefficients.SetName, 0);
        }

        PlanSearch search = PlanSearch.Run(basis.Problem(request, ambient));
        return Advised(request, basis, search.Trial, PlanWriter.Write(search.Trial, search.Best));
    }

    private static AdviceOutcome.Advised Advised(AdviceRequest request, PlanBasis basis, CandidateTrial trial, WrittenPlan plan)
    {
        PlanProblem problem = trial.Problem;
        Candidate chosen = plan.AsWritten;
        UncertainSpreads spreads = UncertainSpreads.Of(basis.Leaf, problem.Coefficients.SpreadsInAdvice(), basis.Ahead.IsComplete);
        Ensemble ensemble = Ensemble.Run(new(trial, chosen, spreads), plan.Plan.StopHour);
        (IReadOnlyList<FactorEffect> effects, int simulatedForEffects) = Effects.Of(problem, chosen, DroughtChange(basis.Leaf));
        IReadOnlyList<LimitNotice> broken = BrokenLimits.Of(problem, plan);
        IReadOnlyList<Relief> reliefs = [.. Reliefs.ForBroken(problem, plan, broken).Concat(Reliefs.ForWish(problem, plan.Plan)).Distinct()];
        return new(
            plan.Plan, plan.Curve, ensemble.ReadyHours(), ensemble.FinalMoistureWetBasis(), effects,
            Checks.For(problem, chosen, plan, ensemble), Counted(Notices.Of(problem, chosen, plan), request.Batch), reliefs,
            basis.Leaf, basis.Assumptions, request.Coefficients.SetName, trial.Simulated + simulatedForEffects + Ensemble.Members)
        {
            Broken = Counted(broken, request.Batch),
        };
    }

    private static IReadOnlyList<LimitNotice> Counted(IReadOnlyList<LimitNotice> notices, Batch batch) =>
        [.. notices.Select(notice => SincePlucking(notice, batch))];

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
}
