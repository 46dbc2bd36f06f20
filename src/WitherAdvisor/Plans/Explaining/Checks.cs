using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Uncertainty;
using WitherAdvisor.Plans.Writing;

namespace WitherAdvisor.Plans.Explaining;

/// <summary>When to weigh, what to expect, and what a weight outside the band means.</summary>
internal static class Checks
{
    private const double SampleKg = 10;
    private const double LastCheckBeforeStopHours = 1;

    /// <summary>K of hygrometric difference that one K of heating adds (derived: 0.70 to 0.74).</summary>
    private const double DifferencePerKelvin = 0.72;

    /// <summary>Under this, K, a change is not worth a walk to the damper.</summary>
    private const double SmallestChangeK = 0.3;

    /// <summary>Over this, K, the answer is another time, not other air.</summary>
    private const double LargestChangeK = 3;

    /// <summary>With less time left than this, h, other air comes too late.</summary>
    private const double LeastTimeLeftHours = 2;

    public static IReadOnlyList<WeighingCheck> For(PlanProblem problem, Candidate chosen, WrittenPlan plan, Ensemble ensemble) =>
        [.. Hours(problem.LoadedHour, plan.Plan.StopHour).Select(hour => At(problem, chosen, plan, ensemble, hour))];

    /// <summary>At a third and two thirds of what is to go when all leaf is on, on the whole hour, and an hour before the stop.</summary>
    private static IEnumerable<double> Hours(double startHour, double stopHour)
    {
        double last = Math.Floor((stopHour - LastCheckBeforeStopHours) * 2) / 2;
        double left = stopHour - startHour;
        return new[] { Math.Round(startHour + left / 3), Math.Round(startHour + 2 * left / 3), last }
            .Where(hour => hour >= startHour + 1 && hour <= last)
            .Distinct()
            .Order();
    }

    private static WeighingCheck At(PlanProblem problem, Candidate chosen, WrittenPlan plan, Ensemble ensemble, double hour)
    {
        double expectedKg = plan.Curve.Last(point => point.Hour <= hour + 1e-6).LeafWeightKg;
        var byWeight = ensemble.ByWeight(hour);
        int tenth = Math.Max(byWeight.Count / 10, 1);
        double area = problem.Trough.AreaM2;
        return new(
            hour,
            expectedKg,
            Math.Min(byWeight[tenth].WeightKgPerM2 * area, expectedKg),
            Math.Max(byWeight[^(tenth + 1)].WeightKgPerM2 * area, expectedKg),
            SampleKg * expectedKg / (problem.LoadKgPerM2 * area),
            Response(problem, chosen, plan, hour, [.. byWeight.Take(tenth).Select(pair => pair.Member)]),
            Response(problem, chosen, plan, hour, [.. byWeight.TakeLast(tenth).Select(pair => pair.Member)]));
    }

    private static CheckResponse Response(
        PlanProblem problem, Candidate chosen, WrittenPlan plan, double hour, IReadOnlyList<EnsembleMember> alike)
    {
        if (alike.Any(member => member.ReadyHour is null))
        {
            return new(null, null);
        }

        double ready = alike.Average(member => member.ReadyHour!.Value);
        double left = plan.Plan.StopHour - hour;
        double wantedK = chosen.Air.DifferenceK * Math.Max(ready - hour, 0) / left;
        double changeK = (wantedK - chosen.Air.DifferenceK) / DifferencePerKelvin;
        bool worthIt = left >= LeastTimeLeftHours && Math.Abs(changeK) is >= SmallestChangeK and <= LargestChangeK;
        return new(ready, worthIt && IsAllowed(problem, plan, hour, wantedK, changeK) ? changeK : null);
    }

    private static bool IsAllowed(PlanProblem problem, WrittenPlan plan, double hour, double wantedK, double changeK)
    {
        AirSetting now = plan.Plan.Settings.Last(setting => setting.Hour <= hour);
        double plenumC = now.Plenum.DryBulbC + changeK;
        return wantedK <= problem.Style.HygrometricDifferenceCeilingK
            && plenumC <= HardLimits.SetPointCeilingC(problem.Style)
            && plenumC >= now.Ambient.DryBulbC;
    }
}
