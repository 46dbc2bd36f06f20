using WitherAdvisor.Plans.Search;

namespace WitherAdvisor.Plans.Writing;

/// <summary>The hard limits that a written plan breaks: none, or it is the least bad one.</summary>
internal static class BrokenLimits
{
    public static IReadOnlyList<LimitNotice> Of(PlanProblem problem, WrittenPlan written)
    {
        var broken = new List<LimitNotice>();
        double target = problem.Style.TargetMoistureWetBasis;
        if (problem.IsReadyNow(written.Plan.StopHour))
        {
            return broken;
        }

        if (written.WarmestLeafC > HardLimits.LeafCeilingC)
        {
            broken.Add(new(LimitKind.LeafTemperature, HardLimits.LeafCeilingC, written.WarmestLeafC));
        }

        if (written.AsWritten.Broken is { } late)
        {
            broken.Add(late with { Reached = written.Plan.StopHour });
        }

        if (Math.Abs(written.FinalMoistureWetBasis - target) > HardLimits.TargetToleranceWetBasis)
        {
            broken.Add(new(LimitKind.TargetMoisture, target, written.FinalMoistureWetBasis));
        }

        return broken;
    }
}
