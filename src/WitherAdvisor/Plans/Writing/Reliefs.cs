using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Plans.Writing;

/// <summary>What would keep a limit, or meet a wish: each tried by the same search where it names a number.</summary>
internal static class Reliefs
{
    private const double OnTimeHours = 0.25;
    private static readonly double[] ThinnerShares = [0.85, 0.7, 0.55, 0.4];
    private static readonly double[] ThickerShares = [1.15, 1.3, 1.5];

    /// <summary>For the limits that a plan breaks.</summary>
    public static IReadOnlyList<Relief> ForBroken(PlanProblem problem, WrittenPlan plan, IReadOnlyList<LimitNotice> broken) =>
        [.. broken.SelectMany(limit => ForBroken(problem, plan, limit.Limit)).Distinct()];

    /// <summary>For a wish that a plan misses.</summary>
    public static IReadOnlyList<Relief> ForWish(PlanProblem problem, WitherPlan plan)
    {
        if (problem.ReadyByHour is not { } readyBy || plan.StopHour <= readyBy + OnTimeHours)
        {
            return problem.ReadyByHour is not null && plan.StopHour - plan.ReadyHour > OnTimeHours ? Thicker(problem) : [];
        }

        return
        [
            .. Thinner(problem, search => search.Best is { Broken: null } best && best.StopHour <= Math.Max(readyBy, problem.ShortestHours) + OnTimeHours),
            .. MoreHeat(problem, plan),
            .. problem.Start.IsUnderWay ? Array.Empty<Relief>() : [new(ReliefKind.StartEarlier, plan.StopHour - readyBy)],
            new(ReliefKind.RollLater, plan.StopHour - readyBy),
        ];
    }

    private static IReadOnlyList<Relief> ForBroken(PlanProblem problem, WrittenPlan plan, LimitKind limit) => limit switch
    {
        LimitKind.LeafTemperature => [new(ReliefKind.Shade, LastHotHour(plan))],
        LimitKind.LongestTimeSincePlucking => [.. Thinner(problem, search => search.Best.Broken is null), .. MoreHeat(problem, plan.Plan)],
        LimitKind.TargetMoisture when plan.FinalMoistureWetBasis < problem.Style.TargetMoistureWetBasis => Thicker(problem),
        _ => [],
    };

    private static double LastHotHour(WrittenPlan plan) =>
        plan.Curve.Last(point => point.BottomLeafC > HardLimits.LeafCeilingC || point.TopLeafC > HardLimits.LeafCeilingC).Hour;

    private static IReadOnlyList<Relief> MoreHeat(PlanProblem problem, WitherPlan plan) =>
        HeatShort.MostKW(problem, plan) is > 0 and var enough ? [new(ReliefKind.MoreHeat, enough)] : [];

    /// <summary>Leaf on the trough is spread thinner by taking some of it off.</summary>
    private static IReadOnlyList<Relief> Thinner(PlanProblem problem, Func<PlanSearch, bool> relieves)
    {
        foreach (double share in ThinnerShares)
        {
            double load = problem.LoadKgPerM2 * share;
            if (relieves(PlanSearch.Run(problem.Spread(share))))
            {
                return [new(ReliefKind.SpreadThinner, load)];
            }
        }

        return [];
    }

    /// <summary>Leaf that would have to wait dries more slowly in a thicker bed; leaf that lies on the trough is not spread anew.</summary>
    private static IReadOnlyList<Relief> Thicker(PlanProblem problem)
    {
        if (problem.Start.IsUnderWay)
        {
            return [];
        }

        foreach (double share in ThickerShares)
        {
            double load = problem.LoadKgPerM2 * share;
            if (load <= problem.Trough.MostLoadKgPerM2 && WaitsLittle(PlanSearch.Run(problem.Spread(share)).Best))
            {
                return [new(ReliefKind.SpreadThicker, load)];
            }
        }

        return [];
    }

    private static bool WaitsLittle(Candidate candidate) => candidate.Broken is null && candidate.StopHour - candidate.ReadyHour <= OnTimeHours;
}
