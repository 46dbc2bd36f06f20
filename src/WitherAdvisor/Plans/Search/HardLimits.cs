using WitherAdvisor.Ambient;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>The limits that are never traded away. A plan that breaks one is no plan.</summary>
internal static class HardLimits
{
    /// <summary>A plan may stop this far from the target (wet basis) and no further; site practice, nothing published.</summary>
    public const double TargetToleranceWetBasis = 0.03;

    /// <summary>Held in the search, whose beds are cut more coarsely than the plan that is shown.</summary>
    private const double SearchedToleranceWetBasis = 0.025;

    /// <summary>The site's ceiling, held under the published one.</summary>
    public static double PlenumCeilingC(WitherStyle style) => Math.Min(style.PlenumCeilingC, WitherStyle.HighestPlenumC);

    /// <summary>Ceiling of the hygrometric difference (K) at an hour, given when the surface stage ends.</summary>
    public static double DifferenceCeilingK(WitherStyle style, double hour, double surfaceEndHour) =>
        hour < surfaceEndHour
            ? Math.Max(style.WetLeafHygrometricDifferenceCeilingK, style.HygrometricDifferenceCeilingK)
            : style.HygrometricDifferenceCeilingK;

    /// <summary>The limit that the ambient air alone breaks before the stop; null where it breaks none.</summary>
    public static LimitNotice? BrokenByAmbientAir(PlanProblem problem, double stopHour, double surfaceEndHour)
    {
        double start = problem.Start.Hour;
        if (problem.IsReadyNow(stopHour))
        {
            return null;
        }

        if (problem.Start.IsUnderWay
            && BrokenAt(problem, start, surfaceEndHour, problem.Ambient.At(start).HygrometricDifferenceK) is { } now)
        {
            return now;
        }

        int last = Math.Min((int)Math.Ceiling(stopHour), problem.Ambient.LastHour);
        for (int hour = (int)Math.Ceiling(start); hour <= last; hour++)
        {
            if (BrokenAt(problem, hour, surfaceEndHour, problem.Ambient.HygrometricDifferencesK[hour]) is { } broken)
            {
                return broken;
            }
        }

        // The lower ceiling may begin between two whole hours.
        return surfaceEndHour < stopHour
            ? BrokenAt(problem, surfaceEndHour, surfaceEndHour, problem.Ambient.At(surfaceEndHour).HygrometricDifferenceK)
            : null;
    }

    private static LimitNotice? BrokenAt(PlanProblem problem, double hour, double surfaceEndHour, double differenceK)
    {
        double ceilingC = PlenumCeilingC(problem.Style);
        double dryBulbC = problem.Ambient.At(hour).DryBulbC;
        if (dryBulbC > ceilingC)
        {
            return new(LimitKind.PlenumDryBulb, ceilingC, dryBulbC);
        }

        double ceilingK = DifferenceCeilingK(problem.Style, hour, surfaceEndHour);
        return differenceK > ceilingK ? new(LimitKind.HygrometricDifference, ceilingK, differenceK) : null;
    }

    /// <summary>The limit that a stop breaks; null where it breaks none.</summary>
    public static LimitNotice? BrokenByStop(PlanProblem problem, double stopHour, double finalMoistureWetBasis)
    {
        if (problem.IsReadyNow(stopHour))
        {
            return null;
        }

        double target = problem.Style.TargetMoistureWetBasis;
        if (stopHour > problem.LongestHours || problem.LongestHours < problem.Start.Hour || finalMoistureWetBasis > target + SearchedToleranceWetBasis)
        {
            return new(LimitKind.LongestTimeSincePlucking, problem.LongestHours, null);
        }

        return stopHour < problem.ShortestHours || finalMoistureWetBasis < target - SearchedToleranceWetBasis
            ? new(LimitKind.ShortestTimeSincePlucking, problem.ShortestHours, null)
            : null;
    }

    /// <summary>Whether a plan may stop at a moisture, as the search holds it.</summary>
    public static bool IsNearTarget(PlanProblem problem, double moistureWetBasis) =>
        Math.Abs(moistureWetBasis - problem.Style.TargetMoistureWetBasis) <= SearchedToleranceWetBasis;

    /// <summary>
    /// The limit that a plan breaks once it is written, though it kept it in the search; null where it breaks none.
    /// Hardly any leaf on a trough, or hours of cooling, are more than the search's coarse beds can tell.
    /// </summary>
    public static LimitNotice? BrokenByWritten(PlanProblem problem, WrittenPlan written)
    {
        double target = problem.Style.TargetMoistureWetBasis;
        return !problem.IsReadyNow(written.Plan.StopHour) && Math.Abs(written.FinalMoistureWetBasis - target) > TargetToleranceWetBasis
            ? new(LimitKind.TargetMoisture, target, written.FinalMoistureWetBasis)
            : null;
    }
}
