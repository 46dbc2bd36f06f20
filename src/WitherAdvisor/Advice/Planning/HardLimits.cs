using WitherAdvisor.Sites;

namespace WitherAdvisor.Advice.Planning;

/// <summary>The limits that are never traded away. A plan that breaks one is no plan.</summary>
internal static class HardLimits
{
    /// <summary>A plan may stop this far from the target (wet basis) and no further; site practice, nothing published.</summary>
    public const double TargetToleranceWetBasis = 0.03;

    /// <summary>The site's ceiling, held under the published one.</summary>
    public static double PlenumCeilingC(WitherStyle style) => Math.Min(style.PlenumCeilingC, WitherStyle.HighestPlenumC);

    /// <summary>Ceiling of the hygrometric difference (K) at an hour, given when the surface water goes.</summary>
    public static double DifferenceCeilingK(WitherStyle style, double hour, double? surfaceDryHour) =>
        surfaceDryHour is { } dry && hour >= dry
            ? style.HygrometricDifferenceCeilingK
            : Math.Max(style.WetLeafHygrometricDifferenceCeilingK, style.HygrometricDifferenceCeilingK);

    /// <summary>The limit that the ambient air alone breaks before the stop; null where it breaks none.</summary>
    public static LimitNotice? BrokenByAmbientAir(PlanProblem problem, double stopHour, double? surfaceDryHour)
    {
        double ceilingC = PlenumCeilingC(problem.Style);
        int last = Math.Min((int)Math.Ceiling(stopHour), problem.Night.LastHour);
        for (int hour = 0; hour <= last; hour++)
        {
            double dryBulbC = problem.Night.Hours[hour].DryBulbC;
            if (dryBulbC > ceilingC)
            {
                return new(LimitKind.PlenumDryBulb, ceilingC, dryBulbC);
            }

            double ceilingK = DifferenceCeilingK(problem.Style, hour, surfaceDryHour);
            double differenceK = problem.Night.HygrometricDifferencesK[hour];
            if (differenceK > ceilingK)
            {
                return new(LimitKind.HygrometricDifference, ceilingK, differenceK);
            }
        }

        return null;
    }

    /// <summary>The limit that a stop breaks; null where it breaks none.</summary>
    public static LimitNotice? BrokenByStop(PlanProblem problem, double stopHour, double finalMoistureWetBasis)
    {
        double target = problem.Style.TargetMoistureWetBasis;
        if (stopHour > problem.LongestHours || finalMoistureWetBasis > target + TargetToleranceWetBasis)
        {
            return new(LimitKind.LongestTimeSincePlucking, problem.LongestHours, null);
        }

        return finalMoistureWetBasis < target - TargetToleranceWetBasis
            ? new(LimitKind.ShortestTimeSincePlucking, problem.ShortestHours, null)
            : null;
    }
}
